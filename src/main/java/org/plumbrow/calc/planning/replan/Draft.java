package org.plumbrow.calc.planning.replan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.plumbrow.calc.calendar.HalfDay;
import org.plumbrow.calc.planning.Costing;
import org.plumbrow.calc.planning.Plan;
import org.plumbrow.calc.planning.PlanningProblem;
import org.plumbrow.calc.planning.Published;
import org.plumbrow.calc.planning.SerialPlanner;
import org.plumbrow.calc.planning.engine.Effort;
import org.plumbrow.calc.planning.engine.Planned;
import org.plumbrow.calc.planning.engine.Planner;
import org.plumbrow.calc.planning.engine.Watch;
import org.plumbrow.calc.planning.search.BranchModel;
import org.plumbrow.calc.planning.search.Order;
import org.plumbrow.calc.planning.search.PlanSearch;
import org.plumbrow.calc.planning.search.Threads;

/**
 * The plan that is proposed, with all the work it may take. Where people know one it is searched for around that one, and
 * one made anew takes its place only where that is clearly less late. Last, all that can be put back without more lateness
 * is put back, however far ahead. The change that moves least is the draft where nothing less late is found.
 */
public final class Draft {

    /** Searches run side by side, each from another order, as many whatever the threads. */
    private static final int CHAINS_OF_A_KIND = 2;

    /** Of the orders; the rest puts back. */
    private static final double SEARCHED = 0.8;

    /** So many times the lateness of a plan made anew is borne before people are told new dates for most of their jobs. */
    private static final double WORTH_MOVING = 1.05;

    private static final Comparator<Plan> BY_LATENESS =
            Comparator.comparingInt((Plan one) -> one.findings().size()).thenComparingLong(Plan::weightedHalfDaysLate);

    private final PlanningProblem problem;
    private final Published published;
    private final Effort effort;
    private final Watch watch;
    private final BranchModel model;
    private final KnownPlaces known;

    private Draft(PlanningProblem problem, Published published, Effort effort, Watch watch) {
        this.problem = problem;
        this.published = published;
        this.effort = effort;
        this.watch = watch;
        model = BranchModel.of(problem, SerialPlanner.plan(problem), Optional.of(published));
        known = new KnownPlaces(model, published.plan());
    }

    /**
     * @param published what people know; without one a plan is made from nothing
     * @param watch told how far it is; when it says stop, the best plan so far is the answer
     */
    public static Planned of(PlanningProblem problem, Optional<Published> published, Effort effort, Watch watch) {
        return published
                .map(plan -> new Draft(problem, plan, effort, watch).planned())
                .orElseGet(() -> Planner.plan(problem, Optional.empty(), effort, watch));
    }

    private Planned planned() {
        Plan least = LeastChange.plan(problem, published);
        Plan around = least.weightedHalfDaysLate() > model.settledLateness ? lessLate(least, around(least)) : least;
        Published standing = new Published(around, HalfDay.afternoon(problem.lastDay()));
        Planned planned = Planner.plan(problem, Optional.of(standing), effort, watch);
        Plan chosen = isWorthMoving(planned.plan(), around) ? planned.plan() : around;
        Plan best = orSearched(published, least, putBack(chosen));
        return new Planned(best, planned.lowerBound(), planned.lateAlone());
    }

    private static boolean isWorthMoving(Plan anew, Plan around) {
        int fewer = Integer.compare(anew.findings().size(), around.findings().size());
        return fewer < 0 || (fewer == 0 && WORTH_MOVING * anew.weightedHalfDaysLate() < around.weightedHalfDaysLate());
    }

    private static Plan lessLate(Plan first, Plan second) {
        return BY_LATENESS.compare(first, second) <= 0 ? first : second;
    }

    /** The searched plan, or the one that changes least where it is no later: what people were told of counts, however far ahead. */
    static Plan orSearched(Published published, Plan least, Plan searched) {
        return BY_LATENESS
                                .thenComparingLong(one -> moved(published.plan(), one))
                                .compare(least, searched)
                        <= 0
                ? least
                : searched;
    }

    private static long moved(Plan known, Plan now) {
        return known.placements().entrySet().stream()
                .filter(place -> now.of(place.getKey())
                        .filter(placed -> placed.start().equals(place.getValue().start()))
                        .isEmpty())
                .count();
    }

    private Plan around(Plan least) {
        watch.progress("Searching around the published plan", 0, 1, least.weightedHalfDaysLate());
        List<Bending> starts = starts();
        int orders = (int) (effort.decodings() * SEARCHED / starts.size());
        List<Callable<Bending>> chains = new ArrayList<>();
        starts.forEach(chain -> chains.add(() -> chain.run(orders, watch::isStopped)));
        return Threads.all(chains, effort.threads()).stream()
                .min(Comparator.comparingDouble(Bending::cost))
                .map(chain -> decoded(chain.best()))
                .orElse(least);
    }

    /** The best orders with what lies far ahead standing, and the best with it free: neither kind is always the better one. */
    private List<Bending> starts() {
        BentOrders bent = new BentOrders(known);
        List<Bending> starts = new ArrayList<>();
        for (boolean farStands : new boolean[] {true, false}) {
            bent.all(farStands).stream()
                    .map(order -> new Bending(known, order, effort.seed()))
                    .sorted(Comparator.comparingDouble(Bending::cost))
                    .limit(CHAINS_OF_A_KIND)
                    .forEach(starts::add);
        }
        return starts;
    }

    private Plan putBack(Plan plan) {
        watch.progress("Putting back what need not move", 0, 1, plan.weightedHalfDaysLate());
        Order standing = new KnownPlaces(model, plan).kept();
        int orders = effort.decodings() - (int) (effort.decodings() * SEARCHED);
        Plan back = decoded(new PuttingBack(known, standing).run(orders, watch::isStopped));
        return lessLate(back, plan);
    }

    private Plan decoded(Order order) {
        return PlanSearch.decoded(model, new Costing(problem, Optional.of(published)), order)
                .plan();
    }
}
