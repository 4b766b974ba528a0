/**
 * Scenarios: named copies of the plan with one thing or several otherwise, laid side by side; one is accepted by recording it.
 * <p>Start at {@code Scenarios}. Rules: only what is otherwise is stored, its plan is computed at each look; accepting
 * writes an absence, a crew, a machine, a settled start, worked Saturdays where those belong, all or none (a job becomes a project by people), and the plan is then computed anew and published as always.
 */
@NullMarked
package org.plumbrow.schedule.scenario;

import org.jspecify.annotations.NullMarked;
