package org.plumbrow.calc.planning.relax;

import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.plumbrow.calc.calendar.HalfDay;
import org.plumbrow.calc.planning.Activity;
import org.plumbrow.calc.planning.Fix;
import org.plumbrow.calc.planning.Guidance;
import org.plumbrow.calc.planning.Placement;
import org.plumbrow.calc.planning.Plan;
import org.plumbrow.calc.planning.PlanningProblem;
import org.plumbrow.calc.planning.PromiseOutcome;
import org.plumbrow.calc.planning.SerialPlanner;

/**
 * Tries what would move a date. Each try is a whole plan in the sequence of the given one, everything as early as that
 * lets it; the comparison is with the same plan without the relaxation, so that a gain is the relaxation's alone.
 */
public final class Relaxing {

    private final PlanningProblem problem;
    private final Guidance sequence;
    private final Plan base;
    private final String activityId;

    private Relaxing(PlanningProblem problem, Map<String, HalfDay> known, String activityId) {
        this.problem = problem;
        this.activityId = activityId;
        sequence = sequence(problem, known, Map.of());
        base = SerialPlanner.plan(problem, sequence);
    }

    /**
     * The answers.
     *
     * @param finish of the activity in the plan that all are compared with
     * @param moved what was tried, the largest gain first, of equals the one that costs others least
     */
    public record Answer(HalfDay finish, List<Moved> moved) {}

    /**
     * @param known the start of each activity in the plan that people know: who is served first; others come after
     * @return empty where the activity has no place
     */
    public static Optional<Answer> of(PlanningProblem problem, Map<String, HalfDay> known, String activityId) {
        Relaxing relaxing = new Relaxing(problem, known, activityId);
        return relaxing.base.of(activityId).map(placed -> relaxing.answer(placed, known));
    }

    private Answer answer(Placement placed, Map<String, HalfDay> known) {
        List<Moved> moved = Suggestions.of(problem, base, activityId).stream()
                .flatMap(relaxation -> tried(relaxation, placed.finish(), known).stream())
                .sorted(Comparator.comparingInt(Moved::daysGained).reversed().thenComparingLong(Moved::latenessChange))
                .toList();
        return new Answer(placed.finish(), moved);
    }

    private Optional<Moved> tried(Relaxation relaxation, HalfDay was, Map<String, HalfDay> known) {
        Guidance served = relaxation instanceof Relaxation.ServedBefore swap
                ? sequence(problem, known, Map.of(swap.projectId(), swap.otherProjectId()))
                : sequence;
        Plan plan = SerialPlanner.plan(Relaxed.of(problem, relaxation), served);
        return plan.of(activityId)
                .map(placed -> new Moved(
                        relaxation,
                        placed.finish(),
                        days(placed.finish(), was),
                        turned(base, plan),
                        turned(plan, base),
                        plan.weightedHalfDaysLate() - base.weightedHalfDaysLate()));
    }

    private int days(HalfDay now, HalfDay was) {
        return now.isAfter(was)
                ? -problem.calendar().workingDaysIn(was.date().plusDays(1), now.date())
                : problem.calendar().workingDaysIn(now.date().plusDays(1), was.date());
    }

    /** Promises that break in the one and hold in the other. */
    private static int turned(Plan one, Plan other) {
        int count = 0;
        for (int at = 0; at < one.promises().size(); at++) {
            count += breaks(one.promises().get(at)) && !breaks(other.promises().get(at)) ? 1 : 0;
        }
        return count;
    }

    private static boolean breaks(PromiseOutcome outcome) {
        return outcome.finish().isEmpty() || outcome.halfDaysLate() > 0;
    }

    /**
     * Who is served first: the free work by its known start.
     *
     * @param before of a project: the one before which it comes, from that one's first work on
     */
    private static Guidance sequence(PlanningProblem problem, Map<String, HalfDay> known, Map<String, String> before) {
        List<Activity> free = problem.activities().stream()
                .filter(activity -> activity.fix() instanceof Fix.Free && known.containsKey(activity.id()))
                .toList();
        Map<String, HalfDay> first = free.stream()
                .collect(
                        Collectors.toMap(Activity::projectId, activity -> known.get(activity.id()), Relaxing::earlier));
        Comparator<Activity> byStart = Comparator.comparing(activity -> {
            HalfDay start = known.get(activity.id());
            String other = before.get(activity.projectId());
            return other == null ? start : earlier(start, first.getOrDefault(other, start));
        });
        Comparator<Activity> preferred = byStart.thenComparing(activity -> !before.containsKey(activity.projectId()));
        List<Activity> served = free.stream()
                .sorted(preferred.thenComparing(activity -> known.get(activity.id())))
                .toList();
        Map<String, Guidance.Guide> guides = new HashMap<>();
        for (int rank = 0; rank < served.size(); rank++) {
            guides.put(served.get(rank).id(), new Guidance.Guide(rank, Optional.empty(), Optional.empty()));
        }
        return new Guidance(guides);
    }

    private static HalfDay earlier(HalfDay one, HalfDay other) {
        return other.isBefore(one) ? other : one;
    }
}
