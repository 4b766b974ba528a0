package org.plumbrow.calc.planning.bounds;

import java.util.ArrayList;
import java.util.List;
import java.util.function.BooleanSupplier;
import org.plumbrow.calc.planning.exact.PieceSolver;
import org.plumbrow.calc.planning.exact.WayMix;

/**
 * Prices from the best mix of the ways of doing each job that are known: at its prices each job is asked for a better way,
 * until none has one. Where few prices are looked for this ends after some twenty rounds at the best prices there are. New
 * prices are tried part of the way from the best so far (Wentges, Int. Trans. Operational Research 4, 1997).
 */
final class MixSearch {

    /** Share of the mix's prices in those that are tried; by trials. */
    private static final double FRESH = 0.35;

    /** So near to the mix, nothing much is left to be found. */
    private static final double NEAR = 0.005;

    /** With more ways than that a round takes too long. */
    private static final int MOST_WAYS = 8_000;

    private final PricedBranch branch;
    private final List<Way> ways = new ArrayList<>();

    private record Way(int job, double cost, int[] cells) {}

    MixSearch(PricedBranch branch) {
        this.branch = branch;
        for (int job = 0; job < branch.jobs.count(); job++) {
            JobTree tree = branch.jobs.tree(job);
            ways.add(new Way(job, tree.lateCost(branch.model, branch.plan), tree.cells(branch.model, branch.plan)));
        }
    }

    static boolean isThere() {
        return PieceSolver.isThere();
    }

    /** @param grain so many half-days on end have one price, of all like crews together */
    void run(int grain, int rounds, BooleanSupplier stopped) {
        Grid grid = new Grid(branch.model, branch.prices, grain, branch.alike);
        try (WayMix mix = new WayMix(branch.jobs.count(), grid.free)) {
            branch.prices.take(branch.best);
            int known = 0;
            for (int round = 0; round < rounds && ways.size() < MOST_WAYS && !branch.isReached(); round++) {
                branch.evaluate();
                keepWays();
                for (; known < ways.size(); known++) {
                    Way way = ways.get(known);
                    mix.add(way.job, way.cost, grid.rows(way.cells));
                }
                if (stopped.getAsBoolean() || !mix.solve() || isNear(mix.cost())) {
                    return;
                }
                grid.price(branch.prices, mix.prices(), branch.best, FRESH);
            }
        }
    }

    private boolean isNear(double mix) {
        double goal = mix + branch.model.settledLateness;
        return goal - branch.value() < NEAR * Math.max(1, goal);
    }

    private void keepWays() {
        for (int job = 0; job < branch.jobs.count(); job++) {
            ways.add(new Way(job, branch.jobs.costWithoutRent(job), branch.jobs.cells(job)));
        }
    }
}
