package org.plumbrow.calc.planning;

import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A plan of a branch.
 *
 * @param placements by activity id, in the order of the problem; an activity that is missing here has a finding
 * @param promises in the order of the problem
 * @param findings what in the input could not hold
 */
public record Plan(Map<String, Placement> placements, List<PromiseOutcome> promises, List<Finding> findings) {

    public Plan {
        placements = Collections.unmodifiableMap(new LinkedHashMap<>(placements));
        promises = List.copyOf(promises);
        findings = List.copyOf(findings);
    }

    public Optional<Placement> of(String activityId) {
        return Optional.ofNullable(placements.get(activityId));
    }

    /** What the plan minimises: half-days late of every dated promise times its weight. */
    public long weightedHalfDaysLate() {
        return promises.stream()
                .mapToLong(outcome ->
                        (long) outcome.halfDaysLate() * outcome.promise().weight())
                .sum();
    }

    /** The same plan with some activities placed otherwise: for a what-if, or to show a checker what it must catch. */
    public Plan with(Placement... moved) {
        Map<String, Placement> all = new LinkedHashMap<>(placements);
        for (Placement placement : moved) {
            all.put(placement.activityId(), placement);
        }
        return new Plan(all, promises, findings);
    }

    /** The bookings of one crew, by start. */
    public List<Placement> ofCrew(String crewId) {
        return placements.values().stream()
                .filter(placement -> placement.crewId().filter(crewId::equals).isPresent())
                .sorted(Comparator.comparing(Placement::start).thenComparing(Placement::activityId))
                .toList();
    }
}
