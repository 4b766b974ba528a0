/**
 * What would move a date: one condition of the branch relaxed at a time, the plan made anew, the gain read off.
 *
 * <p>In: a {@link org.plumbrow.calc.planning.PlanningProblem}, the sequence in which its plan serves the work, and the
 * activity whose date is asked about. Out: {@link org.plumbrow.calc.planning.relax.Moved}, one for each
 * {@link org.plumbrow.calc.planning.relax.Relaxation} that the chain of what binds the date suggests. Start at
 * {@link org.plumbrow.calc.planning.relax.Relaxing}. Every gain is computed, none is estimated.
 */
@NullMarked
@NamedInterface("relax")
package org.plumbrow.calc.planning.relax;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.NamedInterface;
