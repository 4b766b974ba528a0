package org.plumbrow.calc.planning.search;

import java.util.Optional;
import java.util.function.BooleanSupplier;
import org.plumbrow.calc.planning.Costing;
import org.plumbrow.calc.planning.Guidance;
import org.plumbrow.calc.planning.Plan;
import org.plumbrow.calc.planning.PlanCost;
import org.plumbrow.calc.planning.PlanningProblem;
import org.plumbrow.calc.planning.Published;
import org.plumbrow.calc.planning.SerialPlanner;

/**
 * Plans a branch: by urgency, by what people already know, and by search from the better of both; of these the plan of
 * least cost, whose parts count in the order that {@link PlanCost} says. Never worse than {@link SerialPlanner} by that
 * order. The same problem, seed and number of decodings give the same plan.
 */
public final class PlanSearch {

    private PlanSearch() {}

    /** @param decodings how many orders the search tries; 0 for none @param seed of its chance */
    public record Effort(int decodings, long seed) {
        /** Some tenths of a second on a branch of 75 projects. */
        public static final Effort USUAL = new Effort(2_000, 1);

        public static final Effort NO_SEARCH = new Effort(0, 1);

        public Effort {
            if (decodings < 0) {
                throw new IllegalArgumentException("decodings must not be negative: " + decodings);
            }
        }
    }

    /**
     * @param published the plan that people know; without one nothing is disturbed
     * @param stopped asked now and then; the best plan so far is the answer
     */
    public static Plan plan(
            PlanningProblem problem, Optional<Published> published, Effort effort, BooleanSupplier stopped) {
        return found(problem, published, effort, stopped).plan();
    }

    /**
     * A plan and the order that makes it, for whoever searches on.
     *
     * @param order gives the plan, or one that is as good
     */
    public record Found(BranchModel model, Plan plan, PlanCost cost, Order order) {
        public Found orBetter(Found other) {
            return other.cost.isBetterThan(cost) ? other : this;
        }
    }

    /** As {@link #plan}, with the order. */
    public static Found found(
            PlanningProblem problem, Optional<Published> published, Effort effort, BooleanSupplier stopped) {
        Plan urgent = SerialPlanner.plan(problem);
        BranchModel model = BranchModel.of(problem, urgent, published);
        Costing costing = new Costing(problem, published);
        Found best = new Found(model, urgent, costing.of(urgent), Order.urgent(model));
        if (published.isPresent()) {
            best = best.orBetter(decoded(model, costing, rightShift(model)));
        }
        if (effort.decodings() > 0) {
            Order start = published.isPresent() ? best.order() : best.order().thrifty();
            ShiftSearch search = new ShiftSearch(model, start, effort.seed());
            search.run(effort.decodings(), stopped);
            best = best.orBetter(decoded(model, costing, search.best()));
        }
        return best;
    }

    /** What an order gives: the planner makes the plan. */
    public static Found decoded(BranchModel model, Costing costing, Order order) {
        Decoder decoder = new Decoder(model);
        Dates dates = decoder.emptyDates();
        decoder.decode(order, dates);
        Guidance guidance = Guiding.guidance(model, order, dates);
        Plan plan = SerialPlanner.plan(model.problem, guidance);
        return new Found(model, plan, costing.of(plan), order);
    }

    /** What people know, kept: same sequence, same crews, nothing earlier; what has to move moves later, what is new comes behind. */
    static Order rightShift(BranchModel model) {
        Order order = Order.urgent(model);
        for (int number = 0; number < model.size(); number++) {
            Task task = model.tasks[number];
            if (task.knownStart >= 0) {
                order.key()[number] = task.knownStart;
                order.crew()[number] = mayStill(task) ? task.knownCrew : Order.ANY;
                order.notBefore()[number] = task.knownStart;
            } else if (task.kind == Task.Kind.CREW) {
                order.key()[number] += model.slots.size;
            }
        }
        return order;
    }

    private static boolean mayStill(Task task) {
        for (int crew : task.crews) {
            if (crew == task.knownCrew) {
                return true;
            }
        }
        return false;
    }
}
