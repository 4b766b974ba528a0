package org.plumbrow.crew;

import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import jakarta.persistence.Version;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.plumbrow.calc.duration.Skill;

/** People who work together, as the branch keeps them. */
@Entity
@Table(name = "crew")
class Crew {

    @Id
    private UUID id;

    @Version
    private long version;

    private UUID branchId;
    private String name;
    private int size;
    private @Nullable Integer electricalPeople;
    private String[] skills;
    private @Nullable UUID leadPersonId;
    private LocalDate fromDay;
    private @Nullable LocalDate untilDay;

    protected Crew() {} // for JPA

    Crew(UUID id, UUID branchId, CrewTerms terms) {
        this.id = id;
        this.branchId = branchId;
        become(terms);
    }

    void become(CrewTerms terms) {
        if (terms.skills().isEmpty()) {
            throw new IllegalArgumentException("a crew without a skill can be given no work");
        }
        name = terms.name();
        size = terms.size();
        electricalPeople = terms.electricalPeople();
        skills = terms.skills().stream().sorted().map(Skill::name).toArray(String[]::new);
        leadPersonId = terms.leadPersonId();
        fromDay = terms.from();
        untilDay = terms.until();
    }

    UUID id() {
        return id;
    }

    UUID branchId() {
        return branchId;
    }

    long version() {
        return version;
    }

    String name() {
        return name;
    }

    @Nullable
    UUID leadPersonId() {
        return leadPersonId;
    }

    CrewTerms terms() {
        return new CrewTerms(name, size, electricalPeople, skills(), leadPersonId, fromDay, untilDay);
    }

    private Set<Skill> skills() {
        return Arrays.stream(skills).map(Skill::valueOf).collect(Collectors.toUnmodifiableSet());
    }

    CrewFacts facts(String leadName, Collection<Away> away) {
        return new CrewFacts(
                id,
                branchId,
                name,
                size,
                Optional.ofNullable(electricalPeople),
                skills(),
                Optional.ofNullable(leadPersonId),
                leadName,
                fromDay,
                Optional.ofNullable(untilDay),
                List.copyOf(away),
                version);
    }
}
