package org.plumbrow.calc.planning;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.plumbrow.calc.calendar.HalfDay;

/** How many pieces of one kind of equipment are free in each slot, and who has the others. */
final class EquipmentTimeline {

    final Equipment equipment;
    private final int[] free;
    private final List<Booking> bookings = new ArrayList<>();

    record Booking(int activity, int start, int finish) {}

    EquipmentTimeline(Equipment equipment, TimeLine time) {
        this.equipment = equipment;
        free = new int[time.size()];
        Arrays.fill(free, equipment.count());
        for (Equipment.Away away : equipment.away()) {
            int to = time.axis.atOrBefore(away.when().last());
            for (int slot = time.axis.atOrAfter(away.when().first()); slot <= to; slot++) {
                free[slot] -= away.count();
            }
        }
    }

    /** The last slot in the span in which fewer pieces are free than needed, or -1. */
    int lastShortage(int start, int finish, int count) {
        for (int slot = finish; slot >= start; slot--) {
            if (free[slot] < count) {
                return slot;
            }
        }
        return -1;
    }

    void book(int start, int finish, int count, int activity) {
        for (int slot = start; slot <= finish; slot++) {
            free[slot] -= count;
        }
        bookings.add(new Booking(activity, start, finish));
    }

    /** Who or what makes the equipment short up to and with that slot: the one who gives it back then, else an absence. */
    Bound whyShortUntil(int slot, Board board) {
        HalfDay then = board.time.at(slot);
        for (Booking booking : bookings) {
            if (booking.finish == slot) {
                return new Bound.EquipmentBusy(
                        equipment.id(), board.activity(booking.activity).id(), then);
            }
        }
        String reason = equipment.away().stream()
                .map(Equipment.Away::when)
                .filter(when -> when.holds(then))
                .map(Absence::reason)
                .findFirst()
                .orElse("not there");
        return new Bound.EquipmentAway(equipment.id(), then, reason);
    }
}
