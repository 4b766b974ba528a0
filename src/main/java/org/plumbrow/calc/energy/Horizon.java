package org.plumbrow.calc.energy;

import java.util.Comparator;
import java.util.List;
import org.plumbrow.calc.Range;

/**
 * What stands around a place, as read on the survey: elevation by azimuth, straight between readings and across north.
 * While the sun is lower than the profile, beam and circumsolar light are gone; light from the rest of the sky is left as
 * it is.
 *
 * @param readings one or more, in any order; of two at one azimuth the higher counts
 */
public record Horizon(List<Reading> readings) {

    private static final double ROUND = 360;

    public Horizon {
        if (readings.isEmpty()) {
            throw new IllegalArgumentException("a horizon needs a reading");
        }
        readings = readings.stream()
                .sorted(Comparator.comparingDouble(Reading::azimuthDeg).thenComparingDouble(Reading::elevationDeg))
                .toList();
    }

    /**
     * @param azimuthDeg clockwise from north, 0 to 360 (360 is north again)
     * @param elevationDeg of the highest thing there, 0 to 90
     */
    public record Reading(double azimuthDeg, double elevationDeg) {
        public static final Range AZIMUTH = new Range(0, 360, "degrees");
        public static final Range ELEVATION = new Range(0, 90, "degrees");

        /** @throws Range.OutOfRange if an angle is outside its range or not a number */
        public Reading {
            AZIMUTH.check("azimuth", azimuthDeg);
            ELEVATION.check("elevation", elevationDeg);
        }
    }

    /** @param azimuthDeg any angle, counted round the circle */
    public double elevationDeg(double azimuthDeg) {
        double azimuth = ((azimuthDeg % ROUND) + ROUND) % ROUND;
        int next = 0;
        while (next < readings.size() && readings.get(next).azimuthDeg <= azimuth) {
            next++;
        }
        int last = readings.size() - 1;
        Reading before = readings.get(next == 0 ? last : next - 1);
        Reading after = readings.get(next > last ? 0 : next);
        double from = before.azimuthDeg - (next == 0 ? ROUND : 0);
        double to = after.azimuthDeg + (next > last ? ROUND : 0);
        double share = to > from ? (azimuth - from) / (to - from) : 0;
        return before.elevationDeg + share * (after.elevationDeg - before.elevationDeg);
    }
}
