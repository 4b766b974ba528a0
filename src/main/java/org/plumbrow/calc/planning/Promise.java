package org.plumbrow.calc.planning;

import java.time.LocalDate;
import java.util.List;

/**
 * A date told to the customer for one milestone; kept when all of its activities are finished on that day.
 *
 * @param milestone as people call it: "system on"
 * @param activityIds at least one, all of that project
 * @param weight 1 to 5: how much a half-day late counts
 */
public record Promise(String projectId, String milestone, List<String> activityIds, LocalDate date, int weight) {

    public Promise {
        if (activityIds.isEmpty()) {
            throw new IllegalArgumentException("promise of " + milestone + " names no activity");
        }
        if (weight < 1 || weight > 5) {
            throw new IllegalArgumentException("weight of a promise is outside 1 to 5: " + weight);
        }
        activityIds = List.copyOf(activityIds);
    }
}
