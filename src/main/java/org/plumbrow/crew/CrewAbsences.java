package org.plumbrow.crew;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.springframework.data.jpa.repository.Query;
import org.springframework.data.repository.Repository;

/** Absences of crews as stored. */
interface CrewAbsences extends Repository<CrewAbsence, UUID> {
    Optional<CrewAbsence> findById(UUID id);

    @Query("select a from CrewAbsence a where a.branchId = :branchId and a.time.lastDay >= :since"
            + " order by a.time.firstDay, a.time.firstHalf desc, a.id")
    List<CrewAbsence> since(UUID branchId, LocalDate since);

    @Query("select a from CrewAbsence a where a.crewId = :of order by a.time.firstDay, a.time.firstHalf desc, a.id")
    List<CrewAbsence> of(UUID of);

    CrewAbsence saveAndFlush(CrewAbsence absence);

    void delete(CrewAbsence absence);
}
