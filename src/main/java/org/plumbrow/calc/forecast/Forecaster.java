package org.plumbrow.calc.forecast;

import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.stream.IntStream;

/**
 * Plays a plan many times (Monte Carlo along the plan's order, kept or overtaken where one waits). Accuracy: at 10,000 runs a chance is known to within one
 * point at 95 % confidence; {@link Effort} stops earlier where that is not needed.
 */
public final class Forecaster {

    /** Runs whose binding chains are followed to say what drives a date. */
    private static final int FOLLOWED = 2 * Block.RUNS;

    private static final int MOST_DRIVERS = 10;
    private static final int NOT_EXPLAINED = -1;
    private static final double CONFIDENCE_Z = 1.96;
    private static final double CHANCE_KNOWN_TO = 0.02;

    private final Effort effort;
    private final DayTables time;
    private final FairDays sky;
    private final Claims claims;
    private final Step[] steps;
    private final List<Target> targets;
    private final int[][] stepsOfTarget;
    /** Of each target its place among those that are explained, or -1. */
    private final int[] explained;

    private final ConcurrentLinkedQueue<Block> spare = new ConcurrentLinkedQueue<>();

    private Forecaster(ForecastQuestion question, Effort effort) {
        this.effort = effort;
        time = new DayTables(question.problem(), question.plan());
        sky = new FairDays(question.problem().weather(), time);
        claims = new Claims(question.problem(), time);
        Steps made = new Steps(question, time, claims);
        steps = made.made().toArray(Step[]::new);
        targets = question.targets().stream()
                .filter(target -> target.activityIds().stream().allMatch(id -> made.placeOf(id) != null))
                .toList();
        stepsOfTarget = targets.stream()
                .map(target -> target.activityIds().stream()
                        .mapToInt(id -> Objects.requireNonNull(made.placeOf(id)))
                        .toArray())
                .toArray(int[][]::new);
        explained = new int[targets.size()];
        int next = 0;
        for (int target = 0; target < explained.length; target++) {
            explained[target] = targets.get(target).explained() ? next++ : NOT_EXPLAINED;
        }
    }

    public static Forecast forecast(ForecastQuestion question, Effort effort) {
        return new Forecaster(question, effort).forecast();
    }

    private Forecast forecast() {
        Tally all = new Tally(targets.size(), time.days());
        Drivers drivers = new Drivers(
                steps.length, (int) targets.stream().filter(Target::explained).count());
        int runs = 0;
        while (runs < effort.most() && !(effort.stopEarly() && runs > 0 && isSettled(all, runs))) {
            int from = runs;
            IntStream.range(0, Effort.ROUND / Block.RUNS)
                    .parallel()
                    .mapToObj(block -> played(from + block * Block.RUNS, drivers))
                    .forEachOrdered(all::add);
            runs += Effort.ROUND;
        }
        return new Forecast(runs, said(all, drivers));
    }

    private Tally played(int firstRun, Drivers drivers) {
        Block block = Optional.ofNullable(spare.poll()).orElseGet(() -> new Block(steps, time, sky, claims));
        block.play(firstRun, effort.seed());
        Tally tally = new Tally(targets.size(), time.days());
        for (int target = 0; target < targets.size(); target++) {
            for (int run = 0; run < Block.RUNS; run++) {
                tally.reached(target, block.finish(last(block, target, run), run) >> 1);
            }
        }
        if (firstRun < FOLLOWED) {
            follow(block, drivers);
        }
        spare.add(block);
        return tally;
    }

    private void follow(Block block, Drivers drivers) {
        int[] binding = block.bindings();
        synchronized (drivers) {
            for (int target = 0; target < targets.size(); target++) {
                for (int run = 0; run < Block.RUNS && explained[target] != NOT_EXPLAINED; run++) {
                    int last = last(block, target, run);
                    boolean late = isLate(target, block.finish(last, run) >> 1);
                    drivers.follow(binding, explained[target], run, last, late);
                }
            }
        }
    }

    private int last(Block block, int target, int run) {
        int last = stepsOfTarget[target][0];
        for (int step : stepsOfTarget[target]) {
            if (block.finish(step, run) > block.finish(last, run)) {
                last = step;
            }
        }
        return last;
    }

    private int keptUntil(int target) {
        return targets.get(target)
                .keptUntil()
                .map(date -> Math.toIntExact(ChronoUnit.DAYS.between(time.first, date)))
                .orElse(Integer.MAX_VALUE);
    }

    private boolean isLate(int target, int day) {
        return day > keptUntil(target);
    }

    private boolean isSettled(Tally tally, int runs) {
        return IntStream.range(0, targets.size()).allMatch(target -> isSettled(tally, target, runs));
    }

    private boolean isSettled(Tally tally, int target, int runs) {
        double kept = keptUntil(target) == Integer.MAX_VALUE ? 1 : tally.shareBy(target, keptUntil(target));
        double chanceWithin = CONFIDENCE_Z * Math.sqrt(kept * (1 - kept) / runs);
        double rankWithin = CONFIDENCE_Z * Math.sqrt(0.8 * 0.2 / runs);
        int width = tally.dayOf(target, Math.min(1, 0.8 + rankWithin)) - tally.dayOf(target, 0.8 - rankWithin);
        return chanceWithin <= CHANCE_KNOWN_TO && width <= 2;
    }

    private List<TargetForecast> said(Tally tally, Drivers drivers) {
        List<TargetForecast> said = new ArrayList<>();
        for (int target = 0; target < targets.size(); target++) {
            int at = target;
            said.add(new TargetForecast(
                    targets.get(target),
                    time.date(tally.dayOf(target, 0.5)),
                    time.date(tally.dayOf(target, 0.8)),
                    time.date(tally.dayOf(target, 0.95)),
                    targets.get(target).keptUntil().map(date -> tally.shareBy(at, keptUntil(at))),
                    explained[target] == NOT_EXPLAINED ? List.of() : strongest(drivers, explained[target])));
        }
        return said;
    }

    private List<Driver> strongest(Drivers drivers, int target) {
        double[] shares = drivers.shares(target);
        // Of equals the last first: nearest to the date.
        return IntStream.iterate(steps.length - 1, step -> step >= 0, step -> step - 1)
                .filter(step -> shares[step] > 0)
                .mapToObj(step -> new Driver(steps[step].id(), shares[step]))
                .sorted(Comparator.comparingDouble(Driver::share).reversed())
                .limit(MOST_DRIVERS)
                .toList();
    }
}
