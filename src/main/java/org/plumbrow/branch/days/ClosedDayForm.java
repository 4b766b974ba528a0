package org.plumbrow.branch.days;

import jakarta.validation.constraints.NotBlank;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.time.LocalDate;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.plumbrow.web.Refusal;

/** A day or several days off as typed, of the branch or of a utility. */
public record ClosedDayForm(
        @NotNull(message = "Choose the first day that is closed.") @Nullable
        LocalDate firstDay,

        @Nullable LocalDate lastDay,

        @NotBlank(message = "Write why, for example: stock-taking.")
        @Size(max = 120, message = "Write at most 120 characters.")
        @Nullable
        String reason) {

    public static final ClosedDayForm EMPTY = new ClosedDayForm(null, null, null);

    /** @return what is wrong; empty when the days are now closed */
    public Optional<Refusal> close(ClosedDays days, ClosedDays.Whose whose) {
        return days.close(whose, firstDay, lastDay == null ? firstDay : lastDay, reason.strip());
    }
}
