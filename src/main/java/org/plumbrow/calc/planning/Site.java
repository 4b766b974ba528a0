package org.plumbrow.calc.planning;

/**
 * Where a project's work is done, in degrees.
 *
 * @param latitude -90 to 90, north positive
 * @param longitude -180 to 180, east positive
 */
public record Site(double latitude, double longitude) {

    private static final double EARTH_RADIUS_KM = 6371.0;

    /** Roads are longer than the straight line; common practice, no source. */
    private static final double DETOUR = 1.3;

    /** Of a loaded truck over land; common practice, no source. */
    private static final double KM_AN_HOUR = 60;

    public Site {
        if (!(Math.abs(latitude) <= 90 && Math.abs(longitude) <= 180)) {
            throw new IllegalArgumentException("no place at " + latitude + ", " + longitude);
        }
    }

    /** By road, in kilometres: the great circle (haversine) times a detour of 1.3. */
    public double roadKmTo(Site other) {
        double here = Math.toRadians(latitude);
        double there = Math.toRadians(other.latitude);
        double north = Math.sin((there - here) / 2);
        double east = Math.sin(Math.toRadians(other.longitude - longitude) / 2);
        double chord = north * north + Math.cos(here) * Math.cos(there) * east * east;
        return DETOUR * 2 * EARTH_RADIUS_KM * Math.asin(Math.min(1, Math.sqrt(chord)));
    }

    public int minutesTo(Site other) {
        return (int) Math.round(roadKmTo(other) / KM_AN_HOUR * 60);
    }
}
