package org.plumbrow.calc.energy.sun;

import org.plumbrow.calc.Range;

/**
 * A point on the earth with its clock.
 *
 * @param latitudeDeg degrees, north positive, -90 to 90
 * @param longitudeDeg degrees, east positive, -180 to 180
 * @param elevationM metres above sea level, -450 to 6000
 * @param utcOffsetHours local standard time less UTC, hours, -12 to 14, halves and quarters allowed
 */
public record Place(double latitudeDeg, double longitudeDeg, double elevationM, double utcOffsetHours) {

    public static final Range LATITUDE = new Range(-90, 90, "degrees");
    public static final Range LONGITUDE = new Range(-180, 180, "degrees");
    public static final Range ELEVATION = new Range(-450, 6000, "m");
    public static final Range UTC_OFFSET = new Range(-12, 14, "h");

    private static final double EARTH_RADIUS_KM = 6371.0;

    /** @throws Range.OutOfRange if a value is outside its range or not a number */
    public Place {
        LATITUDE.check("latitude", latitudeDeg);
        LONGITUDE.check("longitude", longitudeDeg);
        ELEVATION.check("elevation", elevationM);
        UTC_OFFSET.check("hours from UTC", utcOffsetHours);
    }

    /**
     * Mean air pressure at this height, Pa: p = 100 ((44331.514 - z) / 11880.516)^(1 / 0.1902632).
     * Source: the standard atmosphere in the form used by open sun position libraries; refraction only.
     */
    public double pressurePa() {
        return 100 * Math.pow((44331.514 - elevationM) / 11880.516, 1 / 0.1902632);
    }

    /** Great circle over a sphere of 6,371 km, km. */
    public double distanceKmTo(Place other) {
        double halfLatitude = Math.toRadians(other.latitudeDeg - latitudeDeg) / 2;
        double halfLongitude = Math.toRadians(other.longitudeDeg - longitudeDeg) / 2;
        double chord = square(Math.sin(halfLatitude))
                + Math.cos(Math.toRadians(latitudeDeg))
                        * Math.cos(Math.toRadians(other.latitudeDeg))
                        * square(Math.sin(halfLongitude));
        return 2 * EARTH_RADIUS_KM * Math.asin(Math.min(1, Math.sqrt(chord)));
    }

    private static double square(double value) {
        return value * value;
    }
}
