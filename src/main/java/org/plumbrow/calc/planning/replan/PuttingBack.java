package org.plumbrow.calc.planning.replan;

import java.util.function.BooleanSupplier;
import org.plumbrow.calc.planning.search.BranchModel;
import org.plumbrow.calc.planning.search.Dates;
import org.plumbrow.calc.planning.search.Decoder;
import org.plumbrow.calc.planning.search.Order;

/**
 * Puts back on its known place whatever can go there without more lateness, at any distance from today: project by project,
 * then work by work, alone or with those that took its place.
 */
final class PuttingBack {

    /** Tasks that are put back together at most. */
    private static final int MOST_TOGETHER = 12;

    private final KnownPlaces known;
    private final BranchModel model;
    private final Decoder decoder;
    private final Dates tried;
    private final Dates now;
    private final Steps steps;
    private int left;

    PuttingBack(KnownPlaces known, Order start) {
        this.known = known;
        model = known.model;
        decoder = new Decoder(model);
        tried = decoder.emptyDates();
        now = decoder.emptyDates();
        steps = new Steps(start.copy());
        decoder.decode(start, now);
    }

    /** @param decodings how many orders to try at most; ends when stopped or when one round over everything puts nothing back */
    Order run(int decodings, BooleanSupplier stopped) {
        left = decodings;
        long before = Long.MAX_VALUE;
        while (goesOn(stopped) && known.disturbance(now) < before) {
            before = known.disturbance(now);
            for (int project = 0; project < model.projects.length && goesOn(stopped); project++) {
                putBack(project);
            }
            for (int number = 0; number < model.size() && goesOn(stopped); number++) {
                if (known.isKnown(number) && !known.stands(number, now)) {
                    putBackAlone(number);
                }
            }
        }
        return steps.order;
    }

    private boolean goesOn(BooleanSupplier stopped) {
        return left > 0 && !stopped.getAsBoolean();
    }

    private void putBack(int project) {
        boolean any = false;
        for (int number : model.projects[project]) {
            if (known.isKnown(number)) {
                any |= !known.stands(number, now);
                keep(number);
            }
        }
        if (any) {
            take();
        } else {
            steps.takeBack();
        }
    }

    private void putBackAlone(int number) {
        keep(number);
        if (take()) {
            return;
        }
        keep(number);
        for (int at = 0; at < steps.count() && steps.count() < MOST_TOGETHER; at++) {
            keepThoseOnThePlaceOf(steps.at(at));
        }
        if (steps.count() > 1) {
            take();
        } else {
            steps.takeBack();
        }
    }

    private void keepThoseOnThePlaceOf(int number) {
        for (int other = 0; other < model.size() && steps.count() < MOST_TOGETHER; other++) {
            if (known.meets(number, other, now) && !steps.isTouched(other) && !known.stands(other, now)) {
                keep(other);
            }
        }
    }

    private void keep(int number) {
        steps.touch(number);
        known.keep(steps.order, number);
    }

    private boolean take() {
        left--;
        decoder.decode(steps.order, tried);
        boolean good = tried.unplaced() <= now.unplaced()
                && tried.lateness() <= now.lateness()
                && known.disturbance(tried) < known.disturbance(now);
        if (good) {
            now.take(tried);
            steps.keep();
        } else {
            steps.takeBack();
        }
        return good;
    }
}
