package org.plumbrow.calc.energy.sun;

/**
 * Irradiance of the sun outside the air, on a plane that faces it.
 * <p>I0 = 1366.1 (1.00011 + 0.034221 cos B + 0.00128 sin B + 0.000719 cos 2B + 0.000077 sin 2B), B = 2 pi (day - 1) /
 * 365. Source: Spencer, Search 2(5), 1971; solar constant 1366.1 W/m2.
 */
public final class Extraterrestrial {

    public static final double SOLAR_CONSTANT_W_PER_M2 = 1366.1;

    private Extraterrestrial() {}

    /** @param dayOfYear 1 to 366 */
    public static double normalWPerM2(int dayOfYear) {
        double angle = 2 * Math.PI * (dayOfYear - 1) / 365;
        return SOLAR_CONSTANT_W_PER_M2
                * (1.00011
                        + 0.034221 * Math.cos(angle)
                        + 0.00128 * Math.sin(angle)
                        + 0.000719 * Math.cos(2 * angle)
                        + 0.000077 * Math.sin(2 * angle));
    }
}
