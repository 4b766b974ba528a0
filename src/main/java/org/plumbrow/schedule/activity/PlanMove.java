package org.plumbrow.schedule.activity;

import java.time.Instant;
import java.util.Optional;
import java.util.UUID;

/**
 * A start that somebody settled or left to the plan again.
 *
 * @param number counts up in the branch
 * @param key of the activity within its project
 * @param was how it was settled before; empty if it was not
 * @param versionAfter the activity's version that the move left behind
 * @param versionNow the activity's version by now
 */
public record PlanMove(
        long number,
        UUID activityId,
        UUID projectId,
        String key,
        Optional<Pin> was,
        long versionAfter,
        long versionNow,
        String sentence,
        String by,
        Instant at) {

    /** Whether nobody changed the activity since. */
    public boolean stillStands() {
        return versionAfter == versionNow;
    }
}
