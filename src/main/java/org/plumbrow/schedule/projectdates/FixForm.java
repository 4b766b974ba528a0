package org.plumbrow.schedule.projectdates;

import jakarta.validation.constraints.NotBlank;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.time.LocalDate;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.plumbrow.calc.calendar.Half;
import org.plumbrow.calc.calendar.HalfDay;
import org.plumbrow.schedule.activity.ActivityRow;
import org.plumbrow.schedule.activity.Pin;

/** A start that somebody wants settled. @param crewId none: the plan chooses the crew */
record FixForm(
        @NotNull(message = "Choose the day on which it should start.")
        LocalDate day,

        @Nullable Half half,
        @Nullable UUID crewId,

        @NotBlank(message = "Say to whom the start was told, or why it is settled.")
        @Size(max = 300, message = "Say it in at most 300 letters.")
        String reason,

        @NotNull Long version) {

    static FixForm of(ActivityRow row, Optional<HalfDay> planned) {
        return new FixForm(
                row.pin().map(Pin::start).or(() -> planned).map(HalfDay::date).orElse(null),
                row.pin().map(Pin::start).or(() -> planned).map(HalfDay::half).orElse(Half.MORNING),
                row.pin().flatMap(Pin::crewId).orElse(null),
                row.pin().map(Pin::reason).orElse(""),
                row.version());
    }

    /** The same words over a newer state. */
    FixForm over(long newer) {
        return new FixForm(day, half, crewId, reason, newer);
    }

    Pin pin() {
        return new Pin(
                new HalfDay(day, half == null ? Half.MORNING : half),
                Optional.ofNullable(crewId),
                reason == null ? "" : reason.strip());
    }
}
