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

    /** Share of the present excess in the direction of a step; the rest is the direction before. */
    private static final double FRESH = 0.3;

    /** Share of the way to the plan's lateness that a step goes, in the first round and the last; by trials. */
    private static final double FIRST_PACE = 0.6;

    private static final double LAST_PACE = 0.003;

    private final BranchModel model;
    private final List<JobTree> trees;
    private final Prices prices;
    private final Prices direction;
    private final Usage usage;
    private final JobPricing pricing;
    private final long goal;
    private double value = Double.NEGATIVE_INFINITY;

    /** @param plan how far it reaches is how far prices reach */
    PriceBound(BranchModel model, ChainBound chains, Places places, Dates plan) {
        this.model = model;
        int horizon = horizon(model, plan);
        trees = JobTree.of(model);
        prices = new Prices(model, horizon);
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
        double cooling = Math.pow(LAST_PACE / FIRST_PACE, 1.0 / Math.max(1, rounds));
        double pace = FIRST_PACE;
        for (int round = 0; round < rounds; round++) {
            double now = evaluated();
            value = Math.max(value, now);
            if (value() >= goal || stopped.getAsBoolean()) {
                return round + 1;
            }
            prices.excess(usage, direction, round == 0 ? 1 : FRESH);
            double square = prices.square(direction);
            if (square == 0) {
                return round + 1;
            }
            prices.move(prices, direction, pace * (goal - now) / square);
            pace *= cooling;
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
}
