package org.plumbrow.calc.energy;

/**
 * How diffuse light is spread over the sky. Each gives three parts that hold for any plane: circumsolar (goes with the
 * cosine of incidence), isotropic (with the share of sky seen) and horizon band (with the sine of the tilt).
 */
public enum SkyModel {
    /** The same from everywhere; reads 1.3 to 2.2 % low over a year. Source: Liu and Jordan, Solar Energy 7(2), 1963. */
    ISOTROPIC("isotropic") {
        @Override
        SkyLight diffuse(Hour hour) {
            return new SkyLight(0, 0, hour.dhi, 0);
        }
    },
    /**
     * Default. The share DNI / I0 of the diffuse comes from around the sun. Source: Hay and Davies, First Canadian Solar
     * Radiation Data Workshop, 1980; cos Z in the ratio not below 0.01745.
     */
    HAY_DAVIES("Hay and Davies") {
        @Override
        SkyLight diffuse(Hour hour) {
            double around = hour.beam / hour.outside;
            double circumsolar = hour.dhi * around / Math.max(hour.up, LEAST_COSINE);
            return new SkyLight(0, circumsolar, hour.dhi * (1 - around), 0);
        }
    },
    /**
     * Circumsolar and horizon band by clearness and brightness of the sky. Source: Perez, Ineichen, Seals, Michalsky and
     * Stewart, Solar Energy 44(5), 1990, all sites; air mass by Kasten and Young (1989).
     */
    PEREZ("Perez") {
        @Override
        SkyLight diffuse(Hour hour) {
            return PerezSky.diffuse(hour);
        }
    };

    static final double LEAST_COSINE = 0.01745;

    private final String words;

    SkyModel(String words) {
        this.words = words;
    }

    public String words() {
        return words;
    }

    abstract SkyLight diffuse(Hour hour);

    /**
     * What comes from the sky in one hour.
     *
     * @param dni beam on a plane that faces the sun, W/m2; counts as 0 once the sun's middle has set
     * @param dhi diffuse on the horizontal, W/m2
     * @param outside extraterrestrial on a plane that faces the sun, W/m2
     * @param up cosine of the apparent zenith
     */
    public SkyLight light(double dni, double dhi, double outside, double up) {
        double beam = up > 0 ? dni : 0;
        SkyLight light = diffuse(new Hour(beam, dhi, outside, up));
        return new SkyLight(beam, light.circumsolar(), light.isotropic(), light.horizon());
    }

    /** The same figures as {@link #light} takes, beam already cut at the horizon. */
    record Hour(double beam, double dhi, double outside, double up) {}
}
