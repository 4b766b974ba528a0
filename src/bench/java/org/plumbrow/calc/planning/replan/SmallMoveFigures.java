package org.plumbrow.calc.planning.replan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.plumbrow.calc.calendar.HalfDay;
import org.plumbrow.calc.planning.Fix;
import org.plumbrow.calc.planning.LargeBranch;
import org.plumbrow.calc.planning.Placement;
import org.plumbrow.calc.planning.Plan;
import org.plumbrow.calc.planning.PlanCheck;
import org.plumbrow.calc.planning.PlanningProblem;
import org.plumbrow.calc.planning.Published;
import org.plumbrow.calc.planning.engine.Effort;
import org.plumbrow.calc.planning.engine.Planner;
import org.plumbrow.calc.planning.engine.Watch;

/**
 * The next crew works of a branch, each moved by a working day for itself: how many dates move with it, how many half-days are
 * late by it, and how long a page waits; beside it what the right shift does. A line each seed. Arguments: projects, seeds (both
 * with commas), works to move.
 */
public final class SmallMoveFigures {

    private static final int THREADS = 2;

    private static final int ORDERS = 20_000;

    private SmallMoveFigures() {}

    public static void main(String[] arguments) {
        System.out.println("projects seed late before | moved dates: half of the works, nine of ten, most, sum"
                + " | by right shift: half, nine of ten, most, sum | later in sum, by right shift | ms: half, most");
        for (int size : ReplanFigures.numbers(arguments[0])) {
            for (int seed : ReplanFigures.numbers(arguments[1])) {
                print(size, seed, Integer.parseInt(arguments[2]));
            }
        }
    }

    private static void print(int size, int seed, int works) {
        PlanningProblem problem = LargeBranch.of(size, seed);
        Effort effort = new Effort(seed, ORDERS, 0, 0, 0, THREADS);
        Plan before =
                Planner.plan(problem, Optional.empty(), effort, Watch.NOBODY).plan();
        Published known =
                new Published(before, HalfDay.afternoon(problem.today().date().plusWeeks(8)));
        List<Placement> next = before.placements().values().stream()
                .filter(place -> place.crewId().isPresent() && place.start().isAfter(problem.today()))
                .sorted(Comparator.comparing(Placement::start).thenComparing(Placement::activityId))
                .limit(works)
                .toList();
        List<Long> moved = new ArrayList<>();
        List<Long> pushed = new ArrayList<>();
        List<Long> millis = new ArrayList<>();
        long later = 0;
        long laterByShift = 0;
        for (Placement place : next) {
            PlanningProblem asked = moved(problem, place);
            Plan shift = LeastChange.rightShift(asked, known);
            long begun = System.nanoTime();
            Plan plan = LeastChange.plan(asked, known);
            millis.add((System.nanoTime() - begun) / 1_000_000);
            if (!PlanCheck.breaches(asked, plan).isEmpty() && plan.findings().isEmpty()) {
                throw new IllegalStateException("a plan that breaks its rules");
            }
            moved.add(ReplanFigures.moved(plan, before::of));
            pushed.add(ReplanFigures.moved(shift, before::of));
            later += plan.weightedHalfDaysLate() - before.weightedHalfDaysLate();
            laterByShift += shift.weightedHalfDaysLate() - before.weightedHalfDaysLate();
        }
        System.out.printf(
                Locale.ROOT,
                "%d %d %d | %s | %s | %d %d | %d %d%n",
                size,
                seed,
                before.weightedHalfDaysLate(),
                said(moved),
                said(pushed),
                later,
                laterByShift,
                at(millis, 0.5),
                at(millis, 1));
    }

    private static PlanningProblem moved(PlanningProblem problem, Placement place) {
        HalfDay next = HalfDay.morning(problem.calendar().after(place.start().date(), 1));
        return problem.withActivities(activity -> activity.id().equals(place.activityId())
                ? activity.fixed(new Fix.Pinned(next, place.crewId()))
                : activity);
    }

    private static String said(List<Long> counts) {
        return "%d %d %d %d"
                .formatted(
                        at(counts, 0.5),
                        at(counts, 0.9),
                        at(counts, 1),
                        counts.stream().mapToLong(Long::longValue).sum());
    }

    private static long at(List<Long> numbers, double share) {
        List<Long> sorted = numbers.stream().sorted().toList();
        return sorted.get((int) Math.min(sorted.size() - 1, share * sorted.size()));
    }
}
