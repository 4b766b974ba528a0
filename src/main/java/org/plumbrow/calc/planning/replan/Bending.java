package org.plumbrow.calc.planning.replan;

import java.util.function.BooleanSupplier;
import org.plumbrow.calc.planning.search.BranchModel;
import org.plumbrow.calc.planning.search.Chance;
import org.plumbrow.calc.planning.search.Dates;
import org.plumbrow.calc.planning.search.Decoder;
import org.plumbrow.calc.planning.search.Order;
import org.plumbrow.calc.planning.search.ShiftSearch;

/**
 * Simulated annealing (Kirkpatrick, Gelatt, Vecchi, Science 220, 1983) around a plan that people know, for less lateness: whole
 * projects are served sooner or later, nearly always without the dates that people count on, and single works as in
 * {@link Mending}.
 */
final class Bending {

    /** Disturbance that a half-day of lateness outweighs. */
    private static final double LATE = 1_000;

    /** What a start that people count on weighs when it moves, however little: as much as so much of lateness. A guide only. */
    private static final double COUNTED_ON = 4_000;

    /** Share of the lateness that a worse order may add; found by trials at 150 projects. */
    private static final double START_TEMPERATURE = 0.0005;

    private static final double END_TEMPERATURE = 0.00005;

    /** The widest step is two to that power, in half-days. */
    private static final int STEP_WIDTHS = 9;

    /** Of a hundred steps. */
    private static final int SINGLE_WORKS = 40;

    private static final int PUT_BACK = 10;
    /** Of a hundred projects that are not put back: it and another change places, as in {@link ShiftSearch}. */
    private static final int SWAPS = 50;

    private static final int WITH_NEAR = 25;

    private final KnownPlaces known;
    private final BranchModel model;
    private final Decoder decoder;
    private final Chance chance;
    private final Dates tried;
    private final Dates now;
    private final Draws draws;
    private final Steps steps;
    private Order best;
    private double bestCost;
    private long bestLateness;

    Bending(KnownPlaces known, Order start, long seed) {
        this.known = known;
        model = known.model;
        decoder = new Decoder(model);
        chance = new Chance(seed);
        tried = decoder.emptyDates();
        now = decoder.emptyDates();
        draws = new Draws(known, decoder, chance);
        steps = new Steps(start.copy());
        best = start.copy();
        decoder.decode(best, now);
        bestCost = cost(now);
        bestLateness = now.lateness();
    }

    Order best() {
        return best;
    }

    /** Of the best order; the less the better. */
    double cost() {
        return bestCost;
    }

    /** Of the best order. */
    long lateness() {
        return bestLateness;
    }

    /** @param decodings how many orders to try; ends early when stopped or when nothing is late */
    Bending run(int decodings, BooleanSupplier stopped) {
        double unit = LATE * Math.max(1, bestLateness);
        double temperature = START_TEMPERATURE * unit;
        double cooling = Math.pow(END_TEMPERATURE / START_TEMPERATURE, 1.0 / Math.max(1, decodings));
        double current = bestCost;
        for (int step = 0; step < decodings && bestLateness > model.settledLateness; step++) {
            if ((step & 63) == 0 && stopped.getAsBoolean()) {
                break;
            }
            change();
            decoder.decode(steps.order, tried);
            double cost = cost(tried);
            if (cost <= current || chance.share() < Math.exp((current - cost) / temperature)) {
                current = cost;
                now.take(tried);
                steps.keep();
                keepIfBest(cost);
            } else {
                steps.takeBack();
            }
            temperature *= cooling;
        }
        return this;
    }

    private void keepIfBest(double cost) {
        if (cost < bestCost) {
            bestCost = cost;
            bestLateness = now.lateness();
            best = steps.order.copy();
        }
    }

    private double cost(Dates dates) {
        return dates.unplaced() * 1e9
                + dates.lateness() * LATE
                + known.movedOfCountedOn(dates) * COUNTED_ON
                + known.disturbance(dates);
    }

    private void change() {
        if (chance.below(100) < SINGLE_WORKS) {
            single(draws.work(now));
            return;
        }
        int project = chance.below(2) == 0 ? lateOrAny() : chance.below(model.projects.length);
        boolean withNear = chance.below(100) < WITH_NEAR;
        boolean freed = chance.below(2) == 0;
        if (chance.below(100) < PUT_BACK) {
            keep(project);
        } else if (chance.below(100) < SWAPS) {
            int other = chance.below(model.projects.length);
            int by = steps.order.place(model.projects[other]) - steps.order.place(model.projects[project]);
            shift(project, by, withNear, freed);
            shift(other, -by, withNear, freed);
        } else {
            shift(project, draws.step(STEP_WIDTHS), withNear, freed);
        }
    }

    private void keep(int project) {
        for (int number : model.projects[project]) {
            steps.touch(number);
            known.keep(steps.order, number);
        }
    }

    private void shift(int project, int by, boolean withNear, boolean freed) {
        for (int number : model.projects[project]) {
            steps.touch(number);
            if (withNear || !known.isCountedOn(number)) {
                shift(number, by, freed);
            }
        }
    }

    private void shift(int number, int by, boolean freed) {
        steps.order.key()[number] += by;
        if (freed) {
            steps.order.crew()[number] = Order.THRIFTY;
            steps.order.notBefore()[number] = 0;
        }
    }

    private void single(int number) {
        steps.touch(number);
        switch (chance.below(3)) {
            case 0 -> known.keep(steps.order, number);
            case 1 -> shift(number, 0, true);
            default -> shift(number, draws.step(STEP_WIDTHS), false);
        }
    }

    private int lateOrAny() {
        int late = draws.lateProject(now);
        return late >= 0 ? late : chance.below(model.projects.length);
    }
}
