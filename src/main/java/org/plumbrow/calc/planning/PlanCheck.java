package org.plumbrow.calc.planning;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Holds a plan against its problem, whoever made it: rule by rule, with the calendar alone, sharing nothing with any
 * engine. A plan without a breach may be shown; a breach that no finding of the plan explains is a fault of the engine.
 */
public final class PlanCheck {

    final PlanningProblem problem;
    final Plan plan;
    final PlanWords words;
    final Map<String, Activity> activities = new HashMap<>();
    final Map<String, Crew> crews = new HashMap<>();
    private final List<Breach> breaches = new ArrayList<>();

    private PlanCheck(PlanningProblem problem, Plan plan) {
        this.problem = problem;
        this.plan = plan;
        words = new PlanWords(problem);
        problem.activities().forEach(activity -> activities.put(activity.id(), activity));
        problem.crews().forEach(crew -> crews.put(crew.id(), crew));
    }

    /** @return what the plan does not keep; empty when it keeps all */
    public static List<Breach> breaches(PlanningProblem problem, Plan plan) {
        PlanCheck check = new PlanCheck(problem, plan);
        check.everythingIsPlacedOrExplained();
        new TimeRules(check).checkAll();
        new CrewRules(check).checkAll();
        new EquipmentRules(check).checkAll();
        return List.copyOf(check.breaches);
    }

    private void everythingIsPlacedOrExplained() {
        Set<String> explained = plan.findings().stream()
                .filter(finding -> finding.kind().unplanned())
                .map(Finding::activityId)
                .collect(Collectors.toSet());
        for (Activity activity : problem.activities()) {
            if (plan.of(activity.id()).isEmpty() && !explained.contains(activity.id())) {
                breach(Breach.Rule.MISSING, activity, "%s has no date and nothing says why.".formatted(name(activity)));
            }
        }
    }

    void breach(Breach.Rule rule, Activity activity, String sentence) {
        breaches.add(new Breach(rule, activity.id(), Optional.empty(), sentence));
    }

    void breach(Breach.Rule rule, Activity activity, Activity other, String sentence) {
        breaches.add(new Breach(rule, activity.id(), Optional.of(other.id()), sentence));
    }

    String name(Activity activity) {
        return words.activity(activity.id());
    }

    Optional<Crew> crewOf(Placement placement) {
        return placement.crewId().map(crews::get);
    }
}
