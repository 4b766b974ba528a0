package org.plumbrow.calc.planning.replan;

import java.util.ArrayList;
import java.util.List;
import org.plumbrow.calc.planning.search.BranchModel;
import org.plumbrow.calc.planning.search.Dates;
import org.plumbrow.calc.planning.search.Decoder;
import org.plumbrow.calc.planning.search.Order;

/**
 * Orders to search from when something has changed: what people count on stands on its known place; what lies farther ahead
 * stands, too, or keeps its sequence and nothing else. What cannot stand is served later, by any crew, to push little
 * away: by how much later, and whether its whole project goes along, is tried. Some move more than they save; the best few count.
 */
final class BentOrders {

    /** Half-days later. By trials at 150 projects: of five branches each had another best one, up to a fifth less late. */
    private static final int[] LATER = {0, 10, 20, 40, 80, 160};

    /** Each sets at most one work of each crew behind. */
    private static final int MOST_PASSES = 60;

    private final KnownPlaces known;
    private final BranchModel model;
    private final Decoder decoder;
    private final Dates dates;

    BentOrders(KnownPlaces known) {
        this.known = known;
        model = known.model;
        decoder = new Decoder(model);
        dates = decoder.emptyDates();
    }

    /** One for each way. @param farStands whether what lies farther ahead than people count on stands, too */
    List<Order> all(boolean farStands) {
        List<Order> all = new ArrayList<>();
        for (int later : LATER) {
            all.add(bent(later, false, farStands));
            all.add(bent(later, true, farStands));
        }
        return all;
    }

    private Order bent(int later, boolean wholeProject, boolean farStands) {
        Order order = Order.urgent(model).thrifty();
        boolean[] stays = new boolean[model.size()];
        for (int number = 0; number < model.size(); number++) {
            if (known.isKnown(number)) {
                order.key()[number] = known.start[number];
            }
            stays[number] = known.isKnown(number) && (farStands || known.isCountedOn(number));
            if (stays[number]) {
                known.keep(order, number);
            }
        }
        boolean displaced = true;
        for (int pass = 0; pass < MOST_PASSES && displaced; pass++) {
            decoder.decode(order, dates);
            displaced = putBehind(order, stays, later, wholeProject);
        }
        return order;
    }

    /** The first of each crew that does not stand: nothing that moved itself has pushed it. */
    private boolean putBehind(Order order, boolean[] stays, int later, boolean wholeProject) {
        boolean[] found = new boolean[model.crews.length + 1];
        boolean any = false;
        for (int number : dates.served) {
            int crew = known.crew[number] + 1;
            if (stays[number] && !found[crew] && !known.stands(number, dates)) {
                found[crew] = true;
                any = true;
                for (int gone : wholeProject ? model.projects[model.tasks[number].project] : new int[] {number}) {
                    stays[gone] = false;
                    order.key()[gone] = (known.isKnown(gone) ? known.start[gone] : order.key()[gone]) + later;
                    order.crew()[gone] = Order.THRIFTY;
                    order.notBefore()[gone] = 0;
                }
            }
        }
        return any;
    }
}
