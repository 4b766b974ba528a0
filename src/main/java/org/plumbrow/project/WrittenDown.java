package org.plumbrow.project;

import java.time.Duration;
import java.time.Instant;
import org.jspecify.annotations.Nullable;

/**
 * When something was written down, by every clock that knows.
 *
 * @param at when it happened, by the server's clock
 * @param received when it reached the server
 * @param phone what the phone's clock said when it happened; null for what did not wait on a phone
 */
public record WrittenDown(
        Instant at, Instant received, @Nullable Instant phone) {

    /** On a page with signal. */
    public static WrittenDown now(Instant now) {
        return new WrittenDown(now, now, null);
    }

    public static WrittenDown on(PhoneClock phone, Instant now) {
        return new WrittenDown(phone.happenedAt(now), now, phone.written());
    }

    /** Whether it waited on the phone for a minute or longer. */
    public boolean isLate() {
        return Duration.between(at, received).toMinutes() >= 1;
    }

    /** Minutes that the phone's clock was off, to the nearest; 0 where it was right or did not say. */
    public long minutesOff() {
        return phone == null
                ? 0
                : Math.round(Math.abs(Duration.between(phone, at).toSeconds()) / 60.0);
    }
}
