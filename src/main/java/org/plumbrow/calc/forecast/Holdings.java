package org.plumbrow.calc.forecast;

import java.util.Arrays;

/** Which slots of each crew and piece of equipment are held, run by run: a bit a slot. */
final class Holdings {

    /** Nothing stands in the way. */
    static final int FREE = -1;

    private final int units;
    private final int words;
    private final int slots;
    /** Of each unit what is held in every run. */
    private final long[] always;
    /** Of each run and unit. */
    private final long[] held;

    Holdings(int units, int slots, int runs) {
        this.units = units;
        this.slots = slots;
        this.words = (slots >> 6) + 1;
        always = new long[units * words];
        held = new long[runs * units * words];
    }

    void clear() {
        for (int from = 0; from < held.length; from += always.length) {
            System.arraycopy(always, 0, held, from, always.length);
        }
    }

    /** Of the pieces that are free in all of it; of others where not so many are. */
    void holdAlways(Claim claim, int from, int to) {
        int left = claim.count();
        for (int unit = 0; unit < claim.units() && left > 0; unit++) {
            int row = (claim.firstUnit() + unit) * words;
            if (firstHeld(always, row, from, to) > to || claim.units() - unit <= left) {
                set(always, row, from, to);
                left--;
            }
        }
    }

    /** The slot from which to try again, {@link #FREE} where everything claimed is free from the first to the last. */
    int clash(Claim[] claims, int run, int from, int to) {
        for (Claim claim : claims) {
            int again = clash(claim, run, from, to);
            if (again != FREE) {
                return again;
            }
        }
        return FREE;
    }

    private int clash(Claim claim, int run, int from, int to) {
        int free = 0;
        int again = slots;
        for (int unit = 0; unit < claim.units() && free < claim.count(); unit++) {
            int row = (run * units + claim.firstUnit() + unit) * words;
            int first = firstHeld(held, row, from, to);
            if (first > to) {
                free++;
            } else {
                again = Math.min(again, firstFree(row, first));
            }
        }
        return free >= claim.count() ? FREE : again;
    }

    void hold(Claim[] claims, int run, int from, int to) {
        for (Claim claim : claims) {
            int left = claim.count();
            for (int unit = 0; unit < claim.units() && left > 0; unit++) {
                int row = (run * units + claim.firstUnit() + unit) * words;
                if (firstHeld(held, row, from, to) > to) {
                    set(held, row, from, to);
                    left--;
                }
            }
        }
    }

    /** The first slot from one on that is held; behind {@code to} where none is until then. */
    private static int firstHeld(long[] bits, int row, int from, int to) {
        long open = bits[row + (from >> 6)] & (-1L << from);
        for (int word = from >> 6; ; open = bits[row + ++word]) {
            if (open != 0) {
                return (word << 6) + Long.numberOfTrailingZeros(open);
            }
            if (word >= to >> 6) {
                return to + 1;
            }
        }
    }

    private int firstFree(int row, int from) {
        long open = ~held[row + (from >> 6)] & (-1L << from);
        for (int word = from >> 6; ; open = ~held[row + ++word]) {
            if (open != 0) {
                return (word << 6) + Long.numberOfTrailingZeros(open);
            }
            if (word == words - 1) {
                return slots;
            }
        }
    }

    private static void set(long[] bits, int row, int from, int to) {
        int first = from >> 6;
        int last = to >> 6;
        long head = -1L << from;
        long tail = -1L >>> (63 - (to & 63));
        if (first == last) {
            bits[row + first] |= head & tail;
            return;
        }
        bits[row + first] |= head;
        Arrays.fill(bits, row + first + 1, row + last, -1L);
        bits[row + last] |= tail;
    }
}
