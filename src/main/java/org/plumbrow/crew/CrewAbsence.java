package org.plumbrow.crew;

import jakarta.persistence.Embedded;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.util.UUID;

/** A time in which a crew is not there. */
@Entity
@Table(name = "crew_absence")
class CrewAbsence {

    @Id
    private UUID id;

    private UUID branchId;
    private UUID crewId;

    @Embedded
    private AwayTime time;

    protected CrewAbsence() {} // for JPA

    CrewAbsence(UUID id, Crew crew, AwayTime time) {
        this.id = id;
        this.branchId = crew.branchId();
        this.crewId = crew.id();
        this.time = time;
    }

    UUID id() {
        return id;
    }

    UUID crewId() {
        return crewId;
    }

    AwayTime time() {
        return time;
    }

    Away away() {
        return time.as(id);
    }
}
