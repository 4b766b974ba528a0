package org.plumbrow.schedule.scenario;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.plumbrow.calc.calendar.DayWords;
import org.plumbrow.calc.duration.Mounting;

/**
 * One thing that is otherwise; of the fields only those that its kind needs are there.
 *
 * @param name of the crew or machine that is more; else empty
 * @param crewId who is away, whom one more crew is like, or who gets the work
 * @param machineId what is away, or what one more machine is like
 * @param firstDay of the absence, of what is more, or on which the work given begins
 * @param days working days away, or Saturdays
 */
record ScenarioTerms(
        ScenarioKind kind,
        String name,
        @Nullable UUID crewId,
        @Nullable UUID machineId,
        @Nullable UUID activityId,
        @Nullable LocalDate firstDay,
        @Nullable Integer days,
        @Nullable Mounting mounting,
        @Nullable BigDecimal kwDc) {

    /** "Crew 2 is away 5 working days from Mon, Mar 8". */
    public String words(ScenarioChoices choices) {
        String day = firstDay == null ? "" : DayWords.of(firstDay);
        return switch (kind) {
            case CREW_AWAY -> "%s is away %s from %s".formatted(choices.crew(crewId), length("working day"), day);
            case MACHINE_AWAY ->
                "%s is away %s from %s".formatted(choices.machine(machineId), length("working day"), day);
            case CREW_MORE -> "%s, a crew like %s, from %s".formatted(name, choices.crew(crewId), day);
            case MACHINE_MORE -> "%s, a machine like %s, from %s".formatted(name, choices.machine(machineId), day);
            case SATURDAYS -> "Crews work on %s from %s".formatted(length("Saturday"), day);
            case WORK_GIVEN ->
                "%s goes to %s, beginning %s".formatted(choices.work(activityId), choices.crew(crewId), day);
            case NEW_JOB ->
                "one more job, %s kW, %s"
                        .formatted(
                                kwDc == null ? "" : kwDc.stripTrailingZeros().toPlainString(),
                                mounting == null ? "" : mounting.words());
        };
    }

    private String length(String unit) {
        return days == null ? "" : days + " " + unit + (days == 1 ? "" : "s");
    }
}
