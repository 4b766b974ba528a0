package org.plumbrow.schedule;

import java.util.List;
import java.util.UUID;

/**
 * A plan is now the published one: crews, feeds and customers see it from here on. Published in the change's transaction.
 *
 * @param projectIds projects of which a date has moved, or is new
 */
public record PlanPublished(UUID branchId, int number, List<UUID> projectIds) {

    public PlanPublished {
        projectIds = List.copyOf(projectIds);
    }
}
