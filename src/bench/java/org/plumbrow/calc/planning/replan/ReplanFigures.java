package org.plumbrow.calc.planning.replan;

import com.sun.management.OperatingSystemMXBean;
import java.lang.management.ManagementFactory;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.plumbrow.calc.calendar.HalfDay;
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
 * A branch loses its first crew for the third week: weighted half-days late, and moved starts or crews of the next eight weeks
 * and of all time, by right shift, by what a page shows, by the draft as the background run makes it, and planned anew with the
 * same effort; a line each seed. The plan before is made with that effort, too. Arguments: projects, seeds (both with commas),
 * and unless the background run's are meant orders, rounds of pieces and of proof.
 */
public final class ReplanFigures {

    private static final int THREADS = 2;

    private ReplanFigures() {}

    public static void main(String[] arguments) {
        System.out.println(
                "projects seed tasks before | of each: late, moved of them, moved of all, ms, ms of processor"
                        + " | shift | page | draft | anew");
        for (int size : numbers(arguments[0])) {
            for (int seed : numbers(arguments[1])) {
                print(size, seed, effort(size, arguments));
            }
        }
    }

    private static Effort effort(int projects, String[] arguments) {
        Effort usual = Effort.background(projects, THREADS);
        return arguments.length < 5
                ? usual
                : new Effort(
                        usual.seed(),
                        Integer.parseInt(arguments[2]),
                        Integer.parseInt(arguments[3]),
                        Integer.parseInt(arguments[4]),
                        0,
                        THREADS);
    }

    static List<Integer> numbers(String list) {
        return Stream.of(list.split(",")).map(Integer::valueOf).toList();
    }

    private static void print(int size, int seed, Effort effort) {
        PlanningProblem problem = LargeBranch.of(size, seed);
        Plan before =
                Planner.plan(problem, Optional.empty(), effort, Watch.NOBODY).plan();
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
        said(
                lost,
                known,
                () -> Draft.of(lost, Optional.of(known), effort, Watch.NOBODY).plan());
        said(
                lost,
                known,
                () -> Planner.plan(lost, Optional.empty(), effort, Watch.NOBODY).plan());
        System.out.println();
    }

    private static void said(PlanningProblem lost, Published known, Supplier<Plan> planning) {
        long begun = System.nanoTime();
        long used = processorNanos();
        Plan plan = planning.get();
        double millis = (System.nanoTime() - begun) / 1e6;
        double onProcessor = (processorNanos() - used) / 1e6;
        if (!PlanCheck.breaches(lost, plan).isEmpty()) {
            throw new IllegalStateException("a plan that breaks its rules");
        }
        System.out.printf(
                Locale.ROOT,
                " | %d %d %d %.0f %.0f",
                plan.weightedHalfDaysLate(),
                moved(plan, id -> known.known(id)),
                moved(plan, id -> known.plan().of(id)),
                millis,
                onProcessor);
    }

    private static long processorNanos() {
        return ((OperatingSystemMXBean) ManagementFactory.getOperatingSystemMXBean()).getProcessCpuTime();
    }

    /** Starts or crews that are others than known. @param known what is counted, by activity */
    static long moved(Plan plan, Function<String, Optional<Placement>> known) {
        return plan.placements().values().stream()
                .filter(now -> known.apply(now.activityId())
                        .filter(was -> moved(was, now))
                        .isPresent())
                .count();
    }

    private static boolean moved(Placement was, Placement now) {
        return !was.start().equals(now.start()) || !was.crewId().equals(now.crewId());
    }
}
