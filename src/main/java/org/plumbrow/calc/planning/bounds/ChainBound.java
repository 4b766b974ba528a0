package org.plumbrow.calc.planning.bounds;

import org.plumbrow.calc.planning.search.BranchModel;
import org.plumbrow.calc.planning.search.CrewDays;
import org.plumbrow.calc.planning.search.Due;
import org.plumbrow.calc.planning.search.Task;

/** Each job alone in the branch: its chain of work and waits, every crew and machine free for it but for what is settled. */
public final class ChainBound {

    private final BranchModel model;
    private final Places places;
    private final int[] start;
    private final int[] finish;

    public ChainBound(BranchModel model) {
        this(model, new Places(model));
    }

    ChainBound(BranchModel model, Places places) {
        this.model = model;
        this.places = places;
        start = new int[model.size()];
        finish = new int[model.size()];
        for (int number : model.order) {
            place(number);
        }
    }

    private void place(int number) {
        Task task = model.tasks[number];
        int size = model.slots.size;
        int from = task.release;
        for (int link = 0; link < task.predecessors.length; link++) {
            int before = task.predecessors[link];
            int anchor = model.tasks[before].kind == Task.Kind.WAIT ? start[before] : finish[before];
            from = Math.max(from, anchor < size ? task.readyAfter[link][anchor] : size);
        }
        start[number] = Math.min(from, size);
        finish[number] = from >= size ? size : end(task, from);
    }

    /** A later start never ends earlier, so the first place is the one that ends first. */
    private int end(Task task, int from) {
        if (task.kind == Task.Kind.WAIT) {
            return task.waitEnd(from);
        }
        if (task.kind == Task.Kind.DESK) {
            return Math.min(model.slots.size, from + task.halfDays[0] - 1);
        }
        int earliest = model.slots.size;
        for (int choice = 0; choice < task.crews.length; choice++) {
            CrewDays crew = model.crews[task.crews[choice]];
            int[] lengths = places.lengths(task, choice);
            int index = crew.indexAtOrAfter[from];
            while (index < lengths.length && lengths[index] < 0) {
                index++;
            }
            if (index < lengths.length) {
                earliest = Math.min(earliest, crew.present[index + lengths[index] - 1]);
            }
        }
        return earliest;
    }

    /** The first slot in which a task can start. */
    int start(int number) {
        return start[number];
    }

    /** Half-days that a promise is late whatever else gives way. */
    public int late(Due due) {
        int late = due.settled;
        for (int number : due.tasks) {
            if (finish[number] < model.slots.size) {
                Task task = model.tasks[number];
                late = Math.max(
                        late,
                        task.kind == Task.Kind.WAIT
                                ? task.waitLate(due, start[number])
                                : due.late(finish[number], model.slots.day(finish[number])));
            }
        }
        return late;
    }

    /** Weighted half-days late of all promises together. */
    public long value() {
        long sum = model.settledLateness;
        for (Due due : model.dues) {
            sum += (long) due.weight * late(due);
        }
        return sum;
    }
}
