package org.plumbrow.calc.energy;

import java.time.ZoneOffset;
import java.time.ZonedDateTime;
import java.util.List;
import java.util.stream.IntStream;
import org.plumbrow.calc.Range;
import org.plumbrow.calc.energy.sun.Place;
import org.plumbrow.calc.energy.sun.SunPosition;
import org.plumbrow.calc.energy.sun.SunTrack;

/**
 * How far apart rows must stand so that none shades the next on the shortest day, and what land that takes. From the same
 * geometry as {@link Rows}: pitch = width cos(incidence) / up, at the worst moment of the hours that must be free.
 *
 * @param pitchM least pitch, row to row, m
 * @param gapM clear ground between rows, m
 * @param profileDeg angle of the sun in the section across the rows at that moment, degrees above the ground
 * @param when that moment, clock of the place
 */
public record RowSpacing(double pitchM, double gapM, double profileDeg, ZonedDateTime when) {

    /** Hours around noon that are to be free of shade. */
    public static final Range FREE_HOURS = new Range(0, 8, "h");

    private static final int STEP_MINUTES = 10;
    private static final int STEPS_A_DAY = 24 * 60 / STEP_MINUTES;

    /**
     * @param widthM slant height of a row, m
     * @param freeHours hours around the sun's noon on the shortest day, 0 to 8; 4 is usual (10 to 2)
     * @throws IllegalArgumentException if the sun is not up, or behind the rows, for so long on that day: no pitch is
     *     wide enough
     */
    public static RowSpacing free(Place place, Plane plane, double widthM, double freeHours) {
        Rows.WIDTH.check("row width", widthM);
        FREE_HOURS.check("hours without shade", freeHours);
        List<Moment> day = shortestDay(place, plane);
        int noon = IntStream.range(0, STEPS_A_DAY)
                .reduce((a, b) -> day.get(a).up >= day.get(b).up ? a : b)
                .orElseThrow();
        int half = (int) Math.round(freeHours * 60 / 2 / STEP_MINUTES);
        Moment worst = IntStream.rangeClosed(-half, half)
                .mapToObj(step -> day.get(Math.floorMod(noon + step, STEPS_A_DAY)))
                .reduce((a, b) -> a.pitchPerWidth() >= b.pitchPerWidth() ? a : b)
                .orElseThrow();
        if (worst.up <= 0) {
            throw new IllegalArgumentException("the sun is not up for %s h on the shortest day".formatted(freeHours));
        }
        double pitch = widthM * Math.max(1, worst.pitchPerWidth());
        return new RowSpacing(pitch, pitch - widthM * plane.up(), worst.profileDeg(), worst.when);
    }

    private static List<Moment> shortestDay(Place place, Plane plane) {
        int month = place.latitudeDeg() >= 0 ? 12 : 6;
        ZoneOffset clock = ZoneOffset.ofTotalSeconds((int) Math.round(place.utcOffsetHours() * 3600));
        ZonedDateTime midnight = ZonedDateTime.of(SunTrack.YEAR, month, 21, 0, 0, 0, 0, clock);
        return IntStream.range(0, STEPS_A_DAY)
                .mapToObj(step -> Moment.at(midnight.plusMinutes((long) step * STEP_MINUTES), place, plane))
                .toList();
    }

    /**
     * Ground that a kilowatt takes, m2: pitch / (width times power of a square metre of module).
     *
     * @param modulesWPerM2 rating over area of the modules, 50 to 300
     */
    public double landM2PerKw(double widthM, double modulesWPerM2) {
        return pitchM / (widthM * modulesWPerM2 / 1000);
    }

    /** The sun at one moment: its height, and how far it stands towards the side that the rows face. */
    private record Moment(ZonedDateTime when, double up, double ahead, double incidence) {

        static Moment at(ZonedDateTime when, Place place, Plane plane) {
            SunPosition sun = SunPosition.at(when, place);
            double zenith = Math.toRadians(sun.apparentZenithDeg());
            double turn = Math.toRadians(sun.azimuthDeg() - plane.azimuthDeg());
            double ahead = Math.sin(zenith) * Math.cos(turn);
            double up = Math.cos(zenith);
            return new Moment(when, up, ahead, up * plane.up() + ahead * plane.sine());
        }

        double pitchPerWidth() {
            return up <= 0 ? Double.MAX_VALUE : Math.max(0, incidence) / up;
        }

        double profileDeg() {
            return Math.toDegrees(Math.atan2(up, ahead));
        }
    }
}
