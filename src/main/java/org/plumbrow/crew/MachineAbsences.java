package org.plumbrow.crew;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.springframework.data.jpa.repository.Query;
import org.springframework.data.repository.Repository;

/** Absences of shared machines as stored. */
interface MachineAbsences extends Repository<MachineAbsence, UUID> {
    Optional<MachineAbsence> findById(UUID id);

    @Query("select a from MachineAbsence a where a.branchId = :branchId and a.time.lastDay >= :since"
            + " order by a.time.firstDay, a.time.firstHalf desc, a.id")
    List<MachineAbsence> since(UUID branchId, LocalDate since);

    @Query(
            "select a from MachineAbsence a where a.equipmentId = :of order by a.time.firstDay, a.time.firstHalf desc, a.id")
    List<MachineAbsence> of(UUID of);

    MachineAbsence saveAndFlush(MachineAbsence absence);

    void delete(MachineAbsence absence);
}
