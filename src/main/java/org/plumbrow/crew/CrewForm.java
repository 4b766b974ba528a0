package org.plumbrow.crew;

import jakarta.validation.constraints.Max;
import jakarta.validation.constraints.Min;
import jakarta.validation.constraints.NotBlank;
import jakarta.validation.constraints.NotEmpty;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.time.LocalDate;
import java.util.Set;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.plumbrow.calc.duration.Skill;

/** A crew as typed; a new one has no version. */
record CrewForm(
        @NotBlank(message = "Write what the crew is called, for example Crew 3.")
        @Size(max = 60, message = "Write at most 60 characters.")
        @Nullable
        String name,

        @NotNull(message = PEOPLE) @Min(value = 1, message = PEOPLE) @Max(value = 20, message = PEOPLE) @Nullable
        Integer size,

        @Min(value = 0, message = QUALIFIED) @Max(value = 20, message = QUALIFIED) @Nullable
        Integer electricalPeople,

        @NotEmpty(message = "Tick at least one skill: the plan gives a crew only work that it can do.") @Nullable
        Set<Skill> skills,

        @Nullable UUID leadPersonId,

        @NotNull(message = "Choose the first day on which the crew can be booked.") @Nullable
        LocalDate from,

        @Nullable LocalDate until,
        @Nullable Long version) {

    private static final String PEOPLE = "Write the people as a whole number from 1 to 20.";
    private static final String QUALIFIED =
            "Write the qualified people as a whole number, at most as many as the crew has, or leave it empty.";

    static CrewForm startingOn(LocalDate day) {
        return new CrewForm("", null, null, Set.of(), null, day, null, null);
    }

    static CrewForm of(CrewFacts crew) {
        return new CrewForm(
                crew.name(),
                crew.size(),
                crew.electricalPeople().orElse(null),
                crew.skills(),
                crew.leadPersonId().orElse(null),
                crew.from(),
                crew.until().orElse(null),
                crew.version());
    }

    CrewTerms terms() {
        return new CrewTerms(name.strip(), size, electricalPeople, skills, leadPersonId, from, until);
    }
}
