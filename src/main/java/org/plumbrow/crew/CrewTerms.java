package org.plumbrow.crew;

import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.plumbrow.branch.Written;
import org.plumbrow.calc.calendar.DayWords;
import org.plumbrow.calc.duration.Skill;

/**
 * What can be changed of a crew, all at once.
 *
 * @param size people, 1 to 20
 * @param electricalPeople how many of them are qualified for electrical work, 0 to {@code size}; none while nobody has said
 * @param skills at least one
 * @param leadPersonId somebody of the branch; none for a crew without a lead
 * @param until its last day; none while it goes on
 */
public record CrewTerms(
        String name,
        int size,
        @Nullable Integer electricalPeople,
        Set<Skill> skills,
        @Nullable UUID leadPersonId,
        LocalDate from,
        @Nullable LocalDate until) {

    List<Written> written(String leadName) {
        List<Skill> order = skills.stream().sorted().toList();
        return List.of(
                Written.of("Name", "name", name),
                Written.of("People", "size", size),
                Written.of("Qualified for electrical work", "electricalPeople", electricalPeople),
                Written.of(
                        "Skills",
                        "skills",
                        order.stream().map(Skill::name).collect(Collectors.joining(",")),
                        order.stream().map(Skill::words).collect(Collectors.joining(", "))),
                Written.of("Lead", "leadPersonId", leadPersonId, leadName),
                Written.of("First day", "from", from, DayWords.withYear(from)),
                Written.of("Last day", "until", until, until == null ? "" : DayWords.withYear(until)));
    }
}
