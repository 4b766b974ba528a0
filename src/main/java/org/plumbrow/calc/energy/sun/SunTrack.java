package org.plumbrow.calc.energy.sun;

import static org.plumbrow.calc.energy.sun.HourOfYear.HOURS;

import java.time.Duration;
import java.time.ZoneOffset;
import java.time.ZonedDateTime;

/**
 * The sun of a year over one place: its position in the middle of each of the 8,760 hours. Made once per place and
 * shared; it never changes. Within 0.0003 degrees of the Solar Position Algorithm ({@link AnchoredSun}).
 */
public final class SunTrack {

    /** Any year without a leap day will do: another one changes a year's yield by less than 0.005 %. */
    public static final int YEAR = 2023;

    private final Place place;
    private final double[] trueZenithDeg = new double[HOURS];
    private final double[] apparentZenithDeg = new double[HOURS];
    private final double[] azimuthDeg = new double[HOURS];
    private final double[] up = new double[HOURS];
    private final double[] east = new double[HOURS];
    private final double[] north = new double[HOURS];
    private final double[] extraterrestrial = new double[HOURS];

    private SunTrack(Place place) {
        this.place = place;
        SunPosition.Air air = SunPosition.Air.usual(place);
        AnchoredSun sun = new AnchoredSun(place, firstMiddle(place), HOURS);
        for (int hour = 0; hour < HOURS; hour++) {
            keep(hour, sun.at(hour), air);
        }
    }

    /** The sun over the place in the middle of every hour of its standard time. */
    public static SunTrack over(Place place) {
        return new SunTrack(place);
    }

    private static ZonedDateTime firstMiddle(Place place) {
        Duration fromUtc = Duration.ofSeconds(Math.round(place.utcOffsetHours() * 3600));
        return ZonedDateTime.of(YEAR, 1, 1, 0, 30, 0, 0, ZoneOffset.UTC).minus(fromUtc);
    }

    private void keep(int hour, AnchoredSun.Vector sun, SunPosition.Air air) {
        trueZenithDeg[hour] = sun.zenithDeg();
        azimuthDeg[hour] = sun.azimuthDeg();
        apparentZenithDeg[hour] = trueZenithDeg[hour] - SunPosition.refractionDeg(90 - trueZenithDeg[hour], air);
        double zenith = Math.toRadians(apparentZenithDeg[hour]);
        double azimuth = Math.toRadians(azimuthDeg[hour]);
        up[hour] = Math.cos(zenith);
        east[hour] = Math.sin(zenith) * Math.sin(azimuth);
        north[hour] = Math.sin(zenith) * Math.cos(azimuth);
        extraterrestrial[hour] = Extraterrestrial.normalWPerM2(HourOfYear.dayOfYear(hour));
    }

    public Place place() {
        return place;
    }

    /** Without refraction, degrees. */
    public double trueZenithDeg(int hour) {
        return trueZenithDeg[hour];
    }

    /** As it is seen, degrees. */
    public double apparentZenithDeg(int hour) {
        return apparentZenithDeg[hour];
    }

    /** Clockwise from north, degrees. */
    public double azimuthDeg(int hour) {
        return azimuthDeg[hour];
    }

    /** Upward part of the unit vector to the sun as it is seen: the cosine of the apparent zenith. */
    public double up(int hour) {
        return up[hour];
    }

    /** Eastward part of the unit vector to the sun. */
    public double east(int hour) {
        return east[hour];
    }

    /** Northward part of the unit vector to the sun. */
    public double north(int hour) {
        return north[hour];
    }

    /** Irradiance outside the air, on a plane that faces the sun, W/m2. */
    public double extraterrestrialWPerM2(int hour) {
        return extraterrestrial[hour];
    }
}
