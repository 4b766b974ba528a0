package org.plumbrow.calc.planning.bounds;

import java.util.Arrays;
import org.plumbrow.calc.planning.search.BranchModel;
import org.plumbrow.calc.planning.search.CrewDays;
import org.plumbrow.calc.planning.search.Due;
import org.plumbrow.calc.planning.search.Task;

/**
 * The cheapest way to do one job at given prices: what it pays for crews and equipment plus what its lateness costs. Exact
 * for the tree of the job (dynamic programming from the first tasks to the promise).
 */
final class JobPricing {

    private static final int BEYOND = -1;

    private final BranchModel model;
    private final ChainBound chains;
    private final Rents rents;
    private final int horizon;
    /** Of each place in the tree, by slot: the least cost of it and all before it when it ends (a wait: starts) by then. */
    private double[][] least = new double[0][];
    /** By the same: in which slot that is, by whose choice and from which present slot (waits and desks: slot). */
    private int[][] when = new int[0][];

    private int[][] choice = new int[0][];
    private int[][] from = new int[0][];
    private final double[] beforeCost;
    /** By task: where it starts in the cheapest way, the horizon when it is beyond. */
    private final int[] starts;

    JobPricing(BranchModel model, ChainBound chains, Rents rents, int horizon, int[] starts) {
        this.model = model;
        this.chains = chains;
        this.rents = rents;
        this.starts = starts;
        this.horizon = horizon;
        beforeCost = new double[horizon + 1];
    }

    /** @param usage what the cheapest way uses is added to it */
    double cost(JobTree tree, Usage usage) {
        makeRoom(tree.tasks.length);
        for (int at = 0; at < tree.tasks.length; at++) {
            price(tree, at);
        }
        double sum = 0;
        for (Due due : tree.leftOut) {
            sum += (double) due.weight * chains.late(due);
        }
        for (int at : tree.last) {
            sum += least[at][horizon];
            use(tree, at, horizon, usage);
        }
        for (Due due : tree.shared) {
            sum += shared(tree, due, usage);
        }
        return sum;
    }

    private void makeRoom(int places) {
        if (least.length < places) {
            least = new double[places][horizon + 1];
            when = new int[places][horizon + 1];
            choice = new int[places][horizon + 1];
            from = new int[places][horizon + 1];
        }
    }

    private void price(JobTree tree, int at) {
        Task task = model.tasks[tree.tasks[at]];
        int first = Math.min(horizon, chains.start(tree.tasks[at]));
        Arrays.fill(least[at], Double.POSITIVE_INFINITY);
        costBefore(tree, at, first);
        if (task.kind == Task.Kind.CREW) {
            for (int crew = 0; crew < task.crews.length; crew++) {
                priceCrew(tree.tasks[at], at, crew, first);
            }
        } else {
            int length = task.kind == Task.Kind.DESK ? task.halfDays[0] : 1;
            for (int slot = first; slot < horizon; slot++) {
                offer(at, Math.min(horizon, slot + length - 1), beforeCost[slot], 0, slot);
            }
        }
        offer(at, horizon, beforeCost[horizon], BEYOND, horizon);
        addLateness(tree, at, task, first);
        for (int slot = 0; slot <= horizon; slot++) {
            when[at][slot] = slot;
            if (slot > 0 && least[at][slot - 1] <= least[at][slot]) {
                least[at][slot] = least[at][slot - 1];
                when[at][slot] = when[at][slot - 1];
            }
        }
    }

    /** What all that comes before costs if this one starts in each slot. */
    private void costBefore(JobTree tree, int at, int first) {
        Arrays.fill(beforeCost, 0);
        for (int child = 0; child < tree.before[at].length; child++) {
            int[] ready = model.tasks[tree.tasks[at]].readyAfter[tree.links[at][child]];
            double[] costs = least[tree.before[at][child]];
            int anchor = -1;
            for (int slot = first; slot < horizon; slot++) {
                while (anchor + 1 < horizon && ready[anchor + 1] <= slot) {
                    anchor++;
                }
                beforeCost[slot] += anchor < 0 ? Double.POSITIVE_INFINITY : costs[anchor];
            }
            beforeCost[horizon] += costs[horizon];
        }
    }

