package org.plumbrow.calc.forecast;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * A milestone to forecast: reached when all of its activities are finished.
 *
 * @param activityIds at least one
 * @param keptUntil the last day that keeps its promise; empty where nothing was promised
 * @param explained whether it is asked what drives the date; it takes memory for every activity of the plan
 */
public record Target(
        String projectId,
        String milestone,
        List<String> activityIds,
        Optional<LocalDate> keptUntil,
        boolean explained) {

    public Target {
        if (activityIds.isEmpty()) {
            throw new IllegalArgumentException("target " + milestone + " names no activity");
        }
        activityIds = List.copyOf(activityIds);
    }
}
