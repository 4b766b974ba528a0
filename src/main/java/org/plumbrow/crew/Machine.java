package org.plumbrow.crew;

import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import jakarta.persistence.Version;
import java.time.LocalDate;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.plumbrow.calc.duration.EquipmentKind;

/** One shared machine, as the branch keeps it. */
@Entity
@Table(name = "shared_equipment")
class Machine {

    @Id
    private UUID id;

    @Version
    private long version;

    private UUID branchId;

    @Enumerated(EnumType.STRING)
    private EquipmentKind kind;

    private String name;
    private LocalDate fromDay;
    private @Nullable LocalDate untilDay;

    protected Machine() {} // for JPA

    Machine(UUID id, UUID branchId, EquipmentTerms terms) {
        this.id = id;
        this.branchId = branchId;
        become(terms);
    }

    void become(EquipmentTerms terms) {
        kind = terms.kind();
        name = terms.name();
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

    EquipmentTerms terms() {
        return new EquipmentTerms(kind, name, fromDay, untilDay);
    }

    EquipmentFacts facts(Collection<Away> away) {
        return new EquipmentFacts(
                id, branchId, kind, name, fromDay, Optional.ofNullable(untilDay), List.copyOf(away), version);
    }
}
