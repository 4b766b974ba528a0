package org.plumbrow.calc.planning.bounds;

import java.util.List;
import java.util.function.BooleanSupplier;
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

    /** Rounds without a better bound after which steps become shorter. */
    private static final int PATIENCE = 12;

    /** Share of the present excess in the direction of a step; the rest is the direction before. */
    private static final double FRESH = 0.5;

    private static final double SHORTEST_STEP = 0.002;

    private final BranchModel model;
    private final List<JobTree> trees;
    private final Prices prices;
    private final Prices best;
    private final Prices direction;
    private final Usage usage;
    private final JobPricing pricing;
    private final long goal;
    private double value = Double.NEGATIVE_INFINITY;
    private double pace = 1;

    /** @param plan how far it reaches is how far prices reach */
    PriceBound(BranchModel model, ChainBound chains, Places places, Dates plan) {
        this.model = model;
        int horizon = horizon(model, plan);
        trees = JobTree.of(model);
        prices = new Prices(model, horizon);
        best = new Prices(model, horizon);
        direction = new Prices(model, horizon);
        usage = new Usage(model);
        pricing = new JobPricing(model, chains, places, prices, horizon);
        goal = plan.lateness();
    }

    private static int horizon(BranchModel model, Dates plan) {
        int last = model.slots.today;
        for (int number = 0; number < model.size(); number++) {
            last = plan.crew[number] >= 0 ? Math.max(last, plan.finish[number]) : last;
        }
        return Math.min(model.slots.size - 1, last + 1);
    }

    /** The least lateness that is proved; a fraction of a half-day counts as a whole one. */
    long value() {
        return (long) Math.ceil(value - 1e-6);
    }

    /** @return how many rounds it took */
    int run(int rounds, BooleanSupplier stopped) {
        int waited = 0;
        for (int round = 0; round < rounds; round++) {
            double now = evaluated();
            waited++;
            if (now > value + 1e-9) {
                waited = now > value + 1e-4 * Math.max(1, goal - value) ? 0 : waited;
                value = now;
                best.move(prices, direction, 0);
            }
            if (value() >= goal || pace < SHORTEST_STEP || stopped.getAsBoolean()) {
                return round + 1;
            }
            if (waited >= PATIENCE) {
                waited = 0;
                pace /= 2;
                prices.move(best, direction, 0);
                evaluated();
                prices.excess(usage, direction, 1);
            } else {
                prices.excess(usage, direction, round == 0 ? 1 : FRESH);
            }
            step(now);
        }
        return rounds;
    }

    private double evaluated() {
        prices.sumUp();
        usage.clear();
        double sum = model.settledLateness - prices.worth();
        for (JobTree tree : trees) {
            sum += pricing.cost(tree, usage);
        }
        return sum;
    }

    private void step(double now) {
        double square = prices.square(direction);
        if (square > 0) {
            prices.move(prices, direction, pace * (goal - now) / square);
        } else {
            pace = 0;
        }
    }
}
