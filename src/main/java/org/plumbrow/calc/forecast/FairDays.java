package org.plumbrow.calc.forecast;

import java.util.Arrays;
import org.plumbrow.calc.planning.WeatherAllowance;

/**
 * Which half-days the weather leaves to outdoor work, one sky for the whole branch in each run: a chain of two states whose
 * long-run share of lost half-days is the month's, and which keeps its state to the next half-day more often than chance
 * would (bad weather comes in spells).
 */
final class FairDays {

    /** How much of its state a half-day hands on: correlation of neighbours (common practice, no source). */
    private static final double PERSISTENCE = 0.5;

    private static final long SKY = Draw.key("the sky over the branch");
    private static final double UNIT = 0x1p-53;

    private final double[] lostShare;
    private final int words;
    private final boolean alwaysFair;

    FairDays(WeatherAllowance weather, DayTables time) {
        int size = time.clockOf.length;
        words = (size >> 6) + 1;
        alwaysFair = weather.lostShare().isEmpty();
        lostShare = new double[size];
        for (int slot = 0; slot < size; slot++) {
            lostShare[slot] = 1 - weather.workedShare(time.axis.at(slot).date().getMonth());
        }
    }

    int words() {
        return words;
    }

    boolean isAlwaysFair() {
        return alwaysFair;
    }

    /** Of each run so many words, a bit a slot. */
    void fill(long[] fair, int firstRun, int runs, long seed) {
        if (alwaysFair) {
            return;
        }
        Arrays.fill(fair, 0, runs * words, 0);
        for (int run = 0; run < runs; run++) {
            sky(fair, run * words, Draw.mix(seed ^ SKY ^ ((firstRun + run) >> 1)), (run & 1) == 1);
        }
    }

    private void sky(long[] fair, int from, long stream, boolean opposite) {
        boolean lost = false;
        for (int slot = 0; slot < lostShare.length; slot++) {
            double u = (Draw.mix(stream + slot * 0x9E3779B97F4A7C15L) >>> 11) * UNIT;
            double likely =
                    slot == 0 ? lostShare[slot] : (1 - PERSISTENCE) * lostShare[slot] + (lost ? PERSISTENCE : 0);
            lost = (opposite ? 1 - u : u) < likely;
            if (!lost) {
                fair[from + (slot >> 6)] |= 1L << slot;
            }
        }
    }
}
