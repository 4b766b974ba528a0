package org.plumbrow.calc.forecast;

import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.stream.IntStream;

/**
 * Plays a plan many times (Monte Carlo along the plan's order, kept or overtaken where one waits). Accuracy: at 10,000 runs a chance is known to within one
 * point at 95 % confidence; {@link Effort} stops earlier where that is not needed.
 */
public final class Forecaster {

    private static final double CONFIDENCE_Z = 1.96;
    private static final double CHANCE_KNOWN_TO = 0.02;

    private final Effort effort;
    private final DayTables time;
    private final FairDays sky;
    private final Claims claims;
    private final Step[] steps;
    private final List<Target> targets;
    private final int[][] stepsOfTarget;
    private final Rows rows;
    private final ConcurrentLinkedQueue<Player> spare = new ConcurrentLinkedQueue<>();

    /** What one thread needs for itself. */
    private record Player(Block block, Tally tally) {}

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
        BitSet asked = new BitSet();
        Arrays.stream(stepsOfTarget).flatMapToInt(Arrays::stream).forEach(asked::set);
        rows = Rows.reused(steps, asked);
    }

    public static Forecast forecast(ForecastQuestion question, Effort effort) {
        return new Forecaster(question, effort).forecast();
    }

    private Forecast forecast() {
        Tally all = new Tally(targets.size(), time.days());
        Drivers drivers = new Drivers(Arrays.stream(steps).map(Step::id).toList());
        int runs = 0;
        while (runs < effort.most() && !(effort.stopEarly() && runs > 0 && isSettled(all, runs))) {
            int from = runs;
            IntStream.range(0, Effort.ROUND / Block.RUNS)
                    .parallel()
                    .forEach(block -> play(from + block * Block.RUNS, drivers));
            spare.forEach(player -> player.tally.moveTo(all));
            runs += Effort.ROUND;
        }
        return new Forecast(runs, said(all, drivers));
    }

    private void play(int firstRun, Drivers drivers) {
        Player player = Optional.ofNullable(spare.poll()).orElseGet(this::player);
        boolean explained = firstRun < Drivers.RUNS;
        Block block = explained ? Block.explained(steps, time, sky, claims) : player.block;
        block.play(firstRun, effort.seed());
        for (int target = 0; target < targets.size(); target++) {
            for (int run = 0; run < Block.RUNS; run++) {
                player.tally.reached(target, block.finish(last(block, target, run), run) >> 1);
            }
        }
        if (explained) {
            drivers.keep(firstRun, followed(block));
        }
        spare.add(player);
    }

    private Player player() {
        return new Player(Block.counted(steps, time, sky, claims, rows), new Tally(targets.size(), time.days()));
    }

    private Drivers.Followed followed(Block block) {
        int[] lasts = new int[targets.size() * Block.RUNS];
        boolean[] late = new boolean[lasts.length];
        for (int target = 0; target < targets.size(); target++) {
            int keptUntil = keptUntil(target);
            for (int run = 0; run < Block.RUNS; run++) {
                int at = target * Block.RUNS + run;
                lasts[at] = last(block, target, run);
                late[at] = block.finish(lasts[at], run) >> 1 > keptUntil;
            }
        }
        return new Drivers.Followed(block.bindings(), lasts, late);
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
        List<Integer> explained = IntStream.range(0, targets.size())
                .filter(target -> targets.get(target).explained())
                .boxed()
                .toList();
        Map<Integer, List<Driver>> explanations = drivers.strongest(explained);
        List<TargetForecast> said = new ArrayList<>();
        for (int target = 0; target < targets.size(); target++) {
            int at = target;
            said.add(new TargetForecast(
                    targets.get(target),
                    time.date(tally.dayOf(target, 0.5)),
                    time.date(tally.dayOf(target, 0.8)),
                    time.date(tally.dayOf(target, 0.95)),
                    targets.get(target).keptUntil().map(date -> tally.shareBy(at, keptUntil(at))),
                    explanations.getOrDefault(target, List.of())));
        }
        return said;
    }
}
