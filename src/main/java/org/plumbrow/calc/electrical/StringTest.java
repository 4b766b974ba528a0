package org.plumbrow.calc.electrical;

import java.util.Arrays;

/**
 * What a string should read in the sun and heat of the hour. Formulas as in IEC 60891 (from memory): voltage with the
 * diode's logarithm of irradiance, current and power in proportion to it, each with its temperature coefficient.
 */
public final class StringTest {

    /** Below this strings are only compared with one another (common practice), W/m². */
    public static final double LEAST_IRRADIANCE_WM2 = 400;

    public static final double MOST_VOLTAGE_DEVIATION_PERCENT = 5;
    public static final double MOST_CURRENT_DEVIATION_PERCENT = 5;
    public static final double MOST_POWER_DEVIATION_PERCENT = 5;

    private static final double STC_C = 25;
    private static final double STC_WM2 = 1000;
    private static final double BOLTZMANN_OVER_CHARGE = 8.617333e-5;
    private static final double KELVIN = 273.15;
    private static final double IDEALITY = 1.1;

    private StringTest() {}

    /** How the voltage follows the sun. */
    public enum SunTerm {
        NONE,
        /** Cells × ideality × kT/q × ln(G/1000), ideality 1.1. */
        DIODE,
        /** Voc × 0.06 × ln(G/1000). */
        SIX_PERCENT
    }

    /** Cell temperature: air + (NOCT − 20) / 800 × irradiance. */
    public static double cellC(double airC, double noctC, double irradianceWm2) {
        return airC + (noctC - 20) / 800 * irradianceWm2;
    }

    /**
     * Open-circuit voltage of modules in series.
     *
     * @param vocPercentPerK below 0
     */
    public static double openCircuitV(
            int modules,
            double vocV,
            double vocPercentPerK,
            int cellsInSeries,
            double cellC,
            double irradianceWm2,
            SunTerm term) {
        double sun = Math.log(irradianceWm2 / STC_WM2);
        double heat = 1 + vocPercentPerK / 100 * (cellC - STC_C);
        return switch (term) {
            case NONE -> modules * vocV * heat;
            case DIODE ->
                modules * (vocV * heat + cellsInSeries * IDEALITY * BOLTZMANN_OVER_CHARGE * (cellC + KELVIN) * sun);
            case SIX_PERCENT -> modules * vocV * (heat + 0.06 * sun);
        };
    }

    /** @param iscPercentPerK above 0 */
    public static double shortCircuitA(double iscA, double iscPercentPerK, double cellC, double irradianceWm2) {
        return iscA * irradianceWm2 / STC_WM2 * (1 + iscPercentPerK / 100 * (cellC - STC_C));
    }

    /** AC power. @param dcLosses share lost before the inverter. @param mostKwAc the inverters' own limit */
    public static double powerKwAc(
            double kwDc,
            double pmaxPercentPerK,
            double cellC,
            double irradianceWm2,
            double dcLosses,
            double inverterEfficiency,
            double mostKwAc) {
        double dc = kwDc * irradianceWm2 / STC_WM2 * (1 + pmaxPercentPerK / 100 * (cellC - STC_C));
        return Math.min(mostKwAc, dc * (1 - dcLosses) * inverterEfficiency);
    }

    public static double differencePercent(double measured, double expected) {
        return 100 * (measured - expected) / expected;
    }

    /** Of strings that should be alike, each one's difference from the median, percent. */
    public static double[] differencesFromMedian(double... measured) {
        double[] sorted = measured.clone();
        Arrays.sort(sorted);
        int middle = sorted.length / 2;
        double median = sorted.length % 2 == 1 ? sorted[middle] : (sorted[middle - 1] + sorted[middle]) / 2;
        return Arrays.stream(measured)
                .map(one -> differencePercent(one, median))
                .toArray();
    }
}
