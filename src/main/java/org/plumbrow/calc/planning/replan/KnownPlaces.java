package org.plumbrow.calc.planning.replan;

import java.util.Arrays;
import java.util.Optional;
import org.plumbrow.calc.planning.Placement;
import org.plumbrow.calc.planning.Plan;
import org.plumbrow.calc.planning.PlanCost;
import org.plumbrow.calc.planning.search.BranchModel;
import org.plumbrow.calc.planning.search.Dates;
import org.plumbrow.calc.planning.search.Decoder;
import org.plumbrow.calc.planning.search.Due;
import org.plumbrow.calc.planning.search.Order;
import org.plumbrow.calc.planning.search.Task;

/** Where each task of a model stands in the plan that people know, at any distance from today. */
final class KnownPlaces {

    private static final int NONE = -1;

    /** Half-days that a changed date or crew counts for, by however little. */
    private static final int TELLING = PlanCost.CREW_CHANGED;

    final BranchModel model;
    /** The slot in which it starts there; -1 where it has no place. */
    final int[] start;
    /** The crew that does it there; -1 for none, or where that crew may not do it any more. */
    final int[] crew;

    private final int[] finish;
    private final long[] lastDay;

    KnownPlaces(BranchModel model, Plan known) {
        this.model = model;
        start = filled(model.size());
        crew = filled(model.size());
        finish = filled(model.size());
        lastDay = new long[model.size()];
        for (int number = 0; number < model.size(); number++) {
            Task task = model.tasks[number];
            Optional<Placement> place = known.of(task.activity.id());
            if (place.isPresent()) {
                start[number] = model.slots.axis.atOrAfter(place.get().start());
                finish[number] = model.slots.axis.atOrBefore(place.get().finish());
                lastDay[number] = place.get().finish().date().toEpochDay();
                crew[number] = crew(task, place.get());
            }
        }
    }

    private static int[] filled(int size) {
        int[] none = new int[size];
        Arrays.fill(none, NONE);
        return none;
    }

    private int crew(Task task, Placement place) {
        return Arrays.stream(task.crews)
                .filter(able -> place.crewId()
                        .filter(model.problem.crews().get(able).id()::equals)
                        .isPresent())
                .findFirst()
                .orElse(NONE);
    }

    boolean isKnown(int number) {
        return start[number] != NONE;
    }

    /** Whether it is the work of a crew for which people have arranged themselves already. */
    boolean isCountedOn(int number) {
        return model.tasks[number].knownStart >= 0;
    }

    /** Whether dates put another task, or this one, on its known place, with its crew. */
    boolean meets(int number, int other, Dates dates) {
        return crew[number] != NONE
                && dates.crew[other] == crew[number]
                && dates.start[other] <= finish[number]
                && dates.finish[other] >= start[number];
    }

    /** Whether it starts as known and is done by whom people know. */
    boolean stands(int number, Dates dates) {
        return isKnown(number) && dates.start[number] == start[number] && dates.crew[number] == crew[number];
    }

    /**
     * How much dates differ from what people know, however far ahead: for each start the half-days by which it moves, at
     * most 40, and for each that moves or changes its crew 4 more, as somebody has to be told.
     */
    long disturbance(Dates dates) {
        long sum = 0;
        for (int number = 0; number < start.length; number++) {
            if (isKnown(number) && !stands(number, dates)) {
                sum += Math.min(PlanCost.MOST_MOVED, Math.abs(dates.start[number] - start[number])) + TELLING;
            }
        }
        return sum;
    }

    /** How many starts that people count on do not stand. */
    int movedOfCountedOn(Dates dates) {
        int moved = 0;
        for (int number = 0; number < start.length; number++) {
            moved += isCountedOn(number) && !stands(number, dates) ? 1 : 0;
        }
        return moved;
    }

    /** Half-days late of a promise in the known plan. */
    int late(Due due) {
        int late = due.settled;
        for (int number : due.tasks) {
            late = isKnown(number) ? Math.max(late, due.late(finish[number], lastDay[number])) : late;
        }
        return late;
    }

    /** Weighted half-days late of one project's promises; 0 of none. */
    long lateOf(int project, Decoder decoder, Dates dates) {
        long late = 0;
        if (project >= 0) {
            for (int due : model.duesOfProject[project]) {
                late += (long) model.dues[due].weight * decoder.late(model.dues[due], dates);
            }
        }
        return late;
    }

    /**
     * Everything on its known place, in the order of the known starts; what has none comes after all that has, the most
     * urgent first.
     */
    Order kept() {
        Order order = Order.urgent(model);
        for (int number = 0; number < start.length; number++) {
            if (isKnown(number)) {
                keep(order, number);
            } else {
                order.key()[number] += model.slots.size;
            }
        }
        return order;
    }

    /** One task on its known place; nothing happens to what has none. */
    void keep(Order order, int number) {
        if (isKnown(number)) {
            order.key()[number] = start[number];
            order.crew()[number] = crew[number];
            order.notBefore()[number] = start[number];
        }
    }
}
