package org.plumbrow.branch.days;

import jakarta.validation.constraints.NotBlank;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.plumbrow.web.Refusal;

/** A day off that is worked, as typed. */
record WorkedDayForm(
        @NotNull(message = "Choose the day that is worked.") @Nullable
        LocalDate day,

        @NotBlank(message = "Write why, for example: catching up.")
        @Size(max = 120, message = "Write at most 120 characters.")
        @Nullable
        String why) {

    static final WorkedDayForm EMPTY = new WorkedDayForm(null, null);

    Optional<Refusal> work(WorkedDays days, UUID branchId, LocalDate today) {
        if (day.isBefore(today) || day.isAfter(today.plusYears(2))) {
            return Optional.of(new Refusal("day", "Choose a day from today on, within two years."));
        }
        return days.work(branchId, List.of(day), why.strip());
    }
}
