package org.plumbrow.schedule.scenario;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.plumbrow.branch.Written;
import org.plumbrow.calc.calendar.DayWords;
import org.plumbrow.calc.duration.Mounting;

/**
 * What is otherwise; of the fields only those of its kind are there.
 *
 * @param crewId who is away, or whom one more crew is like
 * @param days working days away
 */
record ScenarioTerms(
        String name,
        ScenarioKind kind,
        @Nullable UUID crewId,
        @Nullable UUID machineId,
        @Nullable LocalDate firstDay,
        @Nullable Integer days,
        @Nullable Mounting mounting,
        @Nullable BigDecimal kwDc) {

    List<Written> written(ScenarioChoices choices) {
        return List.of(
                Written.of("Name", "name", name),
                Written.of("What is otherwise", "kind", kind, kind.words()),
                Written.of("Crew", "crew", crewId, choices.crew(crewId)),
                Written.of("Machine", "machine", machineId, choices.machine(machineId)),
                Written.of("First day", "firstDay", firstDay, firstDay == null ? "" : DayWords.withYear(firstDay)),
                Written.of("Working days", "days", days),
                Written.of("Mounting", "mounting", mounting, mounting == null ? "" : mounting.words()),
                Written.of(
                        "Size",
                        "kwDc",
                        kwDc == null ? null : kwDc.stripTrailingZeros().toPlainString()));
    }

    /** "Crew 2 is away 5 working days from Mon, Mar 8". */
    String words(ScenarioChoices choices) {
        String from = firstDay == null ? "" : " from " + DayWords.of(firstDay);
        String length = days == null ? "" : days == 1 ? " 1 working day" : " " + days + " working days";
        return switch (kind) {
            case CREW_AWAY -> choices.crew(crewId) + " is away" + length + from;
            case CREW_MORE -> "one more crew like " + choices.crew(crewId) + from;
            case MACHINE_AWAY -> choices.machine(machineId) + " is away" + length + from;
            case NEW_JOB ->
                "one more job, %s kW, %s"
                        .formatted(
                                kwDc == null ? "" : kwDc.stripTrailingZeros().toPlainString(),
                                mounting == null ? "" : mounting.words());
        };
    }
}
