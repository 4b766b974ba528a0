package org.plumbrow.calc.planning.exact;

import com.google.ortools.sat.BoolVar;
import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.LinearArgument;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearExprBuilder;
import org.plumbrow.calc.planning.PlanCost;
import org.plumbrow.calc.planning.search.BranchModel;
import org.plumbrow.calc.planning.search.Dates;
import org.plumbrow.calc.planning.search.Due;
import org.plumbrow.calc.planning.search.Task;

/** What a piece is to make small: weighted lateness, then (as its small change) how far known dates move. */
final class Lateness {

    /** One weighted half-day late outweighs that much disturbance. */
    static final int SCALE = 1_000;

    private final PieceModel from;
    private final BranchModel model;
    private final LinearExprBuilder sum = LinearExpr.newBuilder();
    private final boolean withDisturbance;

    Lateness(PieceModel from, boolean withDisturbance) {
        this.from = from;
        this.withDisturbance = withDisturbance;
        model = from.model;
        for (Due due : model.dues) {
            add(due);
        }
        if (withDisturbance) {
            from.moves.values().forEach(this::addDisturbance);
        }
        from.cp.minimize(sum);
    }

    int scale() {
        return withDisturbance ? SCALE : 1;
    }

    private void add(Due due) {
        boolean touched = false;
        int least = due.settled;
        for (int number : due.tasks) {
            touched |= from.moves.containsKey(number);
            if (!from.moves.containsKey(number) && !from.piece.strict()) {
                least = Math.max(least, lateAsItStands(due, number));
            }
        }
        if (!touched) {
            return;
        }
        IntVar late = from.cp.newIntVar(least, model.slots.size, "late");
        for (int number : due.tasks) {
            Moves moved = from.moves.get(number);
            if (moved != null) {
                from.cp.addGreaterOrEqual(late, late(due, moved));
            }
        }
        sum.addTerm(late, (long) due.weight * scale());
    }

    private int lateAsItStands(Due due, int number) {
        Dates now = from.piece.now();
        Task task = model.tasks[number];
        return task.kind == Task.Kind.WAIT
                ? task.waitLate(due, now.start[number])
                : due.late(now.finish[number], model.slots.day(now.finish[number]));
    }

    private LinearArgument late(Due due, Moves moved) {
        Task task = model.tasks[moved.number];
        if (task.kind != Task.Kind.WAIT) {
            return LinearExpr.affine(moved.end, 1, -1 - due.slot);
        }
        int first = from.earliestStart(moved.number);
        int last = Math.min(from.piece.latest()[moved.number], model.slots.size - 1);
        int[] table = new int[model.slots.size];
        for (int slot = first; slot <= last; slot++) {
            table[slot] = task.waitLate(due, slot);
        }
        return from.looked(moved.start, first, last, table);
    }

    private void addDisturbance(Moves moved) {
        Task task = model.tasks[moved.number];
        if (task.knownStart < 0) {
            return;
        }
        IntVar apart = from.cp.newIntVar(0, PlanCost.MOST_MOVED, "d");
        BoolVar far = from.cp.newBoolVar("far");
        from.cp.addEquality(apart, PlanCost.MOST_MOVED).onlyEnforceIf(far);
        from.cp
                .addGreaterOrEqual(apart, LinearExpr.affine(moved.start, 1, -task.knownStart))
                .onlyEnforceIf(far.not());
        from.cp
                .addGreaterOrEqual(apart, LinearExpr.affine(moved.start, -1, task.knownStart))
                .onlyEnforceIf(far.not());
        sum.addTerm(apart, 1);
        for (Moves.ByCrew choice : moved.choices) {
            if (choice.crew() != task.knownCrew) {
                sum.addTerm(choice.taken(), PlanCost.CREW_CHANGED);
            }
        }
    }
}
