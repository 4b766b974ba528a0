package org.plumbrow.calc.energy;

import org.plumbrow.calc.Range;

/**
 * What the yield needs to know of a kind of module. DC = effective / 1000 (1 + gamma (T - 25)) of its rating, never below
 * 0. Source: Dobos, NREL/TP-6A20-62641, 2014.
 *
 * @param gammaPerK change of power with cell temperature, 1/K, -0.01 to 0; -0.0035 is usual
 * @param incidence what the front lets through
 */
public record ModuleTraits(double gammaPerK, IncidenceModifier incidence) {

    public static final Range GAMMA = new Range(-0.01, 0, "1/K");
    public static final ModuleTraits USUAL = new ModuleTraits(-0.0035, IncidenceModifier.USUAL);

    private static final double RATED_AT_C = 25;
    private static final double RATED_AT_W_PER_M2 = 1000;

    public ModuleTraits {
        GAMMA.check("temperature coefficient of power", gammaPerK);
    }

    /** DC power for each kW of rating. */
    double dcPerKw(double effectiveWPerM2, double cellC) {
        return Math.max(0, effectiveWPerM2 / RATED_AT_W_PER_M2 * (1 + gammaPerK * (cellC - RATED_AT_C)));
    }
}
