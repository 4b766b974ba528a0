/**
 * Forecast: how likely every date of a plan is, by playing the plan many times with other durations, waits and weather.
 *
 * <p>In: a {@link org.plumbrow.calc.forecast.ForecastQuestion} (a plan and its problem, how uncertain each activity is,
 * what is to be forecast). Out: a {@link org.plumbrow.calc.forecast.Forecast}. Start at
 * {@link org.plumbrow.calc.forecast.Forecaster}. Every run goes through the plan's order and starts everything as early as
 * it can: behind what comes first on its crew and equipment, or, where overtaking is asked for, also in a gap before it
 * that is long enough (serial schedule generation with the plan's order as priority: Kolisch, EJOR 90, 1996, 320-333).
 * Overtaking never makes later what comes first; it looks ahead in its run, as people do who know about when a permit is
 * due. The same seed gives the same forecast on any number of threads, and a
 * what-if shares its draws with what it is compared with, so that their difference is less noisy than either. Never asks
 * a clock; its chance is a counted hash.
 */
@NullMarked
@NamedInterface("forecast")
package org.plumbrow.calc.forecast;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.NamedInterface;
