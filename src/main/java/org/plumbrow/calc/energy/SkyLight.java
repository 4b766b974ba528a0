package org.plumbrow.calc.energy;

/**
 * The light of one hour before it meets a plane, W/m2.
 *
 * @param beam on a plane that faces the sun
 * @param circumsolar diffuse from around the sun, to be taken times the cosine of incidence
 * @param isotropic diffuse from the whole sky, on the horizontal
 * @param horizon diffuse from the horizon band, to be taken times the sine of the tilt; may be negative
 */
public record SkyLight(double beam, double circumsolar, double isotropic, double horizon) {

    /** The parts of the light that reach an unobstructed plane. */
    public PlaneLight on(Plane plane, double cosineOfIncidence, double groundWPerM2) {
        double cosine = Math.max(0, cosineOfIncidence);
        return new PlaneLight(
                Math.toDegrees(Math.acos(Math.max(-1, Math.min(1, cosineOfIncidence)))),
                beam * cosine,
                circumsolar * cosine,
                isotropic * plane.skyView(),
                horizon * plane.sine(),
                groundWPerM2 * plane.groundView());
    }
}
