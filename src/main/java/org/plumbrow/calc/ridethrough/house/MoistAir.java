package org.plumbrow.calc.ridethrough.house;

/** Water in air at sea-level pressure, and how cattle feel it. */
public final class MoistAir {

    private static final double PRESSURE_KPA = 101.325;
    private static final double KELVIN = 273.15;
    private static final double VAPOUR_TO_AIR = 0.62195;

    private MoistAir() {}

    /**
     * Saturation pressure of water vapour, kPa, over ice below 0 degC, over water from there on.
     * Source: Hyland and Wexler (1983) as in the ASHRAE Handbook of Fundamentals, coefficients from memory; -60 to 100 degC.
     */
    public static double saturationKpa(double airC) {
        double t = airC + KELVIN;
        double log = airC < 0
                ? -5.6745359e3 / t
                        + 6.3925247
                        + t * (-9.6778430e-3 + t * (6.2215701e-7 + t * (2.0747825e-9 - t * 9.4840240e-13)))
                        + 4.1635019 * Math.log(t)
                : -5.8002206e3 / t
                        + 1.3914993
                        + t * (-4.8640239e-2 + t * (4.1764768e-5 - t * 1.4452093e-8))
                        + 6.5459673 * Math.log(t);
        return Math.exp(log) / 1000;
    }

    /** Water per dry air, kg/kg: 0.62195 e / (101.325 - e). */
    public static double humidityRatio(double airC, double relativeHumidityPercent) {
        double vapour = relativeHumidityPercent / 100 * saturationKpa(airC);
        return VAPOUR_TO_AIR * vapour / (PRESSURE_KPA - vapour);
    }

    /** Relative humidity, %, of air with so much water; at most 100: the rest runs down the walls. */
    public static double relativeHumidityPercent(double airC, double humidityRatio) {
        double vapour = PRESSURE_KPA * humidityRatio / (VAPOUR_TO_AIR + humidityRatio);
        return Math.min(100, 100 * vapour / saturationKpa(airC));
    }

    /**
     * Temperature-humidity index of cattle: 0.8 T + RH (T - 14.4) + 46.4, RH from 0 to 1. Source: farm guidance on THI; it
     * is the form of NRC 1971, {@code (1.8 T + 32) - (0.55 - 0.0055 RH)(1.8 T - 26)}, to 0.2.
     */
    public static double thi(double airC, double relativeHumidityPercent) {
        return 0.8 * airC + relativeHumidityPercent / 100 * (airC - 14.4) + 46.4;
    }
}
