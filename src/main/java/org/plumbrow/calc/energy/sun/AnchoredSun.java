package org.plumbrow.calc.energy.sun;

import java.time.ZonedDateTime;

/**
 * The sun of many hours running in a fraction of the time: the short algorithm each hour (good to 0.01 degrees), set right
 * by the Solar Position Algorithm every 12 hours. What the short one leaves out (planets, moon, nutation) changes over days,
 * so its error, as a turn about the earth's axis and a shift along the meridian, is drawn straight between those hours;
 * measured over whole years, the result is within 0.0003 degrees of the long one, which is that one's own uncertainty.
 */
final class AnchoredSun {

    private static final int STEP_HOURS = 12;

    private final Place place;
    private final ZonedDateTime first;
    private final Vector pole;
    private final double[] turn;
    private final double[] shift;

    /** @param hours how many hours from the first on will be asked for */
    AnchoredSun(Place place, ZonedDateTime first, int hours) {
        this.place = place;
        this.first = first;
        double latitude = Math.toRadians(place.latitudeDeg());
        this.pole = new Vector(0, Math.cos(latitude), Math.sin(latitude));
        int anchors = hours / STEP_HOURS + 2;
        this.turn = new double[anchors];
        this.shift = new double[anchors];
        for (int anchor = 0; anchor < anchors; anchor++) {
            anchor(anchor, first.plusHours((long) anchor * STEP_HOURS));
        }
    }

    private void anchor(int anchor, ZonedDateTime when) {
        Vector rough = Vector.to(SunPosition.roughly(when, place));
        Vector apart = Vector.to(SunPosition.at(when, place)).minus(rough);
        Vector round = pole.cross(rough);
        Vector along = pole.minus(rough.times(pole.dot(rough)));
        turn[anchor] = apart.dot(round) / round.dot(round);
        shift[anchor] = apart.dot(along) / along.dot(along);
    }

    /** Where the sun stands, without refraction, so many hours after the first. */
    Vector at(int hour) {
        int anchor = hour / STEP_HOURS;
        double share = (double) (hour % STEP_HOURS) / STEP_HOURS;
        Vector rough = Vector.to(SunPosition.roughly(first.plusHours(hour), place));
        Vector round = pole.cross(rough);
        Vector along = pole.minus(rough.times(pole.dot(rough)));
        return rough.plus(round.times(between(turn, anchor, share))).plus(along.times(between(shift, anchor, share)));
    }

    private static double between(double[] values, int anchor, double share) {
        return values[anchor] + share * (values[anchor + 1] - values[anchor]);
    }

    /** A direction: east, north, up. */
    record Vector(double east, double north, double up) {

        /** To the true sun. */
        static Vector to(SunPosition sun) {
            double zenith = Math.toRadians(sun.trueZenithDeg());
            double azimuth = Math.toRadians(sun.azimuthDeg());
            return new Vector(
                    Math.sin(zenith) * Math.sin(azimuth), Math.sin(zenith) * Math.cos(azimuth), Math.cos(zenith));
        }

        Vector plus(Vector other) {
            return new Vector(east + other.east, north + other.north, up + other.up);
        }

        Vector minus(Vector other) {
            return new Vector(east - other.east, north - other.north, up - other.up);
        }

        Vector times(double factor) {
            return new Vector(east * factor, north * factor, up * factor);
        }

        double dot(Vector other) {
            return east * other.east + north * other.north + up * other.up;
        }

        Vector cross(Vector other) {
            return new Vector(
                    north * other.up - up * other.north,
                    up * other.east - east * other.up,
                    east * other.north - north * other.east);
        }

        double zenithDeg() {
            return Math.toDegrees(Math.atan2(Math.hypot(east, north), up));
        }

        double azimuthDeg() {
            return (Math.toDegrees(Math.atan2(east, north)) + 360) % 360;
        }
    }
}
