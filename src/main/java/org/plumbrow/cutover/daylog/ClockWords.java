package org.plumbrow.cutover.daylog;

import java.time.Instant;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.Locale;

/** "9:00 am": for the log's own sentences. */
final class ClockWords {

    private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("h:mm a", Locale.US);

    private ClockWords() {}

    static String of(Instant at, ZoneId zone) {
        return of(at.atZone(zone).toLocalTime());
    }

    static String of(LocalTime time) {
        return CLOCK.format(time).toLowerCase(Locale.US);
    }
}
