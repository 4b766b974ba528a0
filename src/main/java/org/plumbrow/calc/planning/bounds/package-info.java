/**
 * What no plan can undercut. Start at {@link org.plumbrow.calc.planning.bounds.LowerBound}. Each bound leaves rules out and
 * finds the least lateness of what is left, so that it is true of every plan that places the same activities and in which
 * what is settled stands where it stands; the largest one counts.
 */
@NullMarked
@NamedInterface("bounds")
package org.plumbrow.calc.planning.bounds;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.NamedInterface;
