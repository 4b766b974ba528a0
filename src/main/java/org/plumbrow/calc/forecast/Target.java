package org.plumbrow.calc.forecast;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * A milestone to forecast: reached when all of its activities are finished.
 *
 * @param activityIds at least one
 * @param keptUntil the last day that keeps its promise; empty where nothing was promised
 */
public record Target(String projectId, String milestone, List<String> activityIds, Optional<LocalDate> keptUntil) {

    public Target {
        if (activityIds.isEmpty()) {
            throw new IllegalArgumentException("target " + milestone + " names no activity");
        }
        activityIds = List.copyOf(activityIds);
    }
}
