package org.plumbrow.schedule.whichdate;

import java.math.BigDecimal;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.plumbrow.calc.duration.Mounting;
import org.plumbrow.project.ProjectLimits;
import org.plumbrow.web.Entered;

/** The few figures that say how much work a job is. */
record WhichDateForm(
        @Nullable String mounting,
        @Nullable String kwDc,
        @Nullable String trenchFt,
        @Nullable String utility,
        @Nullable String permitOffice) {

    /** Whether somebody has asked yet. */
    boolean isAsked() {
        return mounting != null || kwDc != null;
    }

    /** @param utilityId null where none was chosen */
    record Job(
            Mounting mounting,
            BigDecimal kwDc,
            @Nullable Integer trenchFt,
            @Nullable UUID utilityId,
            @Nullable UUID permitOfficeId) {}

    /** @return empty where something cannot be read, which is said at its field */
    Optional<Job> read(Entered typed, Map<UUID, String> utilities, Map<UUID, String> offices) {
        Optional<Mounting> chosen = typed.choice("mounting", Mounting.class, mounting);
        if (chosen.isEmpty() && !typed.errors().hasFieldErrors("mounting")) {
            typed.refuse("mounting", "Choose how the array is mounted.");
        }
        BigDecimal size = typed.number("kwDc", "the size", kwDc, ProjectLimits.SYSTEM_KW);
        if (size == null && !typed.errors().hasFieldErrors("kwDc")) {
            typed.refuse("kwDc", "Write the size as a number from " + Entered.hint(ProjectLimits.SYSTEM_KW) + " DC.");
        }
        Integer trench = typed.whole("trenchFt", "the trench", trenchFt, ProjectLimits.TRENCH_FT);
        UUID ofUtility = one(typed, "utility", utility, utilities);
        UUID ofOffice = one(typed, "permitOffice", permitOffice, offices);
        return typed.errors().hasErrors()
                ? Optional.empty()
                : Optional.of(new Job(chosen.orElseThrow(), size, trench, ofUtility, ofOffice));
    }

    private static @Nullable UUID one(Entered typed, String field, @Nullable String chosen, Map<UUID, String> known) {
        String text = Entered.text(chosen);
        if (text.isEmpty()) {
            return null;
        }
        Optional<UUID> found =
                known.keySet().stream().filter(id -> id.toString().equals(text)).findFirst();
        if (found.isEmpty()) {
            typed.refuse(field, "Choose one of the list.");
        }
        return found.orElse(null);
    }
}
