package org.plumbrow.crew;

import jakarta.persistence.Embedded;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.util.UUID;

/** A time in which a shared machine is not there. */
@Entity
@Table(name = "equipment_absence")
class MachineAbsence {

    @Id
    private UUID id;

    private UUID branchId;
    private UUID equipmentId;

    @Embedded
    private AwayTime time;

    protected MachineAbsence() {} // for JPA

    MachineAbsence(UUID id, Machine machine, AwayTime time) {
        this.id = id;
        this.branchId = machine.branchId();
        this.equipmentId = machine.id();
        this.time = time;
    }

    UUID id() {
        return id;
    }

    UUID equipmentId() {
        return equipmentId;
    }

    AwayTime time() {
        return time;
    }

    Away away() {
        return time.as(id);
    }
}
