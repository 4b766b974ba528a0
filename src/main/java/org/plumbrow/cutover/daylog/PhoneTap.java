package org.plumbrow.cutover.daylog;

import java.time.Duration;
import java.time.Instant;

/**
 * When somebody tapped, and when the phone sent it, both by the phone's clock. Where that clock is wrong, the time that
 * passed between the two is still right: the server counts it back from its own clock.
 */
record PhoneTap(Instant written, Instant sent) {

    /** When it happened by the server's clock; never later than now. */
    Instant happenedAt(Instant now) {
        Duration ago = Duration.between(written, sent);
        return ago.isNegative() ? now : now.minus(ago);
    }

    LogEntry.PhoneTime phoneTime(Instant now) {
        return new LogEntry.PhoneTime(written, Duration.between(sent, now).toMillis());
    }
}
