package org.plumbrow.calc.calendar;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
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

    /** As in "Fri, Mar 12, 2027". */
    public static String withYear(LocalDate date) {
        return DAY_AND_YEAR.format(date);
    }
}
