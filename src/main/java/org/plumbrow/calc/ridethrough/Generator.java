package org.plumbrow.calc.ridethrough;

import java.util.OptionalInt;
import org.plumbrow.calc.Range;

/**
 * A generator as it stands there on the day.
 *
 * @param ratedKw on its plate, 1 to 5,000
 * @param transfer how it reaches the wiring
 * @param heightM of the site above the sea, m; negative counts as 0
 * @param airC at its intake
 * @param fuelGal in the tank, US gallons, 0 to 10,000
 * @param galPerKwh 0.02 to 0.5; diesel at full load about 0.07 to 0.08 (common practice)
 * @param daysSinceRun days between its last run under the farm's real load and the day of the outage; empty: never shown
 * @param rotation do its phases turn as the utility's do? Not asked of a single-phase service
 * @param changeOverS seconds from losing the utility to carrying the load, 0 to 3,600
 */
public record Generator(
        double ratedKw,
        Transfer transfer,
        double heightM,
        double airC,
        double fuelGal,
        double galPerKwh,
        OptionalInt daysSinceRun,
        Rotation rotation,
        double changeOverS) {

    public static final Range RATED = new Range(1, 5000, "kW");
    public static final Range FUEL = new Range(0, 10_000, "gal");
    public static final Range USE = new Range(0.02, 0.5, "gal/kWh");
    public static final Range CHANGE_OVER = new Range(0, 3600, "s");
    /** Tractor drive shafts: 2 hp for each kW (common practice). */
    public static final double HP_PER_KW = 2;

    /** An engine loses about 3.5 % for every 300 m above 300 m and 1 % for every 5.5 K above 25 degC (common practice). */
    private static final double LOSS_PER_M = 0.035 / 300;

    private static final double LOSS_FROM_M = 300;
    private static final double LOSS_PER_K = 0.01 / 5.5;
    private static final double LOSS_FROM_C = 25;

    /** How a generator reaches the wiring. */
    public enum Transfer {
        /** Starts by itself: a source to lock before anybody tests for absence of voltage. */
        AUTOMATIC,
        DOUBLE_THROW,
        /** A cord, a loose breaker: never. */
        NONE
    }

    /** Which way its phases turn against the utility's. */
    public enum Rotation {
        SAME,
        OPPOSITE,
        NOT_CHECKED,
        SINGLE_PHASE
    }

    public Generator {
        RATED.check("rated power", ratedKw);
        FUEL.check("fuel", fuelGal);
        USE.check("fuel per kWh", galPerKwh);
        CHANGE_OVER.check("change-over", changeOverS);
    }

    /** Rated power of a generator on a tractor's drive shaft, kW. */
    public static double ratedKwOfTractor(double shaftHp) {
        return shaftHp / HP_PER_KW;
    }

    /** What is left of the plate at this height and heat, kW; the maker's own sheet goes before it. */
    public double usableKw() {
        double height = Math.max(0, heightM - LOSS_FROM_M) * LOSS_PER_M;
        double heat = Math.max(0, airC - LOSS_FROM_C) * LOSS_PER_K;
        return ratedKw * Math.max(0, 1 - height) * Math.max(0, 1 - heat);
    }
}
