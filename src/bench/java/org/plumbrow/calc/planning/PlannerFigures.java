package org.plumbrow.calc.planning;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.plumbrow.calc.planning.engine.Effort;
import org.plumbrow.calc.planning.engine.Planned;
import org.plumbrow.calc.planning.engine.Planner;
import org.plumbrow.calc.planning.engine.Watch;
import org.plumbrow.calc.planning.search.PlanSearch;

/**
 * Plans, bounds and seconds of whole branches, a line each. Arguments: sizes and seeds, both with commas, then (if wanted) how
 * many rounds of the solver. Each plan is held against the check; a bound above the plan ends the run.
 */
public final class PlannerFigures {

    private PlannerFigures() {}

    public static void main(String[] arguments) {
        int threads = Math.min(4, Runtime.getRuntime().availableProcessors());
        Optional<Integer> rounds = arguments.length > 2 ? Optional.of(Integer.valueOf(arguments[2])) : Optional.empty();
        System.out.println("projects seed urgent searched plan bound seconds");
        for (int size : numbers(arguments[0])) {
            for (int seed : numbers(arguments[1])) {
                print(size, seed, effort(size, rounds, threads));
            }
        }
    }

    private static Effort effort(int projects, Optional<Integer> rounds, int threads) {
        Effort usual = Effort.background(projects, threads);
        return new Effort(
                usual.seed(),
                usual.decodings(),
                rounds.orElse(usual.rounds()),
                usual.proofRounds(),
                usual.wholeWork(),
                threads);
    }

    private static List<Integer> numbers(String list) {
        return Stream.of(list.split(",")).map(Integer::valueOf).toList();
    }

    private static void print(int size, int seed, Effort effort) {
        PlanningProblem problem = LargeBranch.of(size, seed);
        long urgent = SerialPlanner.plan(problem).weightedHalfDaysLate();
        long searched = PlanSearch.plan(
                        problem, Optional.empty(), new PlanSearch.Effort(effort.decodings(), 1), () -> false)
                .weightedHalfDaysLate();
        long begun = System.nanoTime();
        Planned planned = Planner.plan(problem, Optional.empty(), effort, Watch.NOBODY);
        double seconds = (System.nanoTime() - begun) / 1e9;
        long late = planned.plan().weightedHalfDaysLate();
        if (!PlanCheck.breaches(problem, planned.plan()).isEmpty() || planned.lowerBound() > late) {
            throw new IllegalStateException("a plan or a bound that does not hold: %d, %d".formatted(size, seed));
        }
        System.out.printf(
                Locale.ROOT,
                "%d %d %d %d %d %d %.1f%n",
                size,
                seed,
                urgent,
                searched,
                late,
                planned.lowerBound(),
                seconds);
    }
}
