package org.plumbrow.calc.energy;

/**
 * F1 = max(0, F11 + F12 D + F13 z), F2 = F21 + F22 D + F23 z with z the zenith in radians, brightness D = DHI m / I0 and
 * clearness e = ((DHI + DNI) / DHI + 1.041 z^3) / (1 + 1.041 z^3).
 */
final class PerezSky {

    private static final double KAPPA = 1.041;
    private static final double COSINE_OF_85 = Math.cos(Math.toRadians(85));

    private PerezSky() {}

    static SkyLight diffuse(SkyModel.Hour hour) {
        if (hour.dhi() <= 0) {
            return new SkyLight(0, 0, 0, 0);
        }
        double zenith = Math.acos(Math.max(-1, Math.min(1, hour.up())));
        double cubed = KAPPA * zenith * zenith * zenith;
        double clearness = ((hour.dhi() + hour.beam()) / hour.dhi() + cubed) / (1 + cubed);
        double brightness = hour.dhi() * airMass(zenith) / hour.outside();
        double[] f = PerezTable.COEFFICIENTS[classOf(clearness)];
        double around = Math.max(0, f[0] + f[1] * brightness + f[2] * zenith);
        double band = f[3] + f[4] * brightness + f[5] * zenith;
        return new SkyLight(
                0,
                hour.dhi() * around / Math.max(COSINE_OF_85, hour.up()),
                hour.dhi() * (1 - around),
                hour.dhi() * band);
    }

    private static int classOf(double clearness) {
        int at = 0;
        while (at < PerezTable.CLEARNESS.length && clearness >= PerezTable.CLEARNESS[at]) {
            at++;
        }
        return at;
    }

    /** 1 / (cos z + 0.50572 (96.07995 - z)^-1.6364), z in degrees, below the horizon as at it. */
    private static double airMass(double zenith) {
        double degrees = Math.min(90, Math.toDegrees(zenith));
        return 1 / (Math.cos(Math.toRadians(degrees)) + 0.50572 * Math.pow(96.07995 - degrees, -1.6364));
    }
}
