package org.plumbrow.branch.days;

import jakarta.validation.constraints.NotEmpty;
import jakarta.validation.constraints.NotNull;
import java.time.DayOfWeek;
import java.time.LocalTime;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.plumbrow.branch.BranchFacts;
import org.plumbrow.branch.Weekdays;
import org.plumbrow.branch.WorkHours;
import org.plumbrow.web.Refusal;

/** Working days and hours as typed. */
record DaysForm(
        @NotEmpty(message = "Tick at least one day of the week.") @Nullable
        Set<DayOfWeek> workingDays,

        @Nullable Boolean federalHolidays,

        @NotNull(message = "Write when the morning begins, for example 7:00 am.") @Nullable
        LocalTime morningStart,

        @NotNull(message = "Write when the morning ends, for example noon.") @Nullable
        LocalTime morningEnd,

        @NotNull(message = "Write when the afternoon begins, for example 12:30 pm.") @Nullable
        LocalTime afternoonStart,

        @NotNull(message = "Write when the afternoon ends, for example 5:00 pm.") @Nullable
        LocalTime afternoonEnd,

        @NotNull(message = "Open the page again: it was sent without its version.") @Nullable
        Long version) {

    static DaysForm of(BranchFacts branch) {
        WorkHours hours = branch.hours();
        return new DaysForm(
                branch.workingWeekdays().days(),
                branch.federalHolidays(),
                hours.morningStart(),
                hours.morningEnd(),
                hours.afternoonStart(),
                hours.afternoonEnd(),
                branch.calendarVersion());
    }

    Optional<Refusal> outOfOrder() {
        if (!morningStart.isBefore(morningEnd)) {
            return Optional.of(new Refusal("morningEnd", "The morning ends before it begins. Choose a later end."));
        }
        if (afternoonStart.isBefore(morningEnd)) {
            return Optional.of(new Refusal(
                    "afternoonStart", "The afternoon begins before the morning ends. Choose a later beginning."));
        }
        return afternoonStart.isBefore(afternoonEnd)
                ? Optional.empty()
                : Optional.of(new Refusal("afternoonEnd", "The afternoon ends before it begins. Choose a later end."));
    }

    DaysTerms terms() {
        return new DaysTerms(
                new Weekdays(workingDays),
                Boolean.TRUE.equals(federalHolidays),
                new WorkHours(morningStart, morningEnd, afternoonStart, afternoonEnd));
    }
}
