package org.plumbrow.calc.planning.replan;

import java.util.Optional;
import org.plumbrow.calc.planning.Activity;
import org.plumbrow.calc.planning.Fix;
import org.plumbrow.calc.planning.PlanningProblem;
import org.plumbrow.calc.planning.search.BranchModel;
import org.plumbrow.calc.planning.search.Dates;

/**
 * Fixes what people count on where it stands, with all that comes before it, so that only the rest is planned: what lies
 * farther ahead may then be as good as in a plan made anew.
 */
final class StandingWeeks {

    private final KnownPlaces known;
    private final BranchModel model;
    private final Dates dates;

    /** @param dates in which most of what people count on stands; what comes before it lies before it there */
    StandingWeeks(KnownPlaces known, Dates dates) {
        this.known = known;
        this.dates = dates;
        model = known.model;
    }

    PlanningProblem fixed() {
        boolean[] fixed = new boolean[model.size()];
        for (int at = model.size() - 1; at >= 0; at--) {
            int number = model.order[at];
            fixed[number] |= known.isCountedOn(number) && known.stands(number, dates);
            for (int before : model.tasks[number].predecessors) {
                fixed[before] |= fixed[number];
            }
        }
        return model.problem.withActivities(activity -> {
            int number = model.number(activity.id());
            return number >= 0 && fixed[number] ? fixed(activity, number) : activity;
        });
    }

    private Activity fixed(Activity activity, int number) {
        Optional<String> crew = dates.crew[number] < 0
                ? Optional.empty()
                : Optional.of(model.problem.crews().get(dates.crew[number]).id());
        return activity.fixed(new Fix.Pinned(model.slots.axis.at(dates.start[number]), crew));
    }
}
