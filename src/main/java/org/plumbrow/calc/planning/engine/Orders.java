package org.plumbrow.calc.planning.engine;

import org.plumbrow.calc.planning.search.BranchModel;
import org.plumbrow.calc.planning.search.Dates;
import org.plumbrow.calc.planning.search.Order;
import org.plumbrow.calc.planning.search.Task;

/** Orders read off dates. */
final class Orders {

    private Orders() {}

    /** Served by start, each by its crew, known dates held unless they lie later: gives the same dates or earlier ones. */
    static Order of(BranchModel model, Dates dates) {
        int size = model.size();
        Order order = new Order(dates.start.clone(), dates.crew.clone(), new int[size]);
        for (int number = 0; number < size; number++) {
            order.notBefore()[number] = held(model.tasks[number], dates.start[number]);
        }
        return order;
    }

    /** Served by where each task would start if all paid for their crews; what no promise waits for by urgency. */
    static Order ofWishes(BranchModel model, int[] wishes) {
        Order order = Order.urgent(model).thrifty();
        for (int number = 0; number < model.size(); number++) {
            order.key()[number] = wishes[number] < 0 ? order.key()[number] : wishes[number];
        }
        return order;
    }

    /** A known start is held back to its date, unless the plan puts it earlier for somebody's sake. */
    static int held(Task task, int start) {
        return task.knownStart < 0 ? 0 : Math.min(start, task.knownStart);
    }
}
