package org.plumbrow.calc.planning.search;

/** Which of one crew's present slots are taken, as bits, and where a run of free ones lies. */
final class CrewBook {

    static final int NOWHERE = -1;

    final CrewDays days;
    private final long[] taken;
    /** All before is taken: where every search may begin. */
    private int firstFree;

    CrewBook(CrewDays days) {
        this.days = days;
        taken = days.taken.clone();
    }

    void clear() {
        System.arraycopy(days.taken, 0, taken, 0, taken.length);
        firstFree = nextFree(0);
    }

    int firstFree() {
        return firstFree;
    }

    boolean isTaken(int index) {
        return (taken[index >> 6] & (1L << (index & 63))) != 0;
    }

    /** The first free index at or after one; past the last present one when there is none. */
    int nextFree(int from) {
        int word = from >> 6;
        if (word >= taken.length) {
            return from;
        }
        long free = ~taken[word] & (-1L << (from & 63));
        while (free == 0) {
            if (++word == taken.length) {
                return taken.length << 6;
            }
            free = ~taken[word];
        }
        return (word << 6) + Long.numberOfTrailingZeros(free);
    }

    /** The last taken index in a run, or -1. */
    int lastTaken(int from, int length) {
        int last = from + length - 1;
        int word = last >> 6;
        long bits = taken[word] & (-1L >>> (63 - (last & 63)));
        int lowest = from >> 6;
        while (bits == 0 && word > lowest) {
            bits = taken[--word];
        }
        if (bits == 0) {
            return NOWHERE;
        }
        int found = (word << 6) + 63 - Long.numberOfLeadingZeros(bits);
        return found >= from ? found : NOWHERE;
    }

    void book(int from, int length) {
        for (int index = from; index < from + length; index++) {
            taken[index >> 6] |= 1L << (index & 63);
        }
        if (from <= firstFree) {
            firstFree = nextFree(firstFree);
        }
    }
}
