package org.plumbrow.calc.planning.engine;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.function.ToIntFunction;
import org.plumbrow.calc.planning.exact.Answer;
import org.plumbrow.calc.planning.exact.Piece;
import org.plumbrow.calc.planning.exact.PieceSolver;
import org.plumbrow.calc.planning.search.BranchModel;
import org.plumbrow.calc.planning.search.Dates;
import org.plumbrow.calc.planning.search.Decoder;
import org.plumbrow.calc.planning.search.Due;
import org.plumbrow.calc.planning.search.Order;
import org.plumbrow.calc.planning.search.Task;

/**
 * All that a promise waits for, given to the solver at once: for a small branch it often ends with a proof. What no promise
 * waits for is left out; it can be done around and afterwards.
 */
final class WholeBranch {

    /** Works of crews beyond which a proof is out of reach. */
    private static final int MOST_WORKS = 250;

    private final BranchModel model;
    private final Dates plan;
    private final boolean[] counts;
    /** Weighted half-days late of the promises left out, each alone. */
    private final long others;

    private long bound;
    private Optional<Order> better = Optional.empty();

    /** @param plan the best so far, with all placed; only what is less late is looked for */
    WholeBranch(BranchModel model, Dates plan) {
        this(model, plan, List.of(model.dues), due -> 0);
    }

    private WholeBranch(BranchModel model, Dates plan, List<Due> dues, ToIntFunction<Due> lateAlone) {
        this.model = model;
        this.plan = plan;
        counts = counting(dues);
        others = Arrays.stream(model.dues)
                .filter(due -> Arrays.stream(due.tasks).noneMatch(number -> counts[number]))
                .mapToLong(due -> (long) due.weight * lateAlone.applyAsInt(due))
                .sum();
    }

    /**
     * As many of the jobs promised first as a solver can see through: with all others gone they are at best less late, and
     * each of the others is at least as late as alone, so both together are a bound of the whole.
     *
     * @param most works of crews
     * @param lateAlone half-days that a promise is late in any plan
     */
    static WholeBranch mostUrgent(BranchModel model, Dates plan, int most, ToIntFunction<Due> lateAlone) {
        List<Due> byDate = Arrays.stream(model.dues)
                .sorted(Comparator.comparingInt(due -> due.slot))
                .toList();
        WholeBranch widest = new WholeBranch(model, plan, List.of(), lateAlone);
        for (int count = 1; count <= byDate.size(); count++) {
            WholeBranch next = new WholeBranch(model, plan, byDate.subList(0, count), lateAlone);
            if (next.works() > most) {
                return widest;
            }
            widest = next;
        }
        return widest;
    }

    boolean isSmall() {
        int works = works();
        return works > 0 && works <= MOST_WORKS;
    }

    int works() {
        int works = 0;
        for (int number = 0; number < counts.length; number++) {
            works += counts[number] && model.tasks[number].kind == Task.Kind.CREW ? 1 : 0;
        }
        return works;
    }

    /**
     * @param work deterministic seconds of the solver
     * @param stopped asked all the time; what is found and proved by then stands
     */
    void solve(double work, long seed, BooleanSupplier stopped) {
        Dates only = new Decoder(model).emptyDates();
        only.take(plan);
        for (int number = 0; number < counts.length; number++) {
            only.crew[number] = counts[number] ? only.crew[number] : -1;
        }
        Piece all = new Piece(model, only, counts, latest(), true);
        Answer answer = new PieceSolver(false, (int) (seed & 0x7FFFFFFF)).prove(all, work, stopped);
        bound = answer.kind() == Answer.Kind.IMPOSSIBLE
                ? 0
                : Math.min(plan.lateness(), answer.bound() + others + model.settledLateness);
        if (answer.hasDates() && answer.value() + model.settledLateness < plan.lateness()) {
            better = Optional.of(order(answer));
        }
    }

    /** No plan has fewer weighted half-days late. */
    long bound() {
        return bound;
    }

    /** An order that may be less late. */
    Optional<Order> better() {
        return better;
    }

    private boolean[] counting(List<Due> dues) {
        boolean[] found = new boolean[model.size()];
        for (Due due : dues) {
            for (int number : due.tasks) {
                found[number] = true;
            }
        }
        for (int at = model.order.length - 1; at >= 0; at--) {
            for (int before : model.tasks[model.order[at]].predecessors) {
                found[before] |= found[model.order[at]];
            }
        }
        return found;
    }

    /** Later than that, one promise alone would be later than the whole plan is. */
    private int[] latest() {
        int[] latest = new int[model.size()];
        Arrays.fill(latest, model.slots.size - 1);
        for (Due due : model.dues) {
            int late = (int) Math.min(model.slots.size, plan.lateness() / due.weight + 1);
            for (int number : due.tasks) {
                latest[number] = Math.max(0, Math.min(latest[number], due.slot + late));
            }
        }
        for (int at = model.order.length - 1; at >= 0; at--) {
            int number = model.order[at];
            for (int next : model.successors[number]) {
                latest[number] = counts[next] ? Math.min(latest[number], latest[next]) : latest[number];
            }
        }
        return latest;
    }

    private Order order(Answer answer) {
        Order order = new Order(plan.start.clone(), plan.crew.clone(), new int[model.size()]);
        for (int number = 0; number < counts.length; number++) {
            int start = counts[number] ? answer.start()[number] : plan.start[number] + model.slots.size;
            order.key()[number] = start;
            order.crew()[number] = counts[number] ? answer.crew()[number] : Order.ANY;
            order.notBefore()[number] = counts[number] ? Orders.held(model.tasks[number], start) : 0;
        }
        return order;
    }
}
