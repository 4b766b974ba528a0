/**
 * Why something in a branch's input cannot hold: the smallest set of conditions found that still clashes when everything else
 * gives way. In: a {@link org.plumbrow.calc.planning.PlanningProblem} and the activity with the finding. Out:
 * {@link org.plumbrow.calc.planning.causes.Cause}s. Start at {@link org.plumbrow.calc.planning.causes.SmallestCauses}.
 */
@NullMarked
@NamedInterface("causes")
package org.plumbrow.calc.planning.causes;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.NamedInterface;
