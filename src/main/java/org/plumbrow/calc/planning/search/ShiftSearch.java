package org.plumbrow.calc.planning.search;

import java.util.function.BooleanSupplier;

/**
 * Simulated annealing (Kirkpatrick, Gelatt, Vecchi, Science 220, 1983) on one number per project: by how many half-days
 * its activities are served earlier or later than their urgency says. Two projects also change places: on an overloaded
 * branch somebody must wait long, and to choose another one takes both at once. Which crew does what follows from the
 * decoding.
 */
public final class ShiftSearch {

    /**
     * Share of the cost that a worse order may add at the start. By trials on three branches of 150 projects, two seeds each,
     * 10,000 orders: 2,604 weighted half-days late in the mean with 0.0005, 2,331 with 0.002, 2,711 with 0.004.
     */
    private static final double START_TEMPERATURE = 0.002;

    private static final double END_TEMPERATURE = 0.00005;

    /** The widest step is two to that power: an overloaded branch must put some job far behind the others. */
    private static final int STEP_WIDTHS = 9;

    /**
     * Of a hundred steps so many change places. By trials on two branches of 150 projects, eighteen chains of 12,000 orders
     * each: 2,034 weighted half-days late in the mean with none, 1,878 with 60, 1,875 with 80, 1,901 with 95.
     */
    private static final int SWAPS = 60;

    private final BranchModel model;
    private final Decoder decoder;
    private final Dates tried;
    private final Order order;
    private final Order best;
    private final Dates bestDates;
    private final Chance chance;

    public ShiftSearch(BranchModel model, Order start, long seed) {
        this.model = model;
        decoder = new Decoder(model);
        tried = decoder.emptyDates();
        bestDates = decoder.emptyDates();
        order = start.copy();
        best = start.copy();
        chance = new Chance(seed);
        decoder.decode(order, bestDates);
    }

    /** The best order so far. */
    public Order best() {
        return best;
    }

    public Dates dates() {
        return bestDates;
    }

    /** @param decodings how many orders to try; ends early when stopped or when nothing is late */
    public void run(int decodings, BooleanSupplier stopped) {
        double current = scale(bestDates);
        double reference = Math.max(1, current);
        double cooling = Math.pow(END_TEMPERATURE / START_TEMPERATURE, 1.0 / Math.max(1, decodings));
        double temperature = START_TEMPERATURE * reference;
        for (int step = 0; step < decodings && isWorthIt(); step++) {
            if ((step & 63) == 0 && stopped.getAsBoolean()) {
                return;
            }
            int project = draw();
            boolean swaps = chance.below(100) < SWAPS;
            int other = swaps ? chance.below(model.projects.length) : project;
            int by = swaps ? order.place(model.projects[other]) - order.place(model.projects[project]) : step();
            int otherBy = swaps ? -by : 0;
            move(project, by);
            move(other, otherBy);
            decoder.decode(order, tried);
            double cost = scale(tried);
            if (cost <= current || chance.share() < Math.exp((current - cost) / temperature)) {
                current = cost;
                keepIfBest();
            } else {
                move(other, -otherBy);
                move(project, -by);
            }
            temperature *= cooling;
        }
    }

    private boolean isWorthIt() {
        return model.projects.length > 1 && bestDates.cost() > model.settledLateness * Dates.LATE;
    }

    /** Lateness, with disturbance as its small change. */
    private static double scale(Dates dates) {
        return dates.unplaced() * 1e6 + dates.lateness() + dates.disturbance() * 1e-3;
    }

    private void keepIfBest() {
        if (tried.cost() < bestDates.cost()) {
            bestDates.take(tried);
            System.arraycopy(order.key(), 0, best.key(), 0, best.key().length);
        }
    }

    /** Half of the time a project whose promise is late in the best order. */
    private int draw() {
        if (model.dues.length > 0 && chance.below(2) == 0) {
            for (int tries = 0; tries < 8; tries++) {
                Due due = model.dues[chance.below(model.dues.length)];
                if (decoder.late(due, bestDates) > 0) {
                    return due.project;
                }
            }
        }
        return chance.below(model.projects.length);
    }

    private int step() {
        int width = 1 << (1 + chance.below(STEP_WIDTHS));
        int moved = chance.below(2 * width + 1) - width;
        return moved == 0 ? 1 : moved;
    }

    private void move(int project, int by) {
        for (int number : model.projects[project]) {
            order.key()[number] += by;
        }
    }
}
