package org.plumbrow.calc.energy;

/**
 * The light of one hour on a plane, W/m2.
 *
 * @param incidenceDeg angle between the sun and the plane's normal, degrees
 */
public record PlaneLight(
        double incidenceDeg, double beam, double circumsolar, double isotropic, double horizon, double ground) {

    /** Never negative, as a dark horizon band of the Perez sky could make it. */
    public double total() {
        return beam + Math.max(0, circumsolar + isotropic + horizon) + ground;
    }
}
