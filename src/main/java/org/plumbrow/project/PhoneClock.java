package org.plumbrow.project;

import java.time.DateTimeException;
import java.time.Duration;
import java.time.Instant;
import java.util.Map;

/**
 * When somebody tapped, and when the phone sent it, both by the phone's clock. Where that clock is wrong, the time that
 * passed between the two is still right: the server counts it back from its own clock.
 */
public record PhoneClock(Instant written, Instant sent) {

    /** As a phone sends it; what it does not say is now. */
    public static PhoneClock of(Map<String, String> typed, Instant now) {
        return new PhoneClock(
                instant(typed.getOrDefault("written", ""), now), instant(typed.getOrDefault("sent", ""), now));
    }

    private static Instant instant(String said, Instant now) {
        try {
            return Instant.parse(said);
        } catch (DateTimeException notSaid) {
            return now;
        }
    }

    /** When it happened by the server's clock; never later than now. */
    public Instant happenedAt(Instant now) {
        Duration ago = Duration.between(written, sent);
        return ago.isNegative() ? now : now.minus(ago);
    }
}
