package org.plumbrow.calc.energy.sun;

import java.time.ZonedDateTime;
import net.e175.klaus.solarpositioning.Grena3;
import net.e175.klaus.solarpositioning.SPA;
import net.e175.klaus.solarpositioning.SolarPosition;
import org.plumbrow.calc.Range;

/**
 * Where the sun stands as seen from one place.
 * <p>Source: Solar Position Algorithm of Reda and Andreas (NREL/TP-560-34302, revised 2008), uncertainty 0.0003
 * degrees, through the library {@code solarpositioning}; refraction by equation 42 of the same paper.
 *
 * @param trueZenithDeg angle from straight up, without refraction, 0 to 180
 * @param apparentZenithDeg with refraction, as it is seen; used for every irradiance
 * @param azimuthDeg clockwise from north, 0 to 360
 */
public record SunPosition(double trueZenithDeg, double apparentZenithDeg, double azimuthDeg) {

    /** Terrestrial less universal time, s: within a few seconds for 2000 to 2040, one second moves the sun 0.00001 degrees. */
    public static final double DELTA_T_S = 67;

    /** Below this true elevation the disc has set even with refraction: half its width and 0.5667 degrees. */
    private static final double SET_DEG = -(0.26667 + 0.5667);

    /**
     * The air the light comes through; it only bends it.
     *
     * @param pressurePa 40000 to 110000
     * @param airC -60 to 60
     */
    public record Air(double pressurePa, double airC) {
        public static final Range PRESSURE = new Range(40_000, 110_000, "Pa");
        public static final Range TEMPERATURE = new Range(-60, 60, "degC");

        public Air {
            PRESSURE.check("air pressure", pressurePa);
            TEMPERATURE.check("air temperature", airC);
        }

        /** Pressure from the height, 12 degC all year: an error of 30 K moves a low sun by 0.01 degrees. */
        public static Air usual(Place place) {
            return new Air(place.pressurePa(), 12);
        }
    }

    /** The sun over a place at one instant, in the usual air of that height. */
    public static SunPosition at(ZonedDateTime instant, Place place) {
        return at(instant, place, Air.usual(place));
    }

    public static SunPosition at(ZonedDateTime instant, Place place, Air air) {
        SolarPosition sun = SPA.calculateSolarPosition(
                instant, place.latitudeDeg(), place.longitudeDeg(), place.elevationM(), DELTA_T_S);
        double zenith = sun.zenithAngle();
        return new SunPosition(zenith, zenith - refractionDeg(90 - zenith, air), sun.azimuth());
    }

    /**
     * To 0.01 degrees, years 2010 to 2110, without refraction, in an eighth of the time. Source: Grena, Solar Energy 86(5),
     * 2012, third algorithm.
     */
    static SunPosition roughly(ZonedDateTime instant, Place place) {
        SolarPosition sun =
                Grena3.calculateSolarPosition(instant, place.latitudeDeg(), place.longitudeDeg(), DELTA_T_S);
        return new SunPosition(sun.zenithAngle(), sun.zenithAngle(), sun.azimuth());
    }

    /**
     * Lift of the sun by refraction, degrees: (p / 1010) (283 / (273 + T)) 1.02 / (60 tan(e + 10.3 / (e + 5.11))), p in
     * mbar; 0 once the whole disc has set.
     */
    static double refractionDeg(double trueElevationDeg, Air air) {
        if (trueElevationDeg < SET_DEG) {
            return 0;
        }
        double bent = Math.tan(Math.toRadians(trueElevationDeg + 10.3 / (trueElevationDeg + 5.11)));
        return air.pressurePa / 101_000 * (283 / (273 + air.airC)) * 1.02 / (60 * bent);
    }
}
