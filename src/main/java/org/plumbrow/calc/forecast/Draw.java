package org.plumbrow.calc.forecast;

import java.util.Arrays;
import java.util.function.DoubleUnaryOperator;

/**
 * Whole amounts (half-days of work, days of waiting) as a table over equally likely shares, so that drawing one is one
 * look. Runs come in pairs that take opposite shares (antithetic variates: Hammersley and Morton 1956): what one run
 * finds long, the other finds short.
 */
final class Draw {

    private static final int BITS = 10;
    private static final int SHARES = 1 << BITS;
    private static final long GOLDEN = 0x9E3779B97F4A7C15L;

    private final short[] amounts;
    private final long key;

    /**
     * @param amounts from {@link #amounts}; activities that are alike share them
     * @param key what this amount is drawn by; the same in every plan that has the activity
     */
    Draw(short[] amounts, long key) {
        this.amounts = amounts;
        this.key = key;
    }

    static Draw always(int amount) {
        return new Draw(new short[] {(short) amount}, 0);
    }

    /** @param share of the cases that take at most so many units, rising to 1 */
    static short[] amounts(DoubleUnaryOperator share, int least, int most) {
        short[] amounts = new short[SHARES];
        int from = 0;
        for (int amount = least; from < SHARES; amount++) {
            int to = amount >= most ? SHARES : (int) Math.round(SHARES * share.applyAsDouble(amount + 0.5));
            Arrays.fill(amounts, from, Math.max(from, to), (short) amount);
            from = Math.max(from, to);
        }
        return amounts[0] == amounts[SHARES - 1] ? new short[] {amounts[0]} : amounts;
    }

    /** The amounts of the runs from an even one on. */
    void fill(int[] into, int firstRun, int runs, long seed) {
        if (amounts.length == 1) {
            Arrays.fill(into, 0, runs, amounts[0]);
            return;
        }
        long stream = mix(seed ^ key);
        for (int run = 0; run < runs; run += 2) {
            int at = (int) (mix(stream + (firstRun + run) * GOLDEN) >>> (64 - BITS));
            into[run] = amounts[at];
            into[run + 1] = amounts[SHARES - 1 - at];
        }
    }

    /** Splitmix's finalizer (Steele, Lea, Flood, OOPSLA 2014): every bit of the input moves every bit of the output. */
    static long mix(long number) {
        long z = (number ^ (number >>> 30)) * 0xBF58476D1CE4E5B9L;
        z = (z ^ (z >>> 27)) * 0x94D049BB133111EBL;
        return z ^ (z >>> 31);
    }

    static long key(String id) {
        long key = 0xCBF29CE484222325L;
        for (int i = 0; i < id.length(); i++) {
            key = (key ^ id.charAt(i)) * 0x100000001B3L;
        }
        return mix(key);
    }
}
