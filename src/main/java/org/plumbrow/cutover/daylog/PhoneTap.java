package org.plumbrow.cutover.daylog;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.UUID;
import org.plumbrow.project.PhoneClock;

/**
 * When somebody tapped, and when the phone sent it, both by the phone's clock. Where that clock is wrong, the time that
 * passed between the two is still right: the server counts it back from its own clock.
 */
record PhoneTap(Instant written, Instant sent, List<Fix> fixes) {

    /**
     * A reading of it that was put right on the phone.
     *
     * @param id made by the phone
     * @param written by the phone's clock
     * @param was as it had stood on the phone until then
     */
    record Fix(UUID id, Instant written, String quantity, String was, String why) {
        private static final int MOST_WHY = 300;

        Fix {
            String said = why.isBlank() ? "Corrected on the phone" : why.strip();
            why = said.substring(0, Math.min(MOST_WHY, said.length()));
        }
    }

    PhoneTap {
        fixes = List.copyOf(fixes);
    }

    List<Fix> fixesOf(String quantity) {
        return fixes.stream().filter(fix -> fix.quantity().equals(quantity)).toList();
    }

    /** When it happened by the server's clock; never later than now. */
    Instant happenedAt(Instant now) {
        return new PhoneClock(written, sent).happenedAt(now);
    }

    LogEntry.PhoneTime phoneTime(Instant now) {
        return phoneTime(written, now);
    }

    /** Of what was done later on the same phone. */
    LogEntry.PhoneTime phoneTime(Instant later, Instant now) {
        return new LogEntry.PhoneTime(later, Duration.between(sent, now).toMillis());
    }
}
