package org.plumbrow.calc.planning;

import java.util.Arrays;
import java.util.BitSet;

/**
 * When one crew is there and when it is busy. A work spans days off and the crew's own absence, so it is a run of
 * neighbours among the half-days on which the crew is present.
 */
final class CrewTimeline {

    static final int NOBODY = -1;

    final Crew crew;
    /** The slots on which the crew is present, in time. */
    final int[] present;
    /** Of each slot: how many present ones lie before it; one entry more than slots. */
    private final int[] presentBefore;

    private final BitSet busy = new BitSet();
    private final int[] occupant;
    private int firstFree;

    CrewTimeline(Crew crew, TimeLine time) {
        this.crew = crew;
        BitSet absent = new BitSet(time.size());
        for (Absence absence : crew.absences()) {
            int from = time.axis.atOrAfter(absence.first());
            int to = time.axis.atOrBefore(absence.last());
            if (from <= to) {
                absent.set(from, to + 1);
            }
        }
        presentBefore = new int[time.size() + 1];
        int[] found = new int[time.size()];
        int count = 0;
        for (int slot = 0; slot < time.size(); slot++) {
            presentBefore[slot] = count;
            if (!absent.get(slot)) {
                found[count++] = slot;
            }
        }
        presentBefore[time.size()] = count;
        present = Arrays.copyOf(found, count);
        occupant = new int[count];
        Arrays.fill(occupant, NOBODY);
    }

    /** The index among the present slots of the first one at or after a slot. */
    int indexAtOrAfter(int slot) {
        return presentBefore[Math.min(slot, presentBefore.length - 1)];
    }

    boolean isPresent(int slot) {
        return presentBefore[slot + 1] > presentBefore[slot];
    }

    /** All before is busy. */
    int firstFree() {
        return firstFree;
    }

    int nextFree(int index) {
        return busy.nextClearBit(index);
    }

    /** The last busy index in a run, or -1. */
    int lastBusyIn(int from, int length) {
        int last = busy.previousSetBit(from + length - 1);
        return last >= from ? last : -1;
    }

    int occupant(int index) {
        return occupant[index];
    }

    void book(int from, int length, int activity) {
        busy.set(from, from + length);
        Arrays.fill(occupant, from, from + length, activity);
        if (from <= firstFree) {
            firstFree = nextFree(firstFree);
        }
    }
}
