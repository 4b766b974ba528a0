package org.plumbrow.calc.forecast;

import java.util.Arrays;
import org.plumbrow.calc.planning.Absence;
import org.plumbrow.calc.planning.Crew;

/** The slots on which one crew is there. */
final class CrewDays {

    final int[] present;
    final int[] presentBefore;
    /** The same, a bit a slot. */
    final long[] bits;

    CrewDays(Crew crew, DayTables time) {
        int size = time.clockOf.length;
        bits = new long[(size >> 6) + 1];
        for (int slot = 0; slot < size; slot++) {
            bits[slot >> 6] |= 1L << slot;
        }
        for (Absence absence : crew.absences()) {
            int from = time.axis.atOrAfter(absence.first());
            int to = Math.min(size - 1, time.axis.atOrBefore(absence.last()));
            for (int slot = from; slot <= to; slot++) {
                bits[slot >> 6] &= ~(1L << slot);
            }
        }
        presentBefore = new int[size + 1];
        int[] found = new int[size];
        int count = 0;
        for (int slot = 0; slot < size; slot++) {
            presentBefore[slot] = count;
            if ((bits[slot >> 6] >>> slot & 1) == 1) {
                found[count++] = slot;
            }
        }
        presentBefore[size] = count;
        present = Arrays.copyOf(found, count);
    }

    /** The first slot at or after one on which the crew is there; its last one where there is none. */
    int presentFrom(int slot) {
        return present[Math.min(present.length - 1, presentBefore[slot])];
    }

    /** The slot in which work of so many half-days ends that begins at or after a slot. */
    int finish(int ready, int halfDays) {
        return present[Math.min(present.length - 1, presentBefore[ready] + halfDays - 1)];
    }

    /** The same, on those half-days only on which the weather holds. @param fair a bit a slot */
    int finishInFairWeather(long[] fair, int fairFrom, int ready, int halfDays, int lastSlot) {
        int word = ready >> 6;
        long open = bits[word] & fair[fairFrom + word] & (-1L << ready);
        int left = halfDays;
        int here = Long.bitCount(open);
        while (here < left) {
            left -= here;
            if (++word == bits.length) {
                return lastSlot;
            }
            open = bits[word] & fair[fairFrom + word];
            here = Long.bitCount(open);
        }
        while (--left > 0) {
            open &= open - 1;
        }
        return (word << 6) + Long.numberOfTrailingZeros(open);
    }
}
