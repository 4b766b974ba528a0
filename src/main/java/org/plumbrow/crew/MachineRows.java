package org.plumbrow.crew;

import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.springframework.data.repository.Repository;

/** Shared machines as stored. */
interface MachineRows extends Repository<Machine, UUID> {
    Optional<Machine> findById(UUID id);

    List<Machine> findByBranchIdOrderByNameAscIdAsc(UUID branchId);

    Machine saveAndFlush(Machine machine);
}
