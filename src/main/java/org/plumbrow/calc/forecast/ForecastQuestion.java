package org.plumbrow.calc.forecast;

import java.util.List;
import java.util.Map;
import org.plumbrow.calc.planning.Plan;
import org.plumbrow.calc.planning.PlanningProblem;

/**
 * A plan and how uncertain its parts are.
 *
 * @param plan of this problem; activities without a place in it are left out, and targets that need them have no forecast
 * @param uncertain by activity id; what is not named takes as long as it was planned with. Of work that has begun, the
 *     whole of it (what is left shrinks alike); of a wait that has begun, the whole wait
 * @param targets whose dates are asked
 * @param overtaking whether a crew or a piece of equipment goes to the next work that fits while an earlier one waits; else
 *     it keeps the plan's order whatever happens
 */
public record ForecastQuestion(
        PlanningProblem problem,
        Plan plan,
        Map<String, Uncertainty> uncertain,
        List<Target> targets,
        boolean overtaking) {

    public ForecastQuestion {
        uncertain = Map.copyOf(uncertain);
        targets = List.copyOf(targets);
    }
}
