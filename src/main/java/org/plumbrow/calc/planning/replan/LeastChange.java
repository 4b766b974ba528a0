package org.plumbrow.calc.planning.replan;

import java.util.Optional;
import org.plumbrow.calc.planning.Costing;
import org.plumbrow.calc.planning.Plan;
import org.plumbrow.calc.planning.PlanningProblem;
import org.plumbrow.calc.planning.Published;
import org.plumbrow.calc.planning.SerialPlanner;
import org.plumbrow.calc.planning.search.BranchModel;
import org.plumbrow.calc.planning.search.Dates;
import org.plumbrow.calc.planning.search.Decoder;
import org.plumbrow.calc.planning.search.Due;
import org.plumbrow.calc.planning.search.Order;
import org.plumbrow.calc.planning.search.PlanSearch;

/**
 * Plans what has changed and leaves the rest alone. Whatever can stand where people know it stands there; what cannot goes
 * to the first place that is free around it, or pushes what comes after it, whichever leaves less late and then moves
 * less. Only promises that break by the change are looked after: their projects are tried before all others. No plan is
 * made anew, so a small change stays small; what the known plan does badly it still does badly.
 */
public final class LeastChange {

    /** More promises are not looked after at once: a page waits for it. */
    private static final int MOST_LOOKED_AFTER = 12;

    /** Passes in which what is in the way is set behind the rest; each finds at least one more. */
    private static final int MOST_PASSES = 40;

    /** Orders that are tried where much moves, in up to so many runs: some tenths of a second on 75 projects. */
    private static final int ORDERS_A_RUN = 1_000;

    private static final int MOST_RUNS = 4;

    /** About two dates that move, or one far: what is changed cannot do with less. */
    private static final int ENOUGH = 12;

    /** More than any lateness. */
    private static final long UNPLACED = 1_000_000_000L;

    private final KnownPlaces known;
    private final BranchModel model;
    private final Decoder decoder;
    private final Dates tried;
    private Candidate best;

    private record Candidate(Order order, long late, long disturbance) {
        boolean isBetterThan(Candidate other) {
            return late != other.late ? late < other.late : disturbance < other.disturbance;
        }
    }

    private LeastChange(BranchModel model, Plan plan) {
        this.model = model;
        known = new KnownPlaces(model, plan);
        decoder = new Decoder(model);
        tried = decoder.emptyDates();
        best = pushed(known.kept());
    }

    /** The plan that changes least. */
    public static Plan plan(PlanningProblem problem, Published published) {
        BranchModel model = BranchModel.of(problem, SerialPlanner.plan(problem), Optional.of(published));
        Order order = new LeastChange(model, published.plan()).order();
        return PlanSearch.decoded(model, new Costing(problem, Optional.of(published)), order)
                .plan();
    }

    /** The known sequence and the known crews, nothing earlier; what has to move pushes what comes after it. */
    public static Plan rightShift(PlanningProblem problem, Published published) {
        BranchModel model = BranchModel.of(problem, SerialPlanner.plan(problem), Optional.of(published));
        Order order = new KnownPlaces(model, published.plan()).kept();
        return PlanSearch.decoded(model, new Costing(problem, Optional.of(published)), order)
                .plan();
    }

    private Order order() {
        around(known.kept());
        if (isNewAmong()) {
            around(newByUrgency());
        }
        for (int run = 1; run <= MOST_RUNS && best.disturbance > ENOUGH; run++) {
            Mending mending = new Mending(known, decoder, best.order, run);
            mending.run(ORDERS_A_RUN, () -> false);
            take(pushed(mending.best()));
        }
        return best.order;
    }

    private boolean isNewAmong() {
        for (int number = 0; number < model.size(); number++) {
            if (!known.isKnown(number)) {
                return true;
            }
        }
        return false;
    }

    private Order newByUrgency() {
        Order order = known.kept();
        for (int number = 0; number < model.size(); number++) {
            if (!known.isKnown(number)) {
                order.key()[number] = model.latestStart[number];
            }
        }
        return order;
    }

    private Candidate pushed(Order order) {
        decoder.decode(order, tried);
        long late = tried.unplaced() * UNPLACED + tried.lateness();
        return new Candidate(order, late, known.disturbance(tried));
    }

    /**
     * Around an order: as it is; then with what cannot stand served last, by its own crew or by any. Projects whose promises
     * break by that are served first, one after the other, so that what has time to spare gives way to them.
     */
    private void around(Order order) {
        take(pushed(order));
        for (boolean anyCrew : new boolean[] {false, true}) {
            Order start = order.copy();
            boolean[] first = new boolean[model.projects.length];
            for (int round = 0; round < MOST_LOOKED_AFTER; round++) {
                Order settled = displacedLast(start, anyCrew);
                take(pushed(settled));
                int project = worstBroken(first);
                if (project < 0) {
                    break;
                }
                first[project] = true;
                serveFirst(start, project, anyCrew);
            }
        }
    }

    /** The project whose promise breaks most by the order decoded last; -1 when none breaks that was not served first. */
    private int worstBroken(boolean[] first) {
        long worst = 0;
        int project = -1;
        for (Due due : model.dues) {
            long more = due.project < 0 || first[due.project]
                    ? 0
                    : (long) due.weight * (decoder.late(due, tried) - known.late(due));
            if (more > worst) {
                worst = more;
                project = due.project;
            }
        }
        return project;
    }

    private void serveFirst(Order order, int project, boolean anyCrew) {
        for (int number : model.projects[project]) {
            order.key()[number] -= 2 * model.slots.size;
            order.crew()[number] = anyCrew ? Order.ANY : order.crew()[number];
        }
    }

    private void take(Candidate candidate) {
        best = candidate.isBetterThan(best) ? candidate : best;
    }

    /** What cannot stand in spite of all that can is served after it, so that it pushes nothing away. */
    private Order displacedLast(Order from, boolean anyCrew) {
        Order order = from.copy();
        for (int pass = 0; pass < MOST_PASSES; pass++) {
            decoder.decode(order, tried);
            if (!putBehind(order, anyCrew)) {
                break;
            }
        }
        return order;
    }

    /** The first of each crew that does not stand: nothing that moved itself has pushed it. */
    private boolean putBehind(Order order, boolean anyCrew) {
        boolean[] found = new boolean[model.crews.length + 1];
        boolean any = false;
        for (int number : tried.served) {
            int crew = known.crew[number] + 1;
            int key = order.key()[number];
            boolean isKept = known.isKnown(number) && key >= 0 && key < model.slots.size;
            if (isKept && !found[crew] && !known.stands(number, tried)) {
                found[crew] = true;
                any = true;
                order.key()[number] += model.slots.size;
                order.crew()[number] = anyCrew ? Order.ANY : order.crew()[number];
            }
        }
        return any;
    }
}
