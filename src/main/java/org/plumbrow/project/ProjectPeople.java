package org.plumbrow.project;

import jakarta.persistence.CollectionTable;
import jakarta.persistence.ElementCollection;
import jakarta.persistence.Embeddable;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.FetchType;
import jakarta.persistence.Id;
import jakarta.persistence.JoinColumn;
import jakarta.persistence.MapKeyColumn;
import jakarta.persistence.MapKeyEnumerated;
import jakarta.persistence.Version;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.Map;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** Who is in charge of what: a part of its own version. */
@Entity
class ProjectPeople {

    @Id
    private UUID projectId;

    @Version
    private long version;

    private UUID branchId;

    @ElementCollection(fetch = FetchType.EAGER)
    @CollectionTable(name = "project_duty", joinColumns = @JoinColumn(name = "project_id"))
    @MapKeyColumn(name = "duty")
    @MapKeyEnumerated(EnumType.STRING)
    private Map<Duty, DutyRow> duties = new HashMap<>();

    @SuppressWarnings("NullAway")
    protected ProjectPeople() {} // for JPA

    ProjectPeople(UUID projectId, UUID branchId, Map<Duty, ProjectFacts.InCharge> people) {
        this.projectId = projectId;
        this.branchId = branchId;
        take(people);
    }

    /** One duty, as stored. */
    @Embeddable
    static class DutyRow {
        private UUID branchId;
        private @Nullable UUID personId;
        private String name;

        @SuppressWarnings("NullAway")
        protected DutyRow() {} // for JPA

        DutyRow(UUID branchId, ProjectFacts.InCharge who) {
            this.branchId = branchId;
            this.personId = who.personId();
            this.name = who.name();
        }

        ProjectFacts.InCharge facts() {
            return new ProjectFacts.InCharge(personId, name);
        }
    }

    /** @return who it was before */
    Map<Duty, ProjectFacts.InCharge> assign(Map<Duty, ProjectFacts.InCharge> to) {
        Map<Duty, ProjectFacts.InCharge> from = facts();
        take(to);
        return from;
    }

    private void take(Map<Duty, ProjectFacts.InCharge> people) {
        Map<Duty, ProjectFacts.InCharge> before = facts();
        for (Duty duty : Duty.values()) {
            ProjectFacts.InCharge who = people.get(duty);
            if (who == null) {
                duties.remove(duty);
            } else if (!who.equals(before.get(duty))) {
                duties.put(duty, new DutyRow(branchId, who));
            }
        }
    }

    Map<Duty, ProjectFacts.InCharge> facts() {
        Map<Duty, ProjectFacts.InCharge> facts = new EnumMap<>(Duty.class);
        duties.forEach((duty, row) -> facts.put(duty, row.facts()));
        return facts;
    }

    long version() {
        return version;
    }
}
