/**
 * Where the sun stands and what it sends. Start at {@link org.plumbrow.calc.energy.sun.SunTrack}: the sun of a whole
 * typical year over one place, computed once and reused by everything else.
 * <p>Convention, the same everywhere: 8,760 hours of local standard time, no daylight saving, year 2023 (no leap day);
 * hour {@code i} is the interval from {@code i} to {@code i + 1}, and the sun is taken in its middle, {@code i + 0.5}.
 * Azimuth is counted clockwise from north (180 = south), zenith from straight up; angles are degrees.
 */
@NullMarked
@NamedInterface("sun")
package org.plumbrow.calc.energy.sun;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.NamedInterface;
