package org.plumbrow.cutover;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.temporal.ChronoUnit;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * An outage window as others read it.
 *
 * @param stateReason why it was moved or cancelled
 * @param utilityConfirmation the utility's own number for the appointment
 * @param customerAnswer null while the customer has said nothing
 * @param powerOffAt when the power went off on the day
 * @param powerOnAt when the outage was over
 */
public record OutageFacts(
        UUID id,
        UUID branchId,
        UUID projectId,
        LocalDate day,
        LocalTime start,
        int outageMinutes,
        @Nullable UUID crewId,
        OutageState state,
        @Nullable String stateReason,
        @Nullable RainDate rainDate,
        @Nullable Told utilityTold,
        @Nullable String utilityConfirmation,
        @Nullable Instant utilityConfirmedAt,
        @Nullable Told customerTold,
        @Nullable Answer customerAnswer,
        @Nullable Instant powerOffAt,
        @Nullable Instant powerOnAt,
        long version) {

    private static final int HALF_HOUR = 30;

    /** Where the outage goes when the weather does not allow it. */
    public record RainDate(LocalDate day, LocalTime start) {}

    /** When somebody was told, and how: "by e-mail", "through the utility's portal". */
    public record Told(Instant at, String how) {}

    /**
     * What the customer said to the day.
     *
     * @param note their own words; may be empty
     * @param by who wrote it down, or "the customer's page"
     */
    public record Answer(boolean agrees, String note, Instant at, String by) {}

    public LocalTime end() {
        return start.plusMinutes(outageMinutes);
    }

    /** What a customer is told to plan for: half an hour more than planned, up to the next half-hour. */
    public int planForMinutes() {
        return (outageMinutes + HALF_HOUR + HALF_HOUR - 1) / HALF_HOUR * HALF_HOUR;
    }

    public boolean isLive() {
        return state.isLive();
    }

    /** Minutes without power as they were, from minute to minute; empty before the outage was over. */
    public Optional<Integer> actualMinutes() {
        if (powerOffAt == null || powerOnAt == null) {
            return Optional.empty();
        }
        return Optional.of((int)
                Duration.between(powerOffAt.truncatedTo(ChronoUnit.MINUTES), powerOnAt.truncatedTo(ChronoUnit.MINUTES))
                        .toMinutes());
    }
}
