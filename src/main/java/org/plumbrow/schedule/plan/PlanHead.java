package org.plumbrow.schedule.plan;

import java.time.Instant;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.UUID;
import org.plumbrow.calc.calendar.HalfDay;

/**
 * A plan without its rows.
 *
 * @param number counts up in the branch
 * @param first the half-day from which it plans
 * @param fingerprint of what it was made from
 * @param halfDaysLate of all promises, weighted: what the plan minimises
 * @param lowerBound no plan from the same input has fewer; empty where nothing was proved
 */
public record PlanHead(
        UUID id,
        UUID branchId,
        int number,
        State state,
        Instant madeAt,
        String madeBy,
        HalfDay first,
        String fingerprint,
        long halfDaysLate,
        OptionalLong lowerBound,
        Optional<Instant> publishedAt,
        String publishedBy) {

    /** Only what is published is seen by crews, feeds and customers. */
    public enum State {
        DRAFT,
        PUBLISHED,
        SUPERSEDED
    }

    public boolean isDraft() {
        return state == State.DRAFT;
    }
}
