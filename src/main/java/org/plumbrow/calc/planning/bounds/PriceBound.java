package org.plumbrow.calc.planning.bounds;

import java.util.ArrayList;
import java.util.List;
import java.util.function.BooleanSupplier;
import java.util.stream.IntStream;
import org.plumbrow.calc.planning.search.BranchModel;
import org.plumbrow.calc.planning.search.Dates;

/**
 * Crews and equipment for rent: each job buys the half-days it needs and pays for being late, on its own; what all jobs pay
 * together less what all half-days there are would cost is never more than the lateness of any plan, whatever the prices
 * (Lagrangian relaxation, as in Held, Wolfe, Crowder, Mathematical Programming 6, 1974). Prices rise where jobs ask for more
 * than there is and fall where they ask for less.
 *
 * <p>Left out: that one crew does a group of activities, and all but one of the links after an activity.
 */
final class PriceBound {

    /** Share of the present excess in the direction of a step; the rest is the direction before. */
    private static final double FRESH = 0.3;

    /**
     * So many half-days on end have one price, and at first crews that may do the same works, too: which of them works, and
     * on which day, says nothing as long as it is not known what they are worth together. Found by trials at 150 and 300
     * projects (150, 4: 644 of 1,343 after 400 rounds with a price of its own for each half-day and crew, 864 with prices in common).
     */
    private enum Grain {
        EIGHT_DAYS(16, true, 0.07, 0.6, 0.03),
        TWO_DAYS(4, true, 0.4, 0.6, 0.003),
        HALF_DAY(1, true, 0.3, 0.1, 0.003),
        EACH_CREW(1, false, 0.3, 0.03, 0.001);

        private final int halfDays;
        private final boolean together;
        /** Of all rounds. */
        private final double share;
        /** Share of the way to the plan's lateness that a step goes, in the first round and the last. */
        private final double firstPace;

        private final double lastPace;

        Grain(int halfDays, boolean together, double share, double firstPace, double lastPace) {
            this.halfDays = halfDays;
            this.together = together;
            this.share = share;
            this.firstPace = firstPace;
            this.lastPace = lastPace;
        }
    }

    /** Half-days with one price in the mix of ways, and how many rounds that gets at most. */
    private static final int[] MIX_GRAINS = {8, 4};

    private static final int MIX_ROUNDS = 40;

    /** Share of a round in the mean of where tasks start. */
    private static final double REMEMBERED = 0.02;

    /** Rounds after which the mean is noted for the first time. */
    private static final int EARLY = 50;

    private final PricedBranch branch;
    private final double[] meanStart;
    /** How many rounds are in the mean. */
    private int seen;

    private final List<int[]> wishes = new ArrayList<>();

    private final Prices direction;

    /** @param plan how far it reaches is how far prices reach */
    PriceBound(BranchModel model, ChainBound chains, Places places, Dates plan, int threads) {
        branch = new PricedBranch(model, chains, places, plan, threads);
        direction = new Prices(model, branch.prices.horizon);
        meanStart = new double[model.size()];
    }

    /** The least lateness that is proved; a fraction of a half-day counts as a whole one. */
    long value() {
        return (long) Math.ceil(branch.value() - 1e-6);
    }

    void run(int rounds, BooleanSupplier stopped) {
        step(Grain.EIGHT_DAYS, rounds, stopped);
        if (MixSearch.isThere()) {
            MixSearch mix = new MixSearch(branch);
            for (int grain : MIX_GRAINS) {
                mix.run(grain, Math.min(rounds, MIX_ROUNDS), stopped);
            }
        } else {
            step(Grain.TWO_DAYS, rounds, stopped);
        }
        step(Grain.HALF_DAY, rounds, stopped);
        noteWishes();
        step(Grain.EACH_CREW, rounds, stopped);
        noteWishes();
    }

    /**
     * At some moments: where each task starts in the mean of the last rounds, which comes near to sharing what there is; -1
     * where no promise waits for its crew.
     */
    List<int[]> wishes() {
        return List.copyOf(wishes);
    }

    private void noteWishes() {
        if (seen > 0) {
            wishes.add(IntStream.range(0, meanStart.length)
                    .map(number -> branch.jobs.starts[number] < 0 ? -1 : (int) Math.round(meanStart[number]))
                    .toArray());
        }
    }

    private void remember(Grain grain) {
        seen = grain.halfDays > 1 ? 0 : seen + 1;
        double share = Math.max(REMEMBERED, 1.0 / Math.max(1, seen));
        for (int number = 0; number < meanStart.length; number++) {
            meanStart[number] += share * (branch.jobs.starts[number] - meanStart[number]);
        }
        if (seen == EARLY) {
            noteWishes();
        }
    }

    private void step(Grain grain, int allRounds, BooleanSupplier stopped) {
        int rounds = (int) Math.ceil(allRounds * grain.share);
        double cooling = Math.pow(grain.lastPace / grain.firstPace, 1.0 / Math.max(1, rounds));
        double pace = grain.firstPace;
        List<int[]> alike = grain.together ? branch.alike : LikeCrews.eachAlone(branch.model);
        branch.prices.take(branch.best);
        for (int round = 0; round < rounds && !branch.isReached() && !stopped.getAsBoolean(); round++) {
            double now = branch.evaluate();
            remember(grain);
            branch.prices.excess(branch.usage, direction, round == 0 ? 1 : FRESH, grain.halfDays, alike);
            double square = branch.prices.square(direction);
            if (square == 0) {
                return;
            }
            branch.prices.move(branch.prices, direction, pace * (branch.plan.lateness() - now) / square);
            pace *= cooling;
        }
    }
}
