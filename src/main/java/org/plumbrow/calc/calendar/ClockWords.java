package org.plumbrow.calc.calendar;

import java.time.LocalTime;
import java.time.format.DateTimeFormatter;
import java.util.Locale;

/** "9:00 am": how the core's own sentences write a time. */
public final class ClockWords {

    private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("h:mm a", Locale.US);

    private ClockWords() {}

    public static String of(LocalTime time) {
        return time.equals(LocalTime.NOON) ? "noon" : CLOCK.format(time).toLowerCase(Locale.US);
    }
}
