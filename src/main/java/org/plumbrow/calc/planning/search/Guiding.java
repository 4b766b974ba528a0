package org.plumbrow.calc.planning.search;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import org.plumbrow.calc.planning.Guidance;

/** Takes what a search has found back to the planner. */
public final class Guiding {

    private Guiding() {}

    /** The same sequence and the same crews: the planner then finds the same dates. */
    public static Guidance guidance(BranchModel model, Order order, Dates dates) {
        Map<String, Guidance.Guide> guides = new HashMap<>();
        for (int rank = 0; rank < dates.served.length; rank++) {
            int number = dates.served[rank];
            int crew = dates.crew[number];
            int held = order.notBefore()[number];
            guides.put(
                    model.tasks[number].activity.id(),
                    new Guidance.Guide(
                            rank,
                            crew < 0
                                    ? Optional.empty()
                                    : Optional.of(
                                            model.problem.crews().get(crew).id()),
                            held <= 0 ? Optional.empty() : Optional.of(model.slots.axis.at(held))));
        }
        return new Guidance(guides);
    }
}
