package org.plumbrow.cutover.daylog;

import java.time.Instant;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.Locale;

/**
 * When it is, and of which day the log tells.
 *
 * @param start when the power was to go off
 */
record LogMoment(Instant now, LocalDateTime start, ZoneId zone) {

    /** So long after the start "now" still belongs to the day, also when the work goes into the night. */
    private static final int HOURS_OF_A_DAY = 18;

    private static final int HALF_A_DAY = 12;
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("EEE, MMM d", Locale.US);

    /** A time as people say it on that day: long before the start it is meant of the night behind it. */
    LocalDateTime local(LocalTime typed) {
        LocalDateTime at = start.toLocalDate().atTime(typed);
        return at.isBefore(start.minusHours(HALF_A_DAY)) ? at.plusDays(1) : at;
    }

    Instant on(LocalTime typed) {
        return local(typed).atZone(zone).toInstant();
    }

    /** Whether the log is written up on a later day, so that a tap does not mean now. */
    boolean isLater() {
        return now.isAfter(start.plusHours(HOURS_OF_A_DAY).atZone(zone).toInstant());
    }

    String dayWords() {
        return DAY.format(start);
    }
}
