package org.plumbrow.schedule.plan;

import java.util.Optional;
import java.util.UUID;

/**
 * Something in the branch's data that cannot hold, as the plan found it.
 *
 * @param kind a name of the core's findings, or NO_ARRAY
 * @param stopsPublishing whether the plan must not be published as long as it stands
 */
public record PlanFinding(String kind, Optional<UUID> activityId, boolean stopsPublishing, String sentence) {}
