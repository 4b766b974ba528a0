package org.plumbrow.calc.planning.engine;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.chocosolver.solver.Model;
import org.chocosolver.solver.Solver;
import org.chocosolver.solver.search.strategy.Search;
import org.chocosolver.solver.variables.BoolVar;
import org.chocosolver.solver.variables.IntVar;
import org.chocosolver.solver.variables.Task;
import org.plumbrow.calc.planning.search.BranchModel;
import org.plumbrow.calc.planning.search.CrewDays;
import org.plumbrow.calc.planning.search.Dates;
import org.plumbrow.calc.planning.search.Due;
import org.plumbrow.calc.planning.search.Order;

/**
 * The whole branch given to a second general-purpose solver (Choco), to measure beside. A work takes its plain half-days and
 * keeps clear of days off; the decoder makes dates from the order and the crews that come out, so what the model leaves out
 * costs it nothing but a sharper bound.
 */
final class OtherSolver {

    private final BranchModel model;
    private final Dates plan;
    private final int horizon;
    private final Model choco = new Model("branch");
    private final IntVar[] start;
    private final IntVar[] end;
    private final IntVar[] length;
    private final IntVar[] choice;
    private final BoolVar[][] taken;

    /** @param plan the one it begins with */
    OtherSolver(BranchModel model, Dates plan) {
        this.model = model;
        this.plan = plan;
        int size = model.size();
        horizon = Math.min(
                model.slots.size - 1, 1 + Arrays.stream(plan.finish).max().orElse(0));
        start = new IntVar[size];
        end = new IntVar[size];
        length = new IntVar[size];
        choice = new IntVar[size];
        taken = new BoolVar[size][0];
        for (int number : model.order) {
            add(number);
        }
        for (int number : model.order) {
            follow(number);
        }
        keepGroups();
        for (int crew = 0; crew < model.crews.length; crew++) {
            limitCrew(crew);
        }
        for (int pool = 0; pool < model.pools.length; pool++) {
            limitPool(pool);
        }
    }

    /** The best order it comes to; empty when it never leaves the plan it began with behind. */
    Optional<Order> best(BooleanSupplier stopped) {
        IntVar sum = objective();
        choco.arithm(sum, "<", (int) Math.min(Integer.MAX_VALUE / 4, plan.lateness() - model.settledLateness))
                .post();
        Solver solver = choco.getSolver();
        IntVar[] decided = IntStream.range(0, start.length)
                .boxed()
                .flatMap(number ->
                        choice[number] == null ? Stream.of(start[number]) : Stream.of(choice[number], start[number]))
                .toArray(IntVar[]::new);
        solver.setSearch(Search.lastConflict(Search.domOverWDegSearch(decided)));
        solver.addStopCriterion(stopped::getAsBoolean);
        choco.setObjective(Model.MINIMIZE, sum);
        Optional<Order> best = Optional.empty();
        while (solver.solve()) {
            best = Optional.of(order());
        }
        return best;
    }

    private Order order() {
        Order order = new Order(new int[start.length], new int[start.length], new int[start.length]);
        for (int number = 0; number < start.length; number++) {
            order.key()[number] = start[number].getValue();
            order.crew()[number] =
                    choice[number] == null ? Order.ANY : model.tasks[number].crews[choice[number].getValue()];
        }
        return order;
    }

    private void add(int number) {
        var task = model.tasks[number];
        start[number] = choco.intVar(Math.min(task.release, horizon), horizon, true);
        if (task.kind == org.plumbrow.calc.planning.search.Task.Kind.CREW) {
            int[] lengths = task.halfDays;
            int least = Arrays.stream(lengths).min().orElse(1);
            int most = Arrays.stream(lengths).max().orElse(1);
            choice[number] = choco.intVar(0, lengths.length - 1, false);
            length[number] = choco.intVar(least, most, true);
            choco.element(length[number], lengths, choice[number]).post();
            taken[number] = IntStream.range(0, lengths.length)
                    .mapToObj(at -> choco.intEqView(choice[number], at))
                    .toArray(BoolVar[]::new);
            end[number] = choco.intVar(0, horizon + most, true);
            choco.arithm(start[number], "+", length[number], "=", end[number]).post();
        } else {
            int fixed = task.kind == org.plumbrow.calc.planning.search.Task.Kind.DESK ? task.halfDays[0] : 1;
            end[number] = choco.intView(1, start[number], fixed);
        }
    }

