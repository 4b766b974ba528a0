package org.plumbrow.calc.calendar;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.time.format.TextStyle;
import java.util.Locale;

/** How the core's own sentences write a date. */
public final class DayWords {

    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("EEE, MMM d", Locale.US);
    private static final DateTimeFormatter DAY_AND_YEAR = DateTimeFormatter.ofPattern("EEE, MMM d, yyyy", Locale.US);

    private DayWords() {}

    /** As in "Fri, Mar 12". */
    public static String of(LocalDate date) {
        return DAY.format(date);
    }

    /** Says that a day is off; the reason only where it is more than the day of the week, which stands in the date. */
    public static String nobodyWorks(LocalDate date, String reason) {
        return reason.equals(dayOfWeek(date))
                ? "Nobody works on %s.".formatted(of(date))
                : "Nobody works on %s (%s).".formatted(of(date), reason);
    }

    static String dayOfWeek(LocalDate date) {
        return date.getDayOfWeek().getDisplayName(TextStyle.FULL, Locale.US);
    }

    /** As in "Fri, Mar 12, 2027". */
    public static String withYear(LocalDate date) {
        return DAY_AND_YEAR.format(date);
    }
}
