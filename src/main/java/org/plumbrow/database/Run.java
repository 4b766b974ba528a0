package org.plumbrow.database;

import java.time.Instant;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * One piece of background work as a page shows it.
 *
 * @param subjectId what it is about within the branch; null for the branch itself
 * @param done steps done of {@code total}; both 0 as long as nobody knows
 * @param words what it does right now
 * @param outcome how it ended, a sentence; null until it is over
 * @param stopAskedBy who asked it to stop; null if nobody did
 */
public record Run(
        UUID id,
        UUID branchId,
        String kind,
        @Nullable UUID subjectId,
        State state,
        int done,
        int total,
        String words,
        @Nullable String outcome,
        String askedBy,
        Instant askedAt,
        @Nullable Instant startedAt,
        @Nullable Instant finishedAt,
        @Nullable String stopAskedBy,
        int tries) {

    /** From asked for to over. */
    public enum State {
        QUEUED,
        RUNNING,
        DONE,
        FAILED,
        STOPPED;

        public boolean isOver() {
            return this == DONE || this == FAILED || this == STOPPED;
        }
    }

    public boolean isOver() {
        return state.isOver();
    }

    /** @return 0 to 100; 0 as long as nobody knows how much there is to do */
    public int percent() {
        return total <= 0 ? 0 : (int) Math.min(100, 100L * done / total);
    }
}
