package org.plumbrow.crew;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import org.plumbrow.calc.duration.Skill;

/**
 * A crew.
 *
 * @param size people
 * @param electricalPeople how many of them are qualified for electrical work; empty while nobody has said
 * @param leadPersonId who leads it, if that person has an account
 * @param leadName empty without a lead
 * @param until its last day; empty while it goes on
 * @param away in time; only those asked for
 */
public record CrewFacts(
        UUID id,
        UUID branchId,
        String name,
        int size,
        Optional<Integer> electricalPeople,
        Set<Skill> skills,
        Optional<UUID> leadPersonId,
        String leadName,
        LocalDate from,
        Optional<LocalDate> until,
        List<Away> away,
        long version) {

    public boolean worksOn(LocalDate date) {
        return !date.isBefore(from) && until.map(last -> !date.isAfter(last)).orElse(true);
    }

    /** The skills in the order in which a job needs them, as people read them. */
    public String skillWords() {
        return skills.stream().sorted().map(Skill::words).collect(Collectors.joining(", "));
    }

    public boolean hasEndedBy(LocalDate date) {
        return until.map(date::isAfter).orElse(false);
    }

    public Optional<Away> awayOn(LocalDate date) {
        return away.stream().filter(time -> time.holds(date)).findFirst();
    }
}
