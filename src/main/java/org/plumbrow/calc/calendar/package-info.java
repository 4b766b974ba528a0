/**
 * Working calendars: which days count, for whom, and how days are counted in notices and waits.
 *
 * <p>Start at {@link org.plumbrow.calc.calendar.WorkingCalendar}; a plan's time line is a
 * {@link org.plumbrow.calc.calendar.WorkingAxis} of {@link org.plumbrow.calc.calendar.HalfDay}s. Never asks a clock.
 */
@NullMarked
@NamedInterface("calendar")
package org.plumbrow.calc.calendar;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.NamedInterface;
