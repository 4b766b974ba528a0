package org.plumbrow.branch.days;

import java.time.DayOfWeek;
import java.util.List;
import java.util.stream.Collectors;
import org.plumbrow.branch.BranchFacts;
import org.plumbrow.branch.Weekdays;
import org.plumbrow.branch.WorkHours;
import org.plumbrow.branch.Written;

/** Which days and hours a branch works. */
public record DaysTerms(Weekdays workingDays, boolean federalHolidays, WorkHours hours) {

    static DaysTerms of(BranchFacts branch) {
        return new DaysTerms(branch.workingWeekdays(), branch.federalHolidays(), branch.hours());
    }

    List<Written> written() {
        return List.of(
                Written.of("Working days", "workingDays", sent(workingDays), workingDays.words()),
                Written.of(
                        "Federal holidays", "federalHolidays", federalHolidays, federalHolidays ? "closed" : "worked"),
                Written.of("Morning from", "morningStart", hours.morningStart()),
                Written.of("Morning to", "morningEnd", hours.morningEnd()),
                Written.of("Afternoon from", "afternoonStart", hours.afternoonStart()),
                Written.of("Afternoon to", "afternoonEnd", hours.afternoonEnd()));
    }

    private static String sent(Weekdays days) {
        return days.inOrder().stream().map(DayOfWeek::name).collect(Collectors.joining(","));
    }
}
