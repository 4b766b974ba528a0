package org.plumbrow.calc.planning.replan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.plumbrow.calc.calendar.HalfDay;
import org.plumbrow.calc.planning.Costing;
import org.plumbrow.calc.planning.Plan;
import org.plumbrow.calc.planning.PlanningProblem;
import org.plumbrow.calc.planning.Published;
import org.plumbrow.calc.planning.SerialPlanner;
import org.plumbrow.calc.planning.engine.Effort;
import org.plumbrow.calc.planning.engine.Generations;
import org.plumbrow.calc.planning.engine.Planned;
import org.plumbrow.calc.planning.engine.Planner;
import org.plumbrow.calc.planning.engine.Watch;
import org.plumbrow.calc.planning.search.BranchModel;
import org.plumbrow.calc.planning.search.Dates;
import org.plumbrow.calc.planning.search.Decoder;
import org.plumbrow.calc.planning.search.Order;
import org.plumbrow.calc.planning.search.PlanSearch;

/**
 * The plan that is proposed, with all the work it may take. Where people know one it is searched for around that one, then
 * what stands of the next weeks is held and the rest planned anew; a plan made anew as a whole takes its place only where that
 * is clearly less late. Last, all that can be put back without more lateness
 * is put back, however far ahead. The change that moves least is the draft where nothing less late is found.
 */
public final class Draft {

    /** The first searches begin from so many orders of each kind, fewer where there are few orders to try. */
    private static final int STARTS_OF_A_KIND = 6;

    private static final int FEWEST_OF_A_KIND = 2;

    private static final int ORDERS_A_START = 2_000;

    /** Of the orders: around the known plan, then for what does not stand in the next weeks; the rest puts back. */
    private static final double AROUND = 0.2;

    private static final double REST_ANEW = 0.6;

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
    private final Decoder decoder;

    private Draft(PlanningProblem problem, Published published, Effort effort, Watch watch) {
        this.problem = problem;
        this.published = published;
        this.effort = effort;
        this.watch = watch;
        model = BranchModel.of(problem, SerialPlanner.plan(problem), Optional.of(published));
        known = new KnownPlaces(model, published.plan());
        decoder = new Decoder(model);
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
        Plan around = least.weightedHalfDaysLate() > model.settledLateness ? around(least) : least;
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
        String stage = "Searching around the published plan";
        watch.progress(stage, 0, 1, least.weightedHalfDaysLate());
        int orders = (int) (effort.decodings() * AROUND);
        Order bent = new Generations(model, this::bent, effort.seed(), effort.threads(), watch)
                .best(stage, starts(orders), orders);
        return lessLate(lessLate(least, decoded(bent)), restAnew(bent));
    }

    /**
     * What an order leaves standing of the next weeks, and all else as if nothing were known of it. It is made once more from
     * where everything stands, as nothing of it is settled and each date has to say what bounds it.
     */
    private Plan restAnew(Order bent) {
        Dates dates = decoder.emptyDates();
        decoder.decode(bent, dates);
        Effort some = new Effort(
                effort.seed(), (int) (effort.decodings() * REST_ANEW), 0, effort.proofRounds(), 0, effort.threads());
        Plan rest = Planner.plan(new StandingWeeks(known, dates).fixed(), Optional.empty(), some, watch)
                .plan();
        return decoded(new KnownPlaces(model, rest).kept());
    }

    private Generations.Found bent(Order start, long seed, int orders) {
        Bending bending = new Bending(known, start, seed).run(orders, watch::isStopped);
        boolean perfect = bending.lateness() <= model.settledLateness;
        return new Generations.Found(bending.best(), bending.cost(), bending.lateness(), perfect);
    }

    /** The best orders with what lies far ahead standing, and the best with it free: neither kind is always the better one. */
    private List<Order> starts(int orders) {
        int ofAKind = Math.max(FEWEST_OF_A_KIND, Math.min(STARTS_OF_A_KIND, orders / (2 * ORDERS_A_START)));
        BentOrders bent = new BentOrders(known);
        List<Order> starts = new ArrayList<>();
        for (boolean farStands : new boolean[] {true, false}) {
            bent.all(farStands).stream()
                    .map(order -> new Bending(known, order, effort.seed()))
                    .sorted(Comparator.comparingDouble(Bending::cost))
                    .limit(ofAKind)
                    .map(Bending::best)
                    .forEach(starts::add);
        }
        return starts;
    }

    private Plan putBack(Plan plan) {
        watch.progress("Putting back what need not move", 0, 1, plan.weightedHalfDaysLate());
        Order standing = new KnownPlaces(model, plan).kept();
        int orders = (int) (effort.decodings() * (1 - AROUND - REST_ANEW));
        Plan back = decoded(new PuttingBack(known, standing).run(orders, watch::isStopped));
        return lessLate(back, plan);
    }

    private Plan decoded(Order order) {
        return PlanSearch.decoded(model, new Costing(problem, Optional.of(published)), order)
                .plan();
    }
}