    private void priceCrew(int number, int at, int which, int first) {
        CrewDays crew = model.crews[model.tasks[number].crews[which]];
        int[] lengths = rents.lengths[number][which];
        double[] rent = rents.rent[number][which];
        int to = crew.indexAtOrAfter[horizon];
        for (int index = crew.indexAtOrAfter[first]; index < to; index++) {
            if (lengths[index] > 0) {
                int end = crew.present[index + lengths[index] - 1];
                offer(at, Math.min(horizon, end), beforeCost[crew.present[index]] + rent[index], which, index);
            }
        }
    }

    private void offer(int at, int anchor, double cost, int which, int start) {
        if (cost < least[at][anchor]) {
            least[at][anchor] = cost;
            choice[at][anchor] = which;
            from[at][anchor] = start;
        }
    }

    private void addLateness(JobTree tree, int at, Task task, int first) {
        for (Due due : tree.own.get(at)) {
            int atLeast = chains.late(due);
            for (int slot = first; slot <= horizon; slot++) {
                least[at][slot] += (double) due.weight * Math.max(atLeast, late(due, task, slot));
            }
        }
    }

    private int late(Due due, Task task, int anchor) {
        return task.kind == Task.Kind.WAIT ? task.waitLate(due, anchor) : due.late(anchor, model.slots.day(anchor));
    }

    /** A promise of several tasks: so late that all of them may be as late as is cheapest. */
    private double shared(JobTree tree, Due due, Usage usage) {
        int most = 0;
        for (int number : due.tasks) {
            most = Math.max(most, late(due, model.tasks[number], horizon));
        }
        int[] anchor = new int[due.tasks.length];
        Arrays.fill(anchor, -1);
        double best = Double.POSITIVE_INFINITY;
        int[] bestAnchor = anchor.clone();
        for (int late = chains.late(due); late <= Math.max(most, chains.late(due)); late++) {
            double cost = (double) late * due.weight;
            for (int each = 0; each < anchor.length; each++) {
                Task task = model.tasks[due.tasks[each]];
                while (anchor[each] < horizon && late(due, task, anchor[each] + 1) <= late) {
                    anchor[each]++;
                }
                cost += anchor[each] < 0 ? Double.POSITIVE_INFINITY : least[tree.place(due.tasks[each])][anchor[each]];
            }
            if (cost < best) {
                best = cost;
                bestAnchor = anchor.clone();
            }
        }
        for (int each = 0; each < anchor.length; each++) {
            use(tree, tree.place(due.tasks[each]), bestAnchor[each], usage);
        }
        return best;
    }

    /** Follows the cheapest way back. */
    private void use(JobTree tree, int at, int by, Usage usage) {
        Task task = model.tasks[tree.tasks[at]];
        int anchor = when[at][by];
        int start = from[at][anchor];
        int slot = start;
        if (choice[at][anchor] != BEYOND && task.kind == Task.Kind.CREW) {
            int crew = task.crews[choice[at][anchor]];
            slot = model.crews[crew].present[start];
            usage.add(task, crew, start, rents.lengths[tree.tasks[at]][choice[at][anchor]][start]);
        }
        starts[tree.tasks[at]] = slot;
        for (int child = 0; child < tree.before[at].length; child++) {
            int limit = slot >= horizon ? horizon : lastReady(task.readyAfter[tree.links[at][child]], slot);
            use(tree, tree.before[at][child], limit, usage);
        }
    }

    private int lastReady(int[] ready, int slot) {
        int low = 0;
        int high = horizon;
        while (low < high) {
            int middle = (low + high) >>> 1;
            if (ready[middle] <= slot) {
                low = middle + 1;
            } else {
                high = middle;
            }
        }
        return low - 1;
    }
}
