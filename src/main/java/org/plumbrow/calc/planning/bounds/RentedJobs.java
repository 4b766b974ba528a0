package org.plumbrow.calc.planning.bounds;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.plumbrow.calc.planning.search.BranchModel;

/**
 * All jobs of a branch at given prices, each done in the way that is cheapest for itself: side by side, with the same sum
 * on any number of threads.
 */
final class RentedJobs {

    private final BranchModel model;
    private final List<JobTree> trees;
    private final Prices prices;
    private final Rents rents;
    private final int horizon;
    private final double[] cost;
    private final int[][] cells;
    /** By task: where it starts at the prices of the last call; -1 where no promise waits for its crew. */
    final int[] starts;

    private final List<Part> parts = new ArrayList<>();

    /** What one thread needs for itself. */
    private record Part(JobPricing pricing, Usage usage) {}

    RentedJobs(BranchModel model, ChainBound chains, Places places, Prices prices, int horizon, int threads) {
        this.model = model;
        this.prices = prices;
        this.horizon = horizon;
        trees = JobTree.of(model);
        rents = new Rents(model, places, prices);
        cost = new double[trees.size()];
        cells = new int[trees.size()][];
        starts = new int[model.size()];
        Arrays.fill(starts, -1);
        for (int part = 0; part < threads; part++) {
            parts.add(new Part(new JobPricing(model, chains, rents, horizon, starts), new Usage(model)));
        }
    }

    /**
     * @param usage becomes what the jobs use of each half-day
     * @return no plan has less lateness
     */
    double lateness(Usage usage) {
        prices.sumUp();
        rents.renew(horizon);
        IntStream parted = IntStream.range(0, parts.size());
        (parts.size() > 1 ? parted.parallel() : parted).forEach(this::price);
        usage.clear();
        parts.forEach(part -> usage.add(part.usage));
        double sum = model.settledLateness - prices.worth();
        for (double each : cost) {
            sum += each;
        }
        return sum;
    }

    private void price(int number) {
        Part part = parts.get(number);
        part.usage.clear();
        for (int job = number; job < cost.length; job += parts.size()) {
            cost[job] = part.pricing.cost(trees.get(job), part.usage);
            cells[job] = part.usage.cellsSince();
        }
    }

    int count() {
        return cost.length;
    }

    JobTree tree(int job) {
        return trees.get(job);
    }

    /** What the job uses at the prices of the last call. */
    int[] cells(int job) {
        return cells[job];
    }

    /** What it costs to be so late, at the prices of the last call. */
    double costWithoutRent(int job) {
        double sum = cost[job];
        for (int cell : cells[job]) {
            sum -= prices.of(cell);
        }
        return sum;
    }
}
