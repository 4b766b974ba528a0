package org.plumbrow.calc.planning.search;

/** Counted chance (splitmix: Steele, Lea, Flood, OOPSLA 2014): the same seed always draws the same. */
public final class Chance {

    private static final long GOLDEN = 0x9E3779B97F4A7C15L;

    private long state;

    public Chance(long seed) {
        state = seed;
    }

    private long next() {
        state += GOLDEN;
        long z = (state ^ (state >>> 30)) * 0xBF58476D1CE4E5B9L;
        z = (z ^ (z >>> 27)) * 0x94D049BB133111EBL;
        return z ^ (z >>> 31);
    }

    /** 0 to one less than the bound. */
    public int below(int bound) {
        return (int) (((next() >>> 32) * bound) >>> 32);
    }

    /** 0 included to 1 excluded. */
    public double share() {
        return (next() >>> 11) * 0x1.0p-53;
    }
}
