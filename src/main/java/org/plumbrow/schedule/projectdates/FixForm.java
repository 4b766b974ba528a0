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
import org.plumbrow.schedule.activity.Moves;
import org.plumbrow.schedule.activity.Pin;

/**
 * A start that somebody wants settled.
 *
 * @param crewId none: the plan chooses the crew
 * @param version of the activity when its effect was shown
 * @param lastMove number of the branch's last move by then
 */
record FixForm(
        @NotNull(message = "Choose the day on which it should start.")
        LocalDate day,

        @Nullable Half half,
        @Nullable UUID crewId,

        @NotBlank(message = "Say to whom the start was told, or why it is settled.")
        @Size(max = 300, message = "Say it in at most 300 letters.")
        String reason,

        @NotNull(message = "Look at what it would do first.")
        Long version,

        @NotNull(message = "Look at what it would do first.")
        Long lastMove) {

    /** What a drag says nothing about. */
    private static final String MOVED = "moved on the crew calendar";

    /** As the activity is settled, else as it stands in the plan. */
    static FixForm of(StartPage.Shown shown) {
        Optional<Pin> pin = shown.row().pin();
        Optional<HalfDay> start = pin.map(Pin::start).or(() -> shown.stands().map(row -> row.start()));
        return new FixForm(
                start.map(HalfDay::date).orElse(null),
                start.map(HalfDay::half).orElse(Half.MORNING),
                pin.flatMap(Pin::crewId)
                        .or(() -> shown.stands().flatMap(row -> row.crewId()))
                        .orElse(null),
                pin.map(Pin::reason).orElse(MOVED),
                shown.row().version(),
                shown.lastMove());
    }

    /** With the usual reason where nobody asked for one. */
    FixForm withReason() {
        return reason == null ? new FixForm(day, half, crewId, MOVED, version, lastMove) : this;
    }

    Moves.Seen seen() {
        return new Moves.Seen(version, lastMove);
    }

    Pin pin() {
        return new Pin(
                new HalfDay(day, half == null ? Half.MORNING : half),
                Optional.ofNullable(crewId),
                reason == null ? "" : reason.strip());
    }
}
