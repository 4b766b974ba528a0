package org.plumbrow.calc.planning.exact;

import com.google.ortools.sat.BoolVar;
import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.IntervalVar;
import com.google.ortools.sat.LinearExpr;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.plumbrow.calc.planning.search.BranchModel;
import org.plumbrow.calc.planning.search.Task;

/** Writes a piece of a plan as a CP-SAT model: starts, crews and order. */
final class PieceModel {

    /** More spans of starts than that are merged, which loses little. */
    private static final int MOST_SPANS = 6;

    final CpModel cp = new CpModel();
    final Piece piece;
    final BranchModel model;
    final Map<Integer, Moves> moves = new HashMap<>();
    /** Whether a task cannot be placed within its limits at all. */
    private boolean impossible;

    private final int[] earliest;

    PieceModel(Piece piece) {
        this.piece = piece;
        model = piece.model();
        earliest = new int[model.size()];
        for (int number : model.order) {
            if (piece.free()[number]) {
                earliest[number] = earliest(number);
                add(number);
            }
        }
        if (!impossible) {
            moves.values().forEach(this::keepOrder);
            keepGroups();
            new SharedUse(this).limit();
        }
    }

    boolean isImpossible() {
        return impossible;
    }

    /** What the predecessors and the release allow. */
    private int earliest(int number) {
        Task task = model.tasks[number];
        int from = task.release;
        for (int link = 0; link < task.predecessors.length; link++) {
            int before = task.predecessors[link];
            Task first = model.tasks[before];
            boolean wait = first.kind == Task.Kind.WAIT;
            int start = piece.free()[before] ? earliest[before] : piece.now().start[before];
            int anchor = wait ? start : piece.free()[before] ? start + least(first) - 1 : piece.now().finish[before];
            from = Math.max(from, anchor < model.slots.size ? task.readyAfter[link][anchor] : model.slots.size);
        }
        return from;
    }

    private static int least(Task task) {
        int least = Integer.MAX_VALUE;
        for (int halfDays : task.halfDays) {
            least = Math.min(least, halfDays);
        }
        return least;
    }

    private void add(int number) {
        Task task = model.tasks[number];
        int from = earliest[number];
        int to = Math.min(piece.latest()[number], model.slots.size - 1);
        if (from > to) {
            impossible = true;
            return;
        }
        IntVar start = cp.newIntVar(from, to, "s");
        if (task.kind == Task.Kind.CREW) {
            addWork(number, task, start, from, to);
        } else {
            int length = task.kind == Task.Kind.DESK ? task.halfDays[0] : 1;
            IntVar end = cp.newIntVar(from + length, to + length, "e");
            cp.addEquality(end, LinearExpr.affine(start, 1, length));
            moves.put(number, new Moves(number, start, end, null));
        }
        cp.addHint(start, Math.max(from, Math.min(to, piece.now().start[number])));
    }

    private void addWork(int number, Task task, IntVar start, int from, int to) {
        List<List<Span>> spans = new ArrayList<>();
        int least = Integer.MAX_VALUE;
        int most = 0;
        for (int choice = 0; choice < task.crews.length; choice++) {
            List<Span> own = mayTake(task, task.crews[choice])
                    ? Span.of(task, model.crews[task.crews[choice]], task.halfDays[choice], from, to, MOST_SPANS)
                    : List.of();
            spans.add(own);
            for (Span span : own) {
                least = Math.min(least, span.length());
                most = Math.max(most, span.length());
            }
        }
        if (most == 0) {
            impossible = true;
            return;
        }
        IntVar end = cp.newIntVar(from + least, to + most, "e");
        IntVar length = cp.newIntVar(least, most, "l");
        Moves moved = new Moves(number, start, end, cp.newIntervalVar(start, length, end, "stay"));
        List<BoolVar> taken = new ArrayList<>();
        for (int choice = 0; choice < task.crews.length; choice++) {
            if (!spans.get(choice).isEmpty()) {
                taken.add(addChoice(moved, length, task.crews[choice], spans.get(choice)));
            }
        }
        cp.addExactlyOne(taken.toArray(BoolVar[]::new));
        moves.put(number, moved);
    }

    /** A group of which a part stays where it is keeps its crew. */
    private boolean mayTake(Task task, int crew) {
        if (task.group < 0) {
            return true;
        }
        for (int member : model.groups[task.group]) {
            if (!piece.free()[member] && piece.now().crew[member] >= 0) {
                return piece.now().crew[member] == crew;
            }
        }
        return true;
    }

