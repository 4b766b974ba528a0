package org.plumbrow.calc.planning.replan;

import org.plumbrow.calc.planning.search.BranchModel;
import org.plumbrow.calc.planning.search.Chance;
import org.plumbrow.calc.planning.search.Dates;
import org.plumbrow.calc.planning.search.Decoder;
import org.plumbrow.calc.planning.search.Order;

/**
 * Simulated annealing (Kirkpatrick, Gelatt, Vecchi, Science 220, 1983) around a plan that people know: what does not stand
 * is served sooner or later, given to another crew, let start before its known day, put back, or changes places with
 * another that does not stand. Late promises count first, then how much moves.
 */
final class Mending {

    /** Disturbance that a half-day of lateness outweighs while searching. */
    private static final double LATE = 1_000;

    private static final double FAVOURED = 1e6;

    /** In units of disturbance: at first a few moved dates more are borne, at the end hardly one. */
    private static final double START_TEMPERATURE = 20;

    private static final double END_TEMPERATURE = 0.5;

    /** The widest step is two to that power, in half-days. */
    private static final int STEP_WIDTHS = 7;

    private final KnownPlaces known;
    private final BranchModel model;
    private final Decoder decoder;
    private final Chance chance;
    private final int favoured;
    private final Dates tried;
    private final Dates now;
    private final Draws draws;
    private final Order kept;
    private Order order;
    private Order best;
    private double bestCost;

    /** @param favoured number of the project whose promise comes before all others, -1 for none */
    Mending(KnownPlaces known, Decoder decoder, Order start, int favoured, long seed) {
        this.known = known;
        this.favoured = favoured;
        this.decoder = decoder;
        model = known.model;
        chance = new Chance(seed);
        tried = decoder.emptyDates();
        now = decoder.emptyDates();
        draws = new Draws(known, decoder, chance);
        kept = known.kept();
        order = start.copy();
        best = start.copy();
        decoder.decode(order, now);
        bestCost = cost(now);
    }

    Order best() {
        return best;
    }

    /** @param decodings how many orders to try; ends early when everything stands */
    void run(int decodings) {
        double current = bestCost;
        double temperature = START_TEMPERATURE;
        double cooling = Math.pow(END_TEMPERATURE / START_TEMPERATURE, 1.0 / Math.max(1, decodings));
        for (int step = 0; step < decodings && bestCost > 0; step++) {
            Order next = order.copy();
            change(next);
            decoder.decode(next, tried);
            double cost = cost(tried);
            if (cost <= current || chance.share() < Math.exp((current - cost) / temperature)) {
                current = cost;
                order = next;
                now.take(tried);
                keepIfBest(cost);
            }
            temperature *= cooling;
        }
    }

    private void keepIfBest(double cost) {
        if (cost < bestCost) {
            bestCost = cost;
            best = order;
        }
    }

    private double cost(Dates dates) {
        return dates.unplaced() * 1e9
                + known.lateOf(favoured, decoder, dates) * FAVOURED
                + dates.lateness() * LATE
                + known.disturbance(dates);
    }

    private void change(Order next) {
        int late = chance.below(4) == 0 ? draws.lateProject(now) : -1;
        if (late >= 0) {
            shift(next, late);
            return;
        }
        int number = draws.earlyWork(now);
        switch (chance.below(9)) {
            case 0 -> next.crew()[number] = next.crew()[number] == Order.ANY ? kept.crew()[number] : Order.ANY;
            case 1 -> next.notBefore()[number] = next.notBefore()[number] == 0 ? kept.notBefore()[number] : 0;
            case 2 -> putBack(next, number);
            case 3 -> letGo(next, number);
            case 4, 5 -> swap(next, number, draws.earlyWork(now));
            default -> next.key()[number] += draws.step(STEP_WIDTHS);
        }
    }

    /** Sooner, by any crew, and before its known day where that is free. */
    private void letGo(Order next, int number) {
        next.key()[number] -= 1 + Math.abs(draws.step(STEP_WIDTHS));
        next.crew()[number] = chance.below(2) == 0 ? Order.ANY : Order.THRIFTY;
        next.notBefore()[number] = 0;
    }

    /** Either may fill the days that the other leaves free, which its known day would forbid. */
    private static void swap(Order next, int number, int other) {
        int key = next.key()[number];
        next.key()[number] = next.key()[other];
        next.key()[other] = key;
        next.notBefore()[number] = 0;
        next.notBefore()[other] = 0;
    }

    /** A project sooner or later as a whole. */
    private void shift(Order next, int project) {
        int by = draws.step(STEP_WIDTHS);
        for (int number : model.projects[project]) {
            next.key()[number] += by;
        }
    }

    private void putBack(Order next, int number) {
        next.key()[number] = kept.key()[number];
        next.crew()[number] = kept.crew()[number];
        next.notBefore()[number] = kept.notBefore()[number];
    }
}
