package org.plumbrow.calc.energy;

import org.plumbrow.calc.Range;

/**
 * Which way modules face.
 *
 * @param tiltDeg from the horizontal, 0 (flat) to 90 (upright)
 * @param azimuthDeg of the direction they face, clockwise from north, 0 to 360; 180 is south
 */
public record Plane(double tiltDeg, double azimuthDeg) {

    public static final Range TILT = new Range(0, 90, "degrees");
    public static final Range AZIMUTH = new Range(0, 360, "degrees");

    /** @throws Range.OutOfRange if an angle is outside its range or not a number */
    public Plane {
        TILT.check("tilt", tiltDeg);
        AZIMUTH.check("azimuth", azimuthDeg);
    }

    /** Upward part of the unit vector that stands on the plane. */
    double up() {
        return Math.cos(Math.toRadians(tiltDeg));
    }

    double east() {
        return sine() * Math.sin(Math.toRadians(azimuthDeg));
    }

    double north() {
        return sine() * Math.cos(Math.toRadians(azimuthDeg));
    }

    /** Sine of the tilt. */
    double sine() {
        return Math.sin(Math.toRadians(tiltDeg));
    }

    /** Share of the sky that an unobstructed plane sees: (1 + cos tilt) / 2. */
    double skyView() {
        return (1 + up()) / 2;
    }

    /** Share of its view that is ground: (1 - cos tilt) / 2. */
    double groundView() {
        return (1 - up()) / 2;
    }

    /** Cosine of the angle between the sun and the plane's normal; negative when the sun is behind. */
    double cosineOfIncidence(double sunUp, double sunEast, double sunNorth) {
        return sunUp * up() + sunEast * east() + sunNorth * north();
    }
}
