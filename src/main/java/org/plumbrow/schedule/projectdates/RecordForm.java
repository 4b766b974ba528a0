package org.plumbrow.schedule.projectdates;

import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.NotNull;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.plumbrow.calc.calendar.Half;
import org.plumbrow.calc.calendar.HalfDay;
import org.plumbrow.schedule.activity.ActivityRow;
import org.plumbrow.schedule.activity.Recorded;

/**
 * What somebody records of an activity.
 *
 * @param daysLeft working days left of work that goes on
 * @param expected of a wait: when the answer is promised for
 */
record RecordForm(
        @Nullable LocalDate started,
        @Nullable Half startedHalf,
        @Nullable LocalDate finished,
        @Nullable Half finishedHalf,
        @Nullable UUID crewId,

        @DecimalMin(value = "0.5", message = "Write at least 0.5 days; when nothing is left, say when it was done.")
        @DecimalMax(value = "200", message = "Write at most 200 days.")
        @Nullable
        BigDecimal daysLeft,

        @Nullable LocalDate expected,
        @NotNull Long version) {

    private static final BigDecimal HALVES = BigDecimal.valueOf(2);

    static RecordForm of(ActivityRow row, Optional<UUID> bookedCrew) {
        Recorded known = row.recorded();
        return new RecordForm(
                known.started().map(HalfDay::date).orElse(null),
                known.started().map(HalfDay::half).orElse(Half.MORNING),
                known.finished().map(HalfDay::date).orElse(null),
                known.finished().map(HalfDay::half).orElse(Half.AFTERNOON),
                known.crewId().or(() -> bookedCrew).orElse(null),
                known.halfDaysLeft()
                        .map(left -> BigDecimal.valueOf(left).divide(HALVES, 1, RoundingMode.UNNECESSARY))
                        .map(BigDecimal::stripTrailingZeros)
                        .orElse(null),
                known.answerExpected().orElse(null),
                row.version());
    }

    /** The same words over a newer state. */
    RecordForm over(long newer) {
        return new RecordForm(started, startedHalf, finished, finishedHalf, crewId, daysLeft, expected, newer);
    }

    /** Whether it says done before it says begun, or done without begun. */
    Optional<String> outOfOrder() {
        if (finished == null) {
            return Optional.empty();
        }
        if (started == null) {
            return Optional.of("Say when it began too; the same day is fine.");
        }
        return finishedAt().isBefore(startedAt())
                ? Optional.of("It cannot be done before it began. Correct one of the two.")
                : Optional.empty();
    }

    Recorded recorded() {
        if (started == null) {
            return Recorded.NOTHING;
        }
        boolean over = finished != null;
        return new Recorded(
                Optional.of(startedAt()),
                over ? Optional.of(finishedAt()) : Optional.empty(),
                Optional.ofNullable(crewId),
                over || daysLeft == null
                        ? Optional.empty()
                        : Optional.of(daysLeft.multiply(HALVES)
                                .setScale(0, RoundingMode.HALF_UP)
                                .intValueExact()),
                over ? Optional.empty() : Optional.ofNullable(expected));
    }

    private HalfDay startedAt() {
        return new HalfDay(started, startedHalf == null ? Half.MORNING : startedHalf);
    }

    private HalfDay finishedAt() {
        return new HalfDay(finished, finishedHalf == null ? Half.AFTERNOON : finishedHalf);
    }
}
