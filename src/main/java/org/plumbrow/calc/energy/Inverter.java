package org.plumbrow.calc.energy;

import org.plumbrow.calc.Range;

/**
 * DC to AC with clipping. With P0 = AC rating / nominal efficiency and z = DC / P0: AC = nominal / 0.9637 (-0.0162 z -
 * 0.0059 / z + 0.9858) DC, at most the rating, not below 0; nothing is drawn at night. Source: Dobos,
 * NREL/TP-6A20-62641, 2014.
 *
 * @param acKw AC rating, kW, 0.1 to 10000
 * @param efficiency nominal, 0.8 to 1; 0.96 is usual
 */
public record Inverter(double acKw, double efficiency) {

    public static final Range AC_KW = new Range(0.1, 10_000, "kW");
    public static final Range EFFICIENCY = new Range(0.8, 1, "");
    public static final double USUAL_EFFICIENCY = 0.96;

    private static final double REFERENCE = 0.9637;

    /** @throws Range.OutOfRange if a value is outside its range or not a number */
    public Inverter {
        AC_KW.check("inverter rating", acKw);
        EFFICIENCY.check("inverter efficiency", efficiency);
    }

    /** What it would give without its limit, kW, not below 0. */
    double unclippedKw(double dcKw) {
        double z = dcKw * efficiency / acKw;
        return Math.max(0, acKw / REFERENCE * (z * (0.9858 - 0.0162 * z) - 0.0059));
    }

    /** AC power for a DC power, kW. */
    public double acKw(double dcKw) {
        return dcKw <= 0 ? 0 : Math.min(acKw, unclippedKw(dcKw));
    }
}
