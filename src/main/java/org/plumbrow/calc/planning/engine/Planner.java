package org.plumbrow.calc.planning.engine;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.plumbrow.calc.planning.Costing;
import org.plumbrow.calc.planning.PlanningProblem;
import org.plumbrow.calc.planning.Promise;
import org.plumbrow.calc.planning.Published;
import org.plumbrow.calc.planning.bounds.LowerBound;
import org.plumbrow.calc.planning.exact.PieceSolver;
import org.plumbrow.calc.planning.search.BranchModel;
import org.plumbrow.calc.planning.search.Dates;
import org.plumbrow.calc.planning.search.Decoder;
import org.plumbrow.calc.planning.search.Due;
import org.plumbrow.calc.planning.search.Order;
import org.plumbrow.calc.planning.search.PlanSearch;
import org.plumbrow.calc.planning.search.PlanSearch.Found;
import org.plumbrow.calc.planning.search.ShiftSearch;

/** Makes a plan with all the work it may take, and proves how much better any other could be. */
public final class Planner {

    /** Works of crews of the most urgent jobs that the solver sees through where all are too many; by trials at 60. */
    private static final int URGENT_WORKS = 60;

    /** So many times the work of a whole branch: few works often end with a proof. */
    private static final int URGENT_WORK = 4;

    /** Share of all orders that are tried from urgency; the rest waits for what crews are worth. */
    private static final double URGENT_SHARE = 1.0 / 6;

    private final PlanningProblem problem;
    private final Optional<Published> published;
    private final Effort effort;
    private final Watch watch;

    private Planner(PlanningProblem problem, Optional<Published> published, Effort effort, Watch watch) {
        this.problem = problem;
        this.published = published;
        this.effort = effort;
        this.watch = watch;
    }

    /**
     * @param published what people know: lateness alone is a reason to move it
     * @param watch told how far it is; when it says stop, the best plan so far is the answer
     */
    public static Planned plan(PlanningProblem problem, Optional<Published> published, Effort effort, Watch watch) {
        return new Planner(problem, published, effort, watch).plan();
    }

    private Planned plan() {
        Found best = byUrgency();
        LowerBound bound = bound(best);
        best = byWishes(best, bound);
        best = pieces(best, bound.value());
        return whole(best, bound);
    }

    private Found byUrgency() {
        Found start = PlanSearch.found(problem, published, PlanSearch.Effort.NO_SEARCH, watch::isStopped);
        Order thrifty = Order.urgent(start.model()).thrifty();
        return searched("Searching from what is urgent", start, List.of(start.order(), thrifty), urgentDecodings());
    }

    private int urgentDecodings() {
        return effort.proofRounds() == 0 ? effort.decodings() : (int) (effort.decodings() * URGENT_SHARE);
    }

    private Found searched(String stage, Found best, List<Order> starts, int decodings) {
        if (decodings == 0) {
            return best;
        }
        watch.progress(stage, 0, 1, best.cost().lateness());
        BranchModel model = best.model();
        Generations.Search search = (start, seed, orders) -> shifted(model, start, seed, orders);
        Order found =
                new Generations(model, search, effort.seed(), effort.threads(), watch).best(stage, starts, decodings);
        return best.orBetter(PlanSearch.decoded(model, new Costing(problem, published), found));
    }

    private Generations.Found shifted(BranchModel model, Order start, long seed, int orders) {
        ShiftSearch search = new ShiftSearch(model, start, seed);
        search.run(orders, watch::isStopped);
        Dates dates = search.dates();
        boolean perfect = dates.cost() <= model.settledLateness * Dates.LATE;
        return new Generations.Found(search.best(), dates.cost(), dates.lateness(), perfect);
    }

    private LowerBound bound(Found best) {
        Dates dates = dates(best);
        LowerBound bound = new LowerBound(best.model(), dates);
        if (dates.unplaced() == 0) {
            watch.progress("Proving how few any plan can have late", 0, 1, dates.lateness());
            bound.rent(effort.proofRounds(), effort.threads(), watch::isStopped);
        }
        return bound;
    }

    /** The rest of the search: prices know who is to give way, which a search from urgency seldom finds. */
    private Found byWishes(Found best, LowerBound bound) {
        if (bound.isReached() || bound.wishes().isEmpty()) {
            return best;
        }
        List<Order> starts = new ArrayList<>(List.of(best.order()));
        bound.wishes().forEach(wishes -> starts.add(Orders.ofWishes(best.model(), wishes)));
        return searched("Searching from what crews are worth", best, starts, effort.decodings() - urgentDecodings());
    }

    private Found pieces(Found start, long least) {
        boolean done = start.cost().lateness() <= least && start.cost().disturbance() == 0;
        if (effort.rounds() == 0 || done || !PieceSolver.isThere()) {
            return start;
        }
        PieceSearch pieces = new PieceSearch(start.model(), start.order(), published.isPresent(), effort.seed());
        pieces.run(effort.rounds(), effort.threads(), least, watch);
        return start.orBetter(PlanSearch.decoded(start.model(), new Costing(problem, published), pieces.order()));
    }

    private Planned whole(Found best, LowerBound bound) {
        Dates dates = dates(best);
        WholeBranch whole = new WholeBranch(best.model(), dates);
        boolean open = dates.unplaced() == 0 && dates.lateness() > bound.value();
        if (!open || effort.wholeWork() == 0 || !PieceSolver.isThere() || watch.isStopped()) {
            return proved(best, bound, 0);
        }
        if (!whole.isSmall()) {
            return proved(best, bound, ofMostUrgent(best, dates, bound));
        }
        watch.progress("Giving the whole plan to the solver", 0, 1, dates.lateness());
        whole.solve(effort.wholeWork(), effort.seed(), watch::isStopped);
        Found better = whole.better()
                .map(order -> best.orBetter(PlanSearch.decoded(best.model(), new Costing(problem, published), order)))
                .orElse(best);
        return proved(better, bound, whole.bound());
    }

    private long ofMostUrgent(Found best, Dates dates, LowerBound bound) {
        WholeBranch urgent = WholeBranch.mostUrgent(best.model(), dates, URGENT_WORKS, bound::late);
        if (!urgent.isSmall()) {
            return 0;
        }
        watch.progress("Proving what the jobs promised first must have late", 0, 1, dates.lateness());
        urgent.solve(URGENT_WORK * effort.wholeWork(), effort.seed(), watch::isStopped);
        return urgent.bound();
    }

    private static Planned proved(Found best, LowerBound bound, long whole) {
        Map<Promise, Integer> lateAlone = new HashMap<>();
        for (Due due : best.model().dues) {
            if (bound.late(due) > 0) {
                lateAlone.put(due.promise, bound.late(due));
            }
        }
        return new Planned(
                best.plan(),
                Math.min(Math.max(whole, bound.value()), best.cost().lateness()),
                lateAlone);
    }

    private static Dates dates(Found found) {
        Decoder decoder = new Decoder(found.model());
        Dates dates = decoder.emptyDates();
        decoder.decode(found.order(), dates);
        return dates;
    }
}
