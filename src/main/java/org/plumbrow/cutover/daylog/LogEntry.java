package org.plumbrow.cutover.daylog;

import java.time.Instant;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * One line of the log, as it was written.
 *
 * @param id made by the page or phone that wrote it
 * @param corrects the entry that this one corrects, takes back or confirms
 * @param number place in the order of its device
 * @param phone the phone's own time of it; null when it was written with signal, on the page
 */
record LogEntry(
        UUID id,
        String step,
        EntryKind kind,
        @Nullable String quantity,
        @Nullable String value,
        @Nullable String reason,
        @Nullable UUID corrects,
        @Nullable UUID evidenceId,
        Instant happenedAt,
        String device,
        long number,
        Instant storedAt,
        String byName,
        @Nullable Signature signature,
        @Nullable PhoneTime phone) {

    /** A person passing a hold point; no account needed. */
    record Signature(Hold.Part part, String name, String trade) {}

    /**
     * What a phone's clock said when somebody tapped.
     *
     * @param time by the phone
     * @param offsetMs how far the server's clock is ahead of the phone's, milliseconds; negative when the phone runs ahead
     */
    record PhoneTime(Instant time, long offsetMs) {
        private static final long MINUTE_MS = 60_000;

        /** Whole minutes by which the phone's clock is wrong; 0 when it is right to the minute. */
        long minutesWrong() {
            return Math.abs(offsetMs) / MINUTE_MS;
        }
    }
}
