package org.plumbrow.calc.planning.relax;

import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.plumbrow.calc.calendar.HalfDay;
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
    private final Sequence sequence;
    private final Plan base;
    private final String activityId;

    private Relaxing(PlanningProblem problem, Plan known, String activityId) {
        this.problem = problem;
        this.activityId = activityId;
        sequence = new Sequence(problem, known);
        base = SerialPlanner.plan(problem, sequence.asKnown());
    }

    /**
     * The answers.
     *
     * @param finish of the activity in the plan that all are compared with
     * @param moved what was tried, the largest gain first, of equals the one that costs others least
     */
    public record Answer(HalfDay finish, List<Moved> moved) {}

    /**
     * @param known the plan that people know: its starts say who is served first, its crews do what they do there
     * @return empty where the activity has no place
     */
    public static Optional<Answer> of(PlanningProblem problem, Plan known, String activityId) {
        Relaxing relaxing = new Relaxing(problem, known, activityId);
        return relaxing.base.of(activityId).map(placed -> relaxing.answer(placed));
    }

    private Answer answer(Placement placed) {
        // Each try is a plan of its own and pure; the order of the answers is that of the suggestions, however many
        // threads.
        List<Moved> moved = Suggestions.of(problem, base, activityId).parallelStream()
                .flatMap(relaxation -> tried(relaxation, placed.finish()).stream())
                .sorted(Comparator.comparingInt(Moved::daysGained).reversed().thenComparingLong(Moved::latenessChange))
                .toList();
        return new Answer(placed.finish(), bestWeekOfEachCrew(moved));
    }

    /** Help is tried in every week in which that crew was busy elsewhere; the best of them is enough to know. */
    private static List<Moved> bestWeekOfEachCrew(List<Moved> moved) {
        Set<String> told = new HashSet<>();
        return moved.stream()
                .filter(one -> !(one.relaxation() instanceof Relaxation.CrewLike more) || told.add(more.crewId()))
                .toList();
    }

    private Optional<Moved> tried(Relaxation relaxation, HalfDay was) {
        Plan plan = SerialPlanner.plan(Relaxed.of(problem, relaxation), sequence.under(relaxation));
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
}
