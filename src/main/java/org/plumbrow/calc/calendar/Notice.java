package org.plumbrow.calc.calendar;

import java.time.LocalDate;

/**
 * "n full working days' notice" by the calendar of the one who is told (a utility, a locator).
 * The day of sending and the day of the event do not count. What is sent on a day off counts as sent on the next
 * working day, for nobody reads it earlier: the careful reading.
 *
 * @param fullWorkingDays 0 to 250
 */
public record Notice(int fullWorkingDays, WorkingCalendar calendar) {

    public Notice {
        if (fullWorkingDays < 0 || fullWorkingDays > 250) {
            throw new IllegalArgumentException("notice of " + fullWorkingDays + " working days is outside 0 to 250");
        }
    }

    /** The first working day on which the event may be when the notice leaves on that date. */
    public LocalDate firstDayWhenSent(LocalDate sent) {
        return calendar.after(calendar.onOrAfter(sent), fullWorkingDays + 1);
    }

    /** The last working day on which the notice may leave for an event on that date. */
    public LocalDate lastDayToSendFor(LocalDate event) {
        return calendar.before(event, fullWorkingDays + 1);
    }

    public boolean isMet(LocalDate sent, LocalDate event) {
        return !sent.isAfter(lastDayToSendFor(event));
    }
}
