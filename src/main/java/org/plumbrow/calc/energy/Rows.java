package org.plumbrow.calc.energy;

import org.plumbrow.calc.Range;

/**
 * Endless equal rows on level ground, one behind the other.
 * <p>Shaded share of the slant height: 1 - cos t / (gcr |cos(t - tilt)|) with t the sun's zenith projected across the
 * rows; with the unit vector to the sun it is 1 - up / (gcr cos(incidence)). Source: Anderson and Jensen, Journal of
 * Renewable and Sustainable Energy 16(2), 2024. Masking angle at the height share x: atan(gcr (1 - x) sin tilt / (1 - gcr
 * (1 - x) cos tilt)); its mean reduces the isotropic light by cos^2(mean / 2). Source: Passias and Kallback, Solar Cells
 * 11, 1984.
 * <p>Linear in the shaded area: a string of cells loses more than its shaded area, so that at close spacing the real loss
 * is larger.
 *
 * @param widthM slant height of one row's modules, m, 0.2 to 30
 * @param pitchM from row to row on the ground, m; at least the width
 */
public record Rows(double widthM, double pitchM) {

    public static final Range WIDTH = new Range(0.2, 30, "m");
    public static final Range PITCH = new Range(0.2, 200, "m");

    private static final int SLICES = 200;

    /** @throws Range.OutOfRange if a length is outside its range, or rows would overlap when flat */
    public Rows {
        WIDTH.check("row width", widthM);
        new Range(Math.max(widthM, PITCH.least()), PITCH.most(), "m").check("row pitch", pitchM);
    }

    /** Rows of width 1 m with this ratio of width to pitch, more than 0.005, at most 1. */
    public static Rows ofCoverage(double gcr) {
        return new Rows(1, 1 / gcr);
    }

    /** Ground coverage ratio: width over pitch. */
    public double coverage() {
        return widthM / pitchM;
    }

    /**
     * @param sunUp cosine of the sun's zenith
     * @param cosineOfIncidence on the row's plane
     * @return 0 to 1; 0 where the sun is behind the plane or has set
     */
    double shadedShare(double sunUp, double cosineOfIncidence) {
        if (cosineOfIncidence <= 0 || sunUp <= 0) {
            return 0;
        }
        return Math.max(0, 1 - sunUp / (coverage() * cosineOfIncidence));
    }

    /** Angle by which the row in front hides the sky, at a height of the slant, degrees. */
    double maskingDeg(double tiltDeg, double heightShare) {
        double ahead = coverage() * (1 - heightShare);
        double tilt = Math.toRadians(tiltDeg);
        return Math.toDegrees(Math.atan2(ahead * Math.sin(tilt), 1 - ahead * Math.cos(tilt)));
    }

    /** Mean over the height, by Simpson's rule, degrees. */
    double meanMaskingDeg(double tiltDeg) {
        double sum = maskingDeg(tiltDeg, 0) + maskingDeg(tiltDeg, 1);
        for (int slice = 1; slice < SLICES; slice++) {
            sum += (slice % 2 == 0 ? 2 : 4) * maskingDeg(tiltDeg, (double) slice / SLICES);
        }
        return sum / (3 * SLICES);
    }

    /** Share of the isotropic light that is left, 0 to 1. */
    double isotropicKept(double tiltDeg) {
        double half = Math.cos(Math.toRadians(meanMaskingDeg(tiltDeg)) / 2);
        return half * half;
    }
}
