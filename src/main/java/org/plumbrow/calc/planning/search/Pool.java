package org.plumbrow.calc.planning.search;

import java.util.Arrays;
import org.plumbrow.calc.planning.Equipment;

/** How many pieces of one kind of equipment settled work leaves in each slot. */
public final class Pool {

    public final Equipment equipment;
    public final int[] free;

    Pool(Equipment equipment, Slots slots) {
        this.equipment = equipment;
        free = new int[slots.size];
        Arrays.fill(free, equipment.count());
        for (Equipment.Away away : equipment.away()) {
            take(
                    slots.axis.atOrAfter(away.when().first()),
                    slots.axis.atOrBefore(away.when().last()),
                    away.count());
        }
    }

    void take(int from, int to, int pieces) {
        for (int slot = from; slot <= to; slot++) {
            free[slot] -= pieces;
        }
    }
}
