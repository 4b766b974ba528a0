package org.plumbrow.cutover.daylog;

import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.Locale;

/** "9:00 am": for the log's own sentences. */
final class ClockWords {

    private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("h:mm a", Locale.US);

    private ClockWords() {}

    static String of(Instant at, ZoneId zone) {
        return CLOCK.format(at.atZone(zone)).toLowerCase(Locale.US);
    }
}
