/**
 * A branch's plan: computed in the background into a draft, published by a manager.
 * <p>Start at {@code PlanRun} (how a draft comes about), {@link org.plumbrow.schedule.plan.BranchProblem} (what the
 * computation is asked) and {@link org.plumbrow.schedule.plan.Publishing}. Rules: every plan passes
 * {@link org.plumbrow.calc.planning.PlanCheck} before it is stored; one draft a branch; only what no crew and no machine
 * is booked twice for can be published, and the database holds that too.
 */
@NullMarked
package org.plumbrow.schedule.plan;

import org.jspecify.annotations.NullMarked;
