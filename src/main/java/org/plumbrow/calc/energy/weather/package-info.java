/**
 * A typical year of weather, hour by hour: read from a file that somebody brings, or made from twelve monthly means.
 * Start at {@link org.plumbrow.calc.energy.weather.WeatherFiles} and
 * {@link org.plumbrow.calc.energy.weather.MonthlyMeans}.
 * <p>Rules: hours of local standard time, numbered 1 to 24 in the files, the number naming the end of the interval; a
 * row belongs to the month written in it; the year written in it does not count. What is wrong with a file is a
 * {@link org.plumbrow.calc.energy.weather.WeatherFinding} with its line and its cure; nothing is padded or guessed in
 * silence. Never opens a file: text in, records out.
 */
@NullMarked
@NamedInterface("weather")
package org.plumbrow.calc.energy.weather;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.NamedInterface;
