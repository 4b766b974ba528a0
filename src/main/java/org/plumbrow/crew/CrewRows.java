package org.plumbrow.crew;

import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.springframework.data.jpa.repository.Query;
import org.springframework.data.repository.Repository;

/** Crews as stored. */
interface CrewRows extends Repository<Crew, UUID> {
    Optional<Crew> findById(UUID id);

    List<Crew> findByBranchIdOrderByNameAscIdAsc(UUID branchId);

    @Query("select c.id from Crew c where c.leadPersonId = :personId and c.branchId = :branchId order by c.name, c.id")
    List<UUID> ledBy(UUID branchId, UUID personId);

    Crew saveAndFlush(Crew crew);
}
