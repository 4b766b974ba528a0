/**
 * How likely the dates of a plan are. Start at {@link org.plumbrow.schedule.forecast.PlanForecasts}; the arithmetic is
 * {@link org.plumbrow.calc.forecast.Forecaster}'s. Every run of the plan makes the forecast of the draft and, as things
 * stand by now, of the published plan. Never moves a date.
 */
@NullMarked
package org.plumbrow.schedule.forecast;

import org.jspecify.annotations.NullMarked;
