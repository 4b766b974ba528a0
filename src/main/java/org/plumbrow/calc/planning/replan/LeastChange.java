package org.plumbrow.calc.planning.replan;

import java.util.Arrays;
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

    private static final int MOST_RUNS = 12;

    /** Runs in a row that find nothing better, after which none more is made. */
    private static final int IDLE_RUNS = 2;

    /** Tasks of a branch up to which so many are tried; a larger one gets fewer, as each takes longer. */
    private static final int A_BRANCH = 700;

    /** About two dates that move, or one far: what is changed cannot do with less. */
    private static final int ENOUGH = 12;

    /** More than any lateness. */
    private static final long UNPLACED = 1_000_000_000L;

    private final KnownPlaces known;
    private final BranchModel model;
    private final Decoder decoder;
    private final Dates tried;
    private Candidate best;

    /** The project served before all others whatever happens, -1 for none. */
    private final int favoured;

    private record Candidate(Order order, long favouredLate, long late, long disturbance) {
        boolean isBetterThan(Candidate other) {
            if (favouredLate != other.favouredLate) {
                return favouredLate < other.favouredLate;
            }
            return late != other.late ? late < other.late : disturbance < other.disturbance;
        }
    }

    private LeastChange(BranchModel model, Plan plan, int favoured) {
        this.model = model;
        this.favoured = favoured;
        known = new KnownPlaces(model, plan);
        decoder = new Decoder(model);
        tried = decoder.emptyDates();
        best = pushed(kept());
    }

    /** The plan that changes least, of as many orders as a page can wait for: fewer on a large branch. */
    public static Plan plan(PlanningProblem problem, Published published) {
        return made(problem, published, "");
    }

    /**
     * The plan that changes least with one project served before all others, by any crew and at any time: whether its promise
     * could be kept, and what it would cost the others.
     */
    public static Plan favouring(PlanningProblem problem, Published published, String projectId) {
        return made(problem, published, projectId);
    }

    private static Plan made(PlanningProblem problem, Published published, String favoured) {
        BranchModel model = BranchModel.of(problem, SerialPlanner.plan(problem), Optional.of(published));
        Order order = new LeastChange(model, published.plan(), project(model, favoured)).order();
        return PlanSearch.decoded(model, new Costing(problem, Optional.of(published)), order)
                .plan();
    }

    private static int project(BranchModel model, String id) {
        return Arrays.stream(model.tasks)
                .filter(task -> task.activity.projectId().equals(id))
                .mapToInt(task -> task.project)
                .findFirst()
                .orElse(-1);
    }

    /** The known sequence and the known crews, nothing earlier; what has to move pushes what comes after it. */
    public static Plan rightShift(PlanningProblem problem, Published published) {
        BranchModel model = BranchModel.of(problem, SerialPlanner.plan(problem), Optional.of(published));
        Order order = new KnownPlaces(model, published.plan()).kept();
        return PlanSearch.decoded(model, new Costing(problem, Optional.of(published)), order)
                .plan();
    }

    private Order kept() {
        Order order = known.kept();
        if (favoured >= 0) {
            for (int number : model.projects[favoured]) {
                order.key()[number] = model.latestStart[number] - 4 * model.slots.size;
                order.crew()[number] = Order.ANY;
                order.notBefore()[number] = 0;
            }
        }
        return order;
    }

    private Order order() {
        around(kept());
        if (isNewAmong()) {
            around(newByUrgency());
        }
        int idle = 0;
        for (int run = 1; run <= share(MOST_RUNS) && best.disturbance > ENOUGH && idle < IDLE_RUNS; run++) {
            idle = mend(share(ORDERS_A_RUN), run) ? 0 : idle + 1;
        }
        return best.order;
    }

    private int share(int most) {
        return Math.max(2, most * A_BRANCH / Math.max(A_BRANCH, model.size()));
    }

    /** @return whether it found something better */
    private boolean mend(int orders, int seed) {
        Mending mending = new Mending(known, decoder, best.order, favoured, seed);
        mending.run(orders);
        return take(pushed(mending.best()));
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
        Order order = kept();
        for (int number = 0; number < model.size(); number++) {
            if (!known.isKnown(number) && model.tasks[number].project != favoured) {
                order.key()[number] = model.latestStart[number];
            }
        }
        return order;
    }

    private Candidate pushed(Order order) {
        decoder.decode(order, tried);
        long late = tried.unplaced() * UNPLACED + tried.lateness();
        return new Candidate(order, known.lateOf(favoured, decoder, tried), late, known.disturbance(tried));
    }

    /**
     * Around an order: as it is; then with what cannot stand served last, by its own crew or by any. Projects whose promises
     * break by that are served first, one after the other, so that what has time to spare gives way to them.
     */
    private void around(Order order) {
        take(pushed(order));
        int passes = share(MOST_PASSES);
        for (boolean anyCrew : new boolean[] {false, true}) {
            Order start = order.copy();
            boolean[] first = new boolean[model.projects.length];
            if (favoured >= 0) {
                first[favoured] = true;
            }
            for (int round = 0; round < share(MOST_LOOKED_AFTER); round++) {
                Order settled = displacedLast(start, anyCrew, passes);
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

    private boolean take(Candidate candidate) {
        boolean isBetter = candidate.isBetterThan(best);
        best = isBetter ? candidate : best;
        return isBetter;
    }

    /** What cannot stand in spite of all that can is served after it, so that it pushes nothing away. */
    private Order displacedLast(Order from, boolean anyCrew, int passes) {
        Order order = from.copy();
        for (int pass = 0; pass < passes; pass++) {
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
