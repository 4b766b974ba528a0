package org.plumbrow.calc.planning.causes;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.plumbrow.calc.planning.Activity;
import org.plumbrow.calc.planning.Crew;
import org.plumbrow.calc.planning.Finding;
import org.plumbrow.calc.planning.Fix;
import org.plumbrow.calc.planning.Plan;
import org.plumbrow.calc.planning.PlanningProblem;
import org.plumbrow.calc.planning.SerialPlanner;

/**
 * Finds a smallest set of conditions that cannot hold together (deletion filter: Chinneck and Dravnieks, ORSA Journal on
 * Computing 3, 1991): of all conditions one after the other is taken away for good if the activity cannot hold without it
 * either. What is left clashes, and changing any one of it is enough; there may be other such sets. Works that are neither
 * settled nor needed by the activity are left out, so no clash is due to how the plan ranks its work.
 */
public final class SmallestCauses {

    private final PlanningProblem problem;
    private final String activityId;

    private SmallestCauses(PlanningProblem problem, String activityId) {
        this.problem = problem;
        this.activityId = activityId;
    }

    /**
     * @param activityId of a finding
     * @return empty where the activity can hold once the works that are free make way, or where nothing that could be
     *     changed here is the cause (a circle)
     */
    public static List<Cause> of(PlanningProblem problem, String activityId) {
        PlanningProblem narrow = narrowed(problem, activityId);
        return new SmallestCauses(narrow, activityId).found();
    }

    private List<Cause> found() {
        if (!clashes(problem)) {
            return List.of();
        }
        Set<Cause> gone = new HashSet<>();
        List<Cause> left = new ArrayList<>();
        for (Cause cause : new Conditions(problem, horizon()).all()) {
            gone.add(cause);
            if (!clashes(WithoutCauses.of(problem, gone))) {
                gone.remove(cause);
                left.add(cause);
            }
        }
        return left;
    }

    /** The last settled start or planned finish: days off behind it bind nothing. */
    private LocalDate horizon() {
        LocalDate last = problem.today().date();
        for (Activity activity : problem.activities()) {
            if (activity.fix() instanceof Fix.Pinned pin && pin.start().date().isAfter(last)) {
                last = pin.start().date();
            }
        }
        return last;
    }

    /** Whichever crew is asked first: the planner gives a work to the first free one, and another might do as well. */
    private boolean clashes(PlanningProblem changed) {
        List<Crew> crews = new ArrayList<>(changed.crews());
        for (int turn = 0; turn < Math.max(1, crews.size()); turn++) {
            Plan plan = SerialPlanner.plan(asking(changed, crews));
            if (plan.findings().stream().map(Finding::activityId).noneMatch(activityId::equals)) {
                return false;
            }
            Collections.rotate(crews, 1);
        }
        return true;
    }

    /** Those whose crew is settled take it before others choose. */
    private static PlanningProblem asking(PlanningProblem problem, List<Crew> crews) {
        return new PlanningProblem(
                problem.calendar(),
                problem.today(),
                problem.lastDay(),
                problem.projects(),
                problem.activities().stream()
                        .sorted(Comparator.comparing(activity -> !(activity.fix() instanceof Fix.Pinned pin
                                && pin.crewId().isPresent())))
                        .toList(),
                crews,
                problem.equipment(),
                problem.promises(),
                problem.weather());
    }

    private static PlanningProblem narrowed(PlanningProblem problem, String activityId) {
        Activity asked = problem.activities().stream()
                .filter(one -> one.id().equals(activityId))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("no activity " + activityId));
        List<String> wanted = problem.activities().stream()
                .filter(one -> one.fix() instanceof Fix.Pinned
                        || one.fix() instanceof Fix.Begun
                        || one.id().equals(activityId)
                        || isOfGroup(one, asked))
                .map(Activity::id)
                .toList();
        return problem.narrowedTo(wanted, List.of());
    }

    private static boolean isOfGroup(Activity one, Activity asked) {
        return asked.continuityGroup().isPresent()
                && one.projectId().equals(asked.projectId())
                && one.continuityGroup().equals(asked.continuityGroup());
    }
}
