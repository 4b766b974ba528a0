package org.plumbrow.branch;

/**
 * How long crews drive: great circle between two places × road factor ÷ speed. No map is asked.
 *
 * @param speedMph average on the road, 5 to 80
 * @param roadFactor how much longer the road is than the straight line, 1 to 3
 */
public record Travel(double speedMph, double roadFactor) {

    /** What a new branch starts with. */
    public static final Travel USUAL = new Travel(45, 1.3);

    private static final double EARTH_RADIUS_MILES = 3958.8;

    /** Minutes from one place to the other, one way. Angles in degrees; haversine on a sphere of 3,958.8 miles. */
    public double minutesBetween(double fromLatitude, double fromLongitude, double toLatitude, double toLongitude) {
        double halfLatitude = Math.toRadians(toLatitude - fromLatitude) / 2;
        double halfLongitude = Math.toRadians(toLongitude - fromLongitude) / 2;
        double chord = Math.pow(Math.sin(halfLatitude), 2)
                + Math.cos(Math.toRadians(fromLatitude))
                        * Math.cos(Math.toRadians(toLatitude))
                        * Math.pow(Math.sin(halfLongitude), 2);
        double miles = 2 * EARTH_RADIUS_MILES * Math.asin(Math.min(1, Math.sqrt(chord)));
        return miles * roadFactor / speedMph * 60;
    }
}
