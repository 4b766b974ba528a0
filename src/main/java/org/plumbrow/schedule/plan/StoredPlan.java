package org.plumbrow.schedule.plan;

import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.Collectors;

/** A plan as it is stored, whole. */
public record StoredPlan(
        PlanHead head,
        List<PlannedRow> rows,
        List<PlannedPromise> promises,
        List<PlanFinding> findings,
        List<MachineBooking> machines) {

    public Map<UUID, PlannedRow> byActivity() {
        return rows.stream().collect(Collectors.toMap(PlannedRow::activityId, Function.identity()));
    }

    /** Every project that has a place or a promise in it. */
    public List<UUID> projectIds() {
        return java.util.stream.Stream.concat(
                        rows.stream().map(PlannedRow::projectId),
                        promises.stream().map(PlannedPromise::projectId))
                .distinct()
                .toList();
    }

    public boolean canBePublished() {
        return findings.stream().noneMatch(PlanFinding::stopsPublishing);
    }
}
