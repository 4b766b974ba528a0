package org.plumbrow.calc.planning.replan;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.plumbrow.calc.calendar.HalfDay;
import org.plumbrow.calc.planning.LargeBranch;
import org.plumbrow.calc.planning.Placement;
import org.plumbrow.calc.planning.Plan;
import org.plumbrow.calc.planning.PlanCheck;
import org.plumbrow.calc.planning.PlanningProblem;
import org.plumbrow.calc.planning.Published;
import org.plumbrow.calc.planning.search.PlanSearch;

/**
 * A branch loses its first crew for the third week: weighted half-days late and moved tasks of the next eight weeks, by right
 * shift, by least change and planned anew, a line each seed. Arguments: projects, seeds (both with commas), orders that
 * the plan before and the plan anew may try, orders of the longer search for less change.
 */
public final class ReplanFigures {

    private ReplanFigures() {}

    public static void main(String[] arguments) {
        int anewOrders = arguments.length > 2 ? Integer.parseInt(arguments[2]) : 20_000;
        int orders = arguments.length > 3 ? Integer.parseInt(arguments[3]) : 6_000;
        System.out.println("projects seed tasks before | shift: late moved ms | page: late moved ms"
                + " | searched: late moved ms | anew: late moved ms");
        for (int size : numbers(arguments[0])) {
            for (int seed : numbers(arguments[1])) {
                print(size, seed, anewOrders, orders);
            }
        }
    }

    private static List<Integer> numbers(String list) {
        return Stream.of(list.split(",")).map(Integer::valueOf).toList();
    }

    private static void print(int size, int seed, int anewOrders, int orders) {
        PlanningProblem problem = LargeBranch.of(size, seed);
        PlanSearch.Effort anew = new PlanSearch.Effort(anewOrders, 1);
        Plan before = PlanSearch.plan(problem, Optional.empty(), anew, () -> false);
        Published known =
                new Published(before, HalfDay.afternoon(problem.today().date().plusWeeks(8)));
        PlanningProblem lost = LostWeek.of(problem, 0, 2);
        for (int warm = 0; warm < 5; warm++) {
            LeastChange.rightShift(lost, known);
        }
        long tasks = before.placements().keySet().stream()
                .filter(id -> known.known(id).isPresent())
                .count();
        System.out.printf(Locale.ROOT, "%d %d %d %d", size, seed, tasks, before.weightedHalfDaysLate());
        said(lost, known, () -> LeastChange.rightShift(lost, known));
        said(lost, known, () -> LeastChange.plan(lost, known));
        said(lost, known, () -> LeastChange.plan(lost, known, orders, () -> false));
        said(lost, known, () -> PlanSearch.plan(lost, Optional.empty(), anew, () -> false));
        System.out.println();
    }

    private static void said(PlanningProblem lost, Published known, java.util.function.Supplier<Plan> planning) {
        long begun = System.nanoTime();
        Plan plan = planning.get();
        double millis = (System.nanoTime() - begun) / 1e6;
        if (!PlanCheck.breaches(lost, plan).isEmpty()) {
            throw new IllegalStateException("a plan that breaks its rules");
        }
        long moved = plan.placements().values().stream()
                .filter(now -> known.known(now.activityId())
                        .filter(was -> moved(was, now))
                        .isPresent())
                .count();
        System.out.printf(Locale.ROOT, " | %d %d %.0f", plan.weightedHalfDaysLate(), moved, millis);
    }

    private static boolean moved(Placement was, Placement now) {
        return !was.start().equals(now.start()) || !was.crewId().equals(now.crewId());
    }
}
