package org.plumbrow.calc.planning;

import java.util.Optional;
import org.plumbrow.calc.calendar.HalfDay;

/**
 * The plan that people already know, and how far ahead they count on it.
 *
 * @param through the last half-day whose starts people have arranged themselves for; later ones may move freely
 */
public record Published(Plan plan, HalfDay through) {

    /** The known placement of a crew's work that starts by then; empty for all else. */
    public Optional<Placement> known(String activityId) {
        return plan.of(activityId)
                .filter(placement ->
                        placement.crewId().isPresent() && !placement.start().isAfter(through));
    }
}
