package org.plumbrow.calc.energy.weather;

import org.plumbrow.calc.energy.sun.SunTrack;

/**
 * How a day's radiation falls on its hours.
 * <p>Global: r = (a + b cos w) times the sun's own share, a = 0.409 + 0.5016 sin(ws - 60 deg), b = 0.6609 - 0.4767
 * sin(ws - 60 deg) (Collares-Pereira and Rabl, Solar Energy 22(2), 1979). Diffuse: the sun's own share (Liu and Jordan,
 * 1960). w is the hour angle, ws that of sunset.
 */
final class SunOfDay {

    private static final double SIXTY_DEG = Math.PI / 3;

    private final double[] outside = new double[24];
    private final double[] globalShare = new double[24];
    private final double[] diffuseShare = new double[24];
    private final double outsideKwhPerM2;
    private final double sunset;

    /** @param day of the year, from 0 */
    SunOfDay(SunTrack sun, int day) {
        double latitude = Math.toRadians(sun.place().latitudeDeg());
        double declination = declination(sun, day, latitude);
        this.sunset = Math.acos(clamp(-Math.tan(latitude) * Math.tan(declination)));
        double a = 0.409 + 0.5016 * Math.sin(sunset - SIXTY_DEG);
        double b = 0.6609 - 0.4767 * Math.sin(sunset - SIXTY_DEG);
        for (int at = 0; at < 24; at++) {
            int hour = day * 24 + at;
            double up = Math.max(0, sun.up(hour));
            outside[at] = sun.extraterrestrialWPerM2(hour) * up;
            double cosineOfHour =
                    (sun.up(hour) * Math.cos(latitude) - sun.north(hour) * Math.sin(latitude)) / Math.cos(declination);
            globalShare[at] = Math.max(0, a + b * cosineOfHour) * outside[at];
            diffuseShare[at] = outside[at];
        }
        this.outsideKwhPerM2 = java.util.Arrays.stream(outside).sum() / 1000;
        normalise(globalShare);
        normalise(diffuseShare);
    }

    private static double declination(SunTrack sun, int day, double latitude) {
        int noon = day * 24 + 12;
        return Math.asin(clamp(sun.up(noon) * Math.sin(latitude) + sun.north(noon) * Math.cos(latitude)));
    }

    private static double clamp(double cosine) {
        return Math.max(-1, Math.min(1, cosine));
    }

    private static void normalise(double[] shares) {
        double sum = java.util.Arrays.stream(shares).sum();
        for (int at = 0; at < shares.length && sum > 0; at++) {
            shares[at] /= sum;
        }
    }

    /** What the sun sends on the horizontal outside the air in this day, kWh/m2. */
    double outsideKwhPerM2() {
        return outsideKwhPerM2;
    }

    /** Share of the day's global in this hour; the day's sum is 1, 0 in the polar night. */
    double globalShare(int hourOfDay) {
        return globalShare[hourOfDay];
    }

    double diffuseShare(int hourOfDay) {
        return diffuseShare[hourOfDay];
    }

    /** Outside the air on the horizontal in this hour, W/m2. */
    double outsideWPerM2(int hourOfDay) {
        return outside[hourOfDay];
    }

    /**
     * Share of the diffuse in a day's global by its clearness. Source: Erbs, Klein and Duffie, Solar Energy 28(4), 1982.
     */
    double diffuseOfDay(double kt) {
        if (sunset <= Math.toRadians(81.4)) {
            return kt < 0.715 ? 1 - kt * (0.2727 - kt * (2.4495 - kt * (11.9514 - kt * 9.3879))) : 0.143;
        }
        return kt < 0.722 ? 1 + kt * (0.2832 - kt * (2.5557 - kt * 0.8448)) : 0.175;
    }
}
