package org.plumbrow.schedule.plan;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.plumbrow.calc.calendar.HalfDay;
import org.plumbrow.calc.planning.Bound;
import org.plumbrow.calc.planning.Placement;
import org.plumbrow.calc.planning.Plan;
import org.plumbrow.calc.planning.Published;

/** A stored plan as the core reads it: where things stand, not why. Pure. */
public final class KnownPlan {

    /** So far ahead people have arranged themselves: the weeks of the look-ahead. */
    private static final int WEEKS_COUNTED_ON = 8;

    private KnownPlan() {}

    public static Plan of(List<PlannedRow> rows) {
        Map<String, Placement> placements = new LinkedHashMap<>();
        for (PlannedRow row : rows) {
            String id = row.activityId().toString();
            placements.put(
                    id,
                    new Placement(id, row.start(), row.finish(), row.crewId().map(UUID::toString), new Bound.Today()));
        }
        return new Plan(placements, List.of(), List.of());
    }

    /** With the weeks on which people count. */
    public static Published published(List<PlannedRow> rows, HalfDay today) {
        return new Published(of(rows), HalfDay.afternoon(today.date().plusWeeks(WEEKS_COUNTED_ON)));
    }
}
