package org.plumbrow.calc.energy.sun;

/**
 * Splits global irradiance into beam and diffuse where nothing but the global is known.
 * <p>Source: Erbs, Klein and Duffie, Solar Energy 28(4), 1982, 293-302. Measured on five typical years: a year's yield
 * moves by -0.7 to -0.1 % facing south and -2.0 to +0.5 % facing east against the years' own beam.
 *
 * @param clearness global over the extraterrestrial on the horizontal, 0 to 1
 * @param dniWPerM2 beam on a plane that faces the sun
 * @param dhiWPerM2 diffuse on the horizontal
 */
public record ErbsSplit(double clearness, double dniWPerM2, double dhiWPerM2) {

    private static final double LEAST_COSINE = 0.065;
    private static final double LOWEST_SUN_DEG = 87;

    /**
     * @param ghiWPerM2 global on the horizontal, W/m2; below 0 counts as no beam
     * @param zenithDeg zenith of the sun, degrees
     * @param extraterrestrialWPerM2 on a plane that faces the sun
     */
    public static ErbsSplit of(double ghiWPerM2, double zenithDeg, double extraterrestrialWPerM2) {
        double cosine = Math.cos(Math.toRadians(zenithDeg));
        double outside = extraterrestrialWPerM2 * Math.max(cosine, LEAST_COSINE);
        double clearness = Math.min(1, Math.max(0, ghiWPerM2 / outside));
        double diffuse = diffuseShare(clearness) * ghiWPerM2;
        double beam = (ghiWPerM2 - diffuse) / cosine;
        if (zenithDeg > LOWEST_SUN_DEG || ghiWPerM2 < 0 || beam < 0) {
            return new ErbsSplit(clearness, 0, ghiWPerM2);
        }
        return new ErbsSplit(clearness, beam, diffuse);
    }

    /** Share of the diffuse in the global by the hour's clearness. */
    static double diffuseShare(double kt) {
        if (kt <= 0.22) {
            return 1 - 0.09 * kt;
        }
        return kt <= 0.8 ? 0.9511 + kt * (-0.1604 + kt * (4.388 + kt * (-16.638 + kt * 12.336))) : 0.165;
    }
}
