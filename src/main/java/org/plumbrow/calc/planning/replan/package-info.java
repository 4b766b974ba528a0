/**
 * What to do when something changes under a plan that people know: change as little of it as can be.
 *
 * <p>In: a {@link org.plumbrow.calc.planning.PlanningProblem} as it is by now and the
 * {@link org.plumbrow.calc.planning.Published} plan. Out: a plan in which every start stands that need not move. Start at
 * {@link org.plumbrow.calc.planning.replan.LeastChange}.
 */
@NullMarked
@NamedInterface("replan")
package org.plumbrow.calc.planning.replan;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.NamedInterface;
