package org.plumbrow.branch.utility;

import jakarta.validation.constraints.Email;
import jakarta.validation.constraints.Max;
import jakarta.validation.constraints.Min;
import jakarta.validation.constraints.NotBlank;
import jakarta.validation.constraints.NotEmpty;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Pattern;
import jakarta.validation.constraints.Size;
import java.time.DayOfWeek;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.plumbrow.branch.UtilityFacts;
import org.plumbrow.branch.Weekdays;

/** A utility as typed; a new one has no version. */
record UtilityForm(
        @NotBlank(message = "Write what the utility is called.")
        @Size(max = 120, message = "Write at most 120 characters.")
        @Nullable
        String name,

        @NotNull(message = NOTICE) @Min(value = 0, message = NOTICE) @Max(value = 60, message = NOTICE) @Nullable
        Integer noticeWorkingDays,

        @NotEmpty(message = "Tick at least one day on which it switches.") @Nullable
        Set<DayOfWeek> appointmentWeekdays,

        @NotEmpty(message = "Tick at least one day on which it works.") @Nullable
        Set<DayOfWeek> workingWeekdays,

        @Nullable Boolean federalHolidays,

        @NotNull(message = DISCONNECT)
        @Min(value = 1, message = DISCONNECT)
        @Max(value = 500, message = DISCONNECT)
        @Nullable
        Integer disconnectMostFt,

        @Size(max = 300, message = "Write at most 300 characters.") @Nullable
        String mustBePresent,

        @Pattern(regexp = "[-+0-9 ().x]{0,40}", message = "Write the phone in figures, for example 555-555-0190.")
        @Nullable
        String phone,

        @Email(message = "Write the e-mail like outages@utility.example.")
        @Size(max = 254, message = "Write at most 254 characters.")
        @Nullable
        String email,

        @Nullable Long version) {

    static final String NOTICE = "Write the notice as whole working days from 0 to 60.";
    static final String DISCONNECT = "Write the distance as whole feet from 1 to 500.";

    /** What most utilities have. */
    static final UtilityForm NEW = new UtilityForm(
            "",
            null,
            Weekdays.MONDAY_TO_FRIDAY.days(),
            Weekdays.MONDAY_TO_FRIDAY.days(),
            true,
            UtilityFacts.USUAL_DISCONNECT_FT,
            "",
            "",
            "",
            null);

    static UtilityForm of(UtilityFacts utility) {
        return new UtilityForm(
                utility.name(),
                utility.noticeWorkingDays(),
                utility.appointmentWeekdays().days(),
                utility.workingWeekdays().days(),
                utility.federalHolidays(),
                utility.disconnectMostFt(),
                utility.mustBePresent(),
                utility.phone(),
                utility.email(),
                utility.version());
    }

    UtilityTerms terms() {
        return new UtilityTerms(
                name.strip(),
                noticeWorkingDays,
                new Weekdays(appointmentWeekdays),
                new Weekdays(workingWeekdays),
                Boolean.TRUE.equals(federalHolidays),
                disconnectMostFt,
                stripped(mustBePresent),
                stripped(phone),
                stripped(email));
    }

    private static String stripped(@Nullable String text) {
        return text == null ? "" : text.strip();
    }
}