    private BoolVar addChoice(Moves moved, IntVar length, int crew, List<Span> spans) {
        BoolVar taken = cp.newBoolVar("c");
        List<IntervalVar> runs = new ArrayList<>();
        List<BoolVar> parts = new ArrayList<>();
        for (Span span : spans) {
            BoolVar part = spans.size() == 1 ? taken : cp.newBoolVar("p");
            parts.add(part);
            cp.addGreaterOrEqual(moved.start, span.first()).onlyEnforceIf(part);
            cp.addLessOrEqual(moved.start, span.last()).onlyEnforceIf(part);
            cp.addEquality(length, span.length()).onlyEnforceIf(part);
            runs.add(cp.newOptionalFixedSizeIntervalVar(moved.start, span.length(), part, "r"));
        }
        if (spans.size() > 1) {
            cp.addEquality(LinearExpr.sum(parts.toArray(BoolVar[]::new)), taken);
        }
        cp.addHint(taken, piece.now().crew[moved.number] == crew ? 1 : 0);
        moved.choices.add(new Moves.ByCrew(crew, taken, runs));
        return taken;
    }

    private void keepOrder(Moves moved) {
        Task task = model.tasks[moved.number];
        for (int link = 0; link < task.predecessors.length; link++) {
            Moves before = moves.get(task.predecessors[link]);
            if (before != null) {
                boolean wait = model.tasks[before.number].kind == Task.Kind.WAIT;
                follow(before, wait, task.readyAfter[link], moved.start);
            }
        }
        for (int next : model.successors[moved.number]) {
            if (!piece.free()[next] && !piece.strict()) {
                int latest = latestBefore(moved.number, next);
                cp.addLessOrEqual(task.kind == Task.Kind.WAIT ? moved.start : moved.end, latest);
            }
        }
    }

    /** The latest start (of a wait) or end (of a work) that leaves a fixed successor where it is. */
    private int latestBefore(int number, int next) {
        Task after = model.tasks[next];
        int latest = Integer.MAX_VALUE;
        for (int link = 0; link < after.predecessors.length; link++) {
            if (after.predecessors[link] == number) {
                int[] ready = after.readyAfter[link];
                int anchor = Math.min(ready.length - 1, piece.now().start[next]);
                while (anchor >= 0 && ready[anchor] > piece.now().start[next]) {
                    anchor--;
                }
                latest = Math.min(latest, model.tasks[number].kind == Task.Kind.WAIT ? anchor : anchor + 1);
            }
        }
        return latest;
    }

    /** The successor starts no earlier than the table says: exactly for a wait, by the smallest lag for a work. */
    private void follow(Moves before, boolean wait, int[] ready, IntVar start) {
        int from = earliest[before.number];
        int to = Math.min(piece.latest()[before.number], ready.length - 1);
        if (wait && piece.strict() && to > from) {
            cp.addGreaterOrEqual(start, looked(before.start, from, to, ready));
            return;
        }
        int lag = Integer.MAX_VALUE;
        if (wait && !piece.strict()) {
            int now = Math.max(from, Math.min(to, piece.now().start[before.number]));
            lag = ready[now] - now;
        } else {
            for (int anchor = from; anchor < ready.length; anchor++) {
                lag = ready[anchor] < model.slots.size ? Math.min(lag, ready[anchor] - anchor) : lag;
            }
            lag = lag == Integer.MAX_VALUE ? 1 : lag;
        }
        cp.addGreaterOrEqual(start, LinearExpr.affine(wait ? before.start : before.end, 1, wait ? lag : lag - 1));
    }

    /** The table's value at the start, as a variable. */
    IntVar looked(IntVar start, int from, int to, int[] table) {
        long[] values = new long[to - from + 1];
        long most = 0;
        for (int slot = from; slot <= to; slot++) {
            values[slot - from] = table[slot];
            most = Math.max(most, table[slot]);
        }
        IntVar value = cp.newIntVar(0, most, "t");
        cp.addElement(LinearExpr.affine(start, 1, -from), values, value);
        return value;
    }

    int earliestStart(int number) {
        return earliest[number];
    }

    private void keepGroups() {
        for (int[] group : model.groups) {
            Moves first = null;
            for (int member : group) {
                Moves next = moves.get(member);
                if (next != null && first != null) {
                    sameCrew(first, next);
                }
                first = first == null ? next : first;
            }
        }
    }

    private void sameCrew(Moves one, Moves two) {
        Map<Integer, BoolVar> taken = new HashMap<>();
        two.choices.forEach(choice -> taken.put(choice.crew(), choice.taken()));
        for (Moves.ByCrew choice : one.choices) {
            BoolVar other = taken.remove(choice.crew());
            if (other == null) {
                cp.addEquality(choice.taken(), 0);
            } else {
                cp.addEquality(choice.taken(), other);
            }
        }
        taken.values().forEach(left -> cp.addEquality(left, 0));
    }
}
