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
        @Nullable Signature signature) {

    /** A person passing a hold point; no account needed. */
    record Signature(Hold.Part part, String name, String trade) {}
}
