package org.plumbrow.project;

import java.util.Set;
import java.util.UUID;

/**
 * Which projects a crew lead may open: those on which the crew is booked, some weeks back and ahead. Supplied by the
 * room that books crews; without it a crew lead opens none.
 */
public interface CrewLeadReach {

    boolean reaches(UUID personId, UUID projectId);

    /** @return ids of all projects of the branch that the person may open */
    Set<UUID> within(UUID personId, UUID branchId);
}
