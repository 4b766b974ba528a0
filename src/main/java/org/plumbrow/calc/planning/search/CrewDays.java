package org.plumbrow.calc.planning.search;

import java.util.Arrays;
import org.plumbrow.calc.planning.Absence;
import org.plumbrow.calc.planning.Crew;

/** The slots on which one crew is there, and which of them are taken by settled work. */
public final class CrewDays {

    public final Crew crew;
    /** The slots on which it is there, in time. */
    public final int[] present;
    /** Of each slot: the number among the present ones of the first at or after it; one entry more than slots. */
    public final int[] indexAtOrAfter;
    /** Of each present slot: the outdoor work done before it; one entry more. */
    final long[] workedBefore;
    /** Bits of the present slots that settled work takes. */
    final long[] taken;

    CrewDays(Crew crew, Slots slots) {
        this.crew = crew;
        boolean[] away = new boolean[slots.size];
        for (Absence absence : crew.absences()) {
            int to = slots.axis.atOrBefore(absence.last());
            for (int slot = slots.axis.atOrAfter(absence.first()); slot <= to; slot++) {
                away[slot] = true;
            }
        }
        indexAtOrAfter = new int[slots.size + 1];
        int[] found = new int[slots.size];
        int count = 0;
        for (int slot = 0; slot < slots.size; slot++) {
            indexAtOrAfter[slot] = count;
            if (!away[slot]) {
                found[count++] = slot;
            }
        }
        indexAtOrAfter[slots.size] = count;
        present = Arrays.copyOf(found, count);
        workedBefore = new long[count + 1];
        for (int index = 0; index < count; index++) {
            workedBefore[index + 1] = workedBefore[index] + slots.workedShare[present[index]];
        }
        taken = new long[(count >> 6) + 2];
    }

    /** How many present slots from one on a work takes; -1 when they do not suffice. */
    public int length(int from, int halfDays, boolean inTheWeather) {
        if (!inTheWeather) {
            return from + halfDays <= present.length ? halfDays : -1;
        }
        long goal = workedBefore[Math.min(from, present.length)] + Slots.enoughFor(halfDays);
        int index = from + halfDays;
        while (index <= present.length && workedBefore[index] < goal) {
            index++;
        }
        return index <= present.length ? index - from : -1;
    }

    public boolean isPresent(int slot) {
        return indexAtOrAfter[slot + 1] > indexAtOrAfter[slot];
    }

    public boolean isTaken(int index) {
        return (taken[index >> 6] & (1L << (index & 63))) != 0;
    }
}