    private void follow(int number) {
        var task = model.tasks[number];
        for (int link = 0; link < task.predecessors.length; link++) {
            int before = task.predecessors[link];
            boolean wait = model.tasks[before].kind == org.plumbrow.calc.planning.search.Task.Kind.WAIT;
            IntVar anchor = wait ? start[before] : choco.intView(1, end[before], -1);
            int[] ready = Arrays.copyOf(task.readyAfter[link], Math.min(horizon + 1, task.readyAfter[link].length));
            IntVar from = choco.intVar(0, model.slots.size, true);
            choco.element(from, ready, anchor, 0).post();
            choco.arithm(start[number], ">=", from).post();
        }
    }

    private void keepGroups() {
        for (int[] group : model.groups) {
            for (int at = 1; at < group.length; at++) {
                int one = group[at - 1];
                int two = group[at];
                for (int crew = 0; crew < model.crews.length; crew++) {
                    choco.arithm(byCrew(one, crew), "=", byCrew(two, crew)).post();
                }
            }
        }
    }

    private IntVar byCrew(int number, int crew) {
        int[] crews = model.tasks[number].crews;
        for (int at = 0; at < crews.length; at++) {
            if (crews[at] == crew) {
                return taken[number][at];
            }
        }
        return choco.intVar(0);
    }

    private void limitCrew(int crew) {
        List<Task> stays = new ArrayList<>();
        List<IntVar> heights = new ArrayList<>();
        for (int number = 0; number < start.length; number++) {
            IntVar by = byCrew(number, crew);
            if (choice[number] != null && by.getUB() > 0) {
                stays.add(new Task(start[number], length[number], end[number]));
                heights.add(by);
            }
        }
        if (stays.isEmpty()) {
            return;
        }
        CrewDays days = model.crews[crew];
        for (int slot = model.slots.today; slot <= horizon; slot++) {
            boolean off = !days.isPresent(slot) || days.isTaken(days.indexAtOrAfter[slot]);
            if (off) {
                stays.add(fixed(slot));
                heights.add(choco.intVar(1));
            }
        }
        choco.cumulative(stays.toArray(Task[]::new), heights.toArray(IntVar[]::new), choco.intVar(1))
                .post();
    }

    private Task fixed(int slot) {
        return new Task(choco.intVar(slot), choco.intVar(1), choco.intVar(slot + 1));
    }

    private void limitPool(int pool) {
        List<Task> stays = new ArrayList<>();
        List<IntVar> heights = new ArrayList<>();
        int[] free = model.pools[pool].free;
        int most = Math.max(0, Arrays.stream(free).max().orElse(0));
        for (int number = 0; number < start.length; number++) {
            var task = model.tasks[number];
            for (int need = 0; need < task.pools.length; need++) {
                if (task.pools[need] == pool) {
                    stays.add(new Task(start[number], length[number], end[number]));
                    heights.add(choco.intVar(task.pieces[need]));
                }
            }
        }
        if (stays.isEmpty()) {
            return;
        }
        for (int slot = model.slots.today; slot <= horizon; slot++) {
            if (free[slot] < most) {
                stays.add(fixed(slot));
                heights.add(choco.intVar(most - Math.max(0, free[slot])));
            }
        }
        choco.cumulative(stays.toArray(Task[]::new), heights.toArray(IntVar[]::new), choco.intVar(most))
                .post();
    }

    private IntVar objective() {
        IntVar[] late = new IntVar[model.dues.length];
        int[] weight = new int[late.length];
        for (int at = 0; at < late.length; at++) {
            Due due = model.dues[at];
            late[at] = choco.intVar(due.settled, model.slots.size, true);
            weight[at] = due.weight;
            for (int number : due.tasks) {
                choco.arithm(late[at], ">=", late(due, number)).post();
            }
        }
        IntVar sum = choco.intVar(0, Integer.MAX_VALUE / 4, true);
        choco.scalar(late, weight, "=", sum).post();
        return sum;
    }

    private IntVar late(Due due, int number) {
        var task = model.tasks[number];
        if (task.kind != org.plumbrow.calc.planning.search.Task.Kind.WAIT) {
            return choco.intView(1, end[number], -1 - due.slot);
        }
        int[] table = IntStream.rangeClosed(0, horizon)
                .map(slot -> task.waitLate(due, slot))
                .toArray();
        IntVar late = choco.intVar(0, model.slots.size, true);
        choco.element(late, table, start[number], 0).post();
        return late;
    }
}
