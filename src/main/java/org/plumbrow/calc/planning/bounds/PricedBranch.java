package org.plumbrow.calc.planning.bounds;

import java.util.List;
import org.plumbrow.calc.planning.search.BranchModel;
import org.plumbrow.calc.planning.search.Dates;

/** Prices that are tried, what they prove, and the best ones so far. */
final class PricedBranch {

    final BranchModel model;
    final Dates plan;
    final Prices prices;
    final Prices best;
    final Usage usage;
    final RentedJobs jobs;
    final List<int[]> alike;
    private double value = Double.NEGATIVE_INFINITY;

    /** @param plan how far it reaches is how far prices reach */
    PricedBranch(BranchModel model, ChainBound chains, Places places, Dates plan, int threads) {
        this.model = model;
        this.plan = plan;
        int horizon = horizon(model, plan);
        prices = new Prices(model, horizon);
        best = new Prices(model, horizon);
        usage = new Usage(model);
        jobs = new RentedJobs(model, chains, places, prices, horizon, threads);
        alike = LikeCrews.of(model);
    }

    private static int horizon(BranchModel model, Dates plan) {
        int last = model.slots.today;
        for (int number = 0; number < model.size(); number++) {
            last = plan.crew[number] >= 0 ? Math.max(last, plan.finish[number]) : last;
        }
        return Math.min(model.slots.size - 1, last + 1);
    }

    /** @return no plan has less lateness than that, whatever the prices */
    double evaluate() {
        double now = jobs.lateness(usage);
        if (now > value) {
            value = now;
            best.take(prices);
        }
        return now;
    }

    /** The most that any prices tried prove. */
    double value() {
        return value;
    }

    boolean isReached() {
        return Math.ceil(value - 1e-6) >= plan.lateness();
    }
}
