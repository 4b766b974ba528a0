package org.plumbrow.cutover.daylog;

import java.time.Instant;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.plumbrow.calc.electrical.Service;

/**
 * The log of one window's day.
 *
 * @param outcome null while it is open
 * @param designRevision letter of the revision that its steps were made from; null for the general ones
 */
record DayLog(
        UUID id,
        UUID branchId,
        UUID projectId,
        UUID windowId,
        Service service,
        boolean generator,
        String personInCharge,
        Instant openedAt,
        String openedBy,
        @Nullable Instant closedAt,
        @Nullable Outcome outcome,
        @Nullable String designRevision) {

    /** How the day ended. */
    enum Outcome {
        DONE,
        REVERSED
    }

    public boolean isClosed() {
        return closedAt != null;
    }
}
