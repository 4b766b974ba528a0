package org.plumbrow.schedule.scenario;

import java.util.List;

/**
 * The plan as it stands, or a scenario, as a column of the comparison.
 *
 * @param halfDaysLate of all promises, weighted
 * @param jobsMoved with a date that moves within eight weeks
 * @param breaking promises that break or break by more, in words
 * @param crewsToTell names of crews whose next eight weeks differ
 * @param customersToTell projects whose power is off on another day
 */
record ScenarioView(
        String name,
        String what,
        String href,
        long kept,
        long broken,
        long halfDaysLate,
        int jobsMoved,
        List<String> breaking,
        List<String> crewsToTell,
        List<String> customersToTell) {}
