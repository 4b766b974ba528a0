package org.plumbrow.estimate.place;

import java.time.ZoneOffset;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import org.plumbrow.calc.energy.Horizon;
import org.plumbrow.calc.energy.sun.Place;
import org.plumbrow.calc.energy.sun.SunPosition;
import org.plumbrow.calc.energy.sun.SunTrack;

/**
 * Both horizons over azimuth and elevation, the sun's ways of three days behind them; lengths in units of the picture.
 *
 * @param before joined readings; empty where there are none
 * @param beforeArea the same, closed along the ground
 */
record HorizonPlot(
        String before,
        String beforeArea,
        List<Dot> beforeDots,
        String dayOne,
        List<Dot> dayOneDots,
        List<SunWay> ways,
        List<Tick> azimuths,
        List<Tick> elevations) {

    static final int WIDTH = 400;
    static final int HEIGHT = 260;
    static final int LEFT = 30;
    static final int TOP = 8;
    static final int RIGHT = 392;
    static final int GROUND = 232;
    private static final int FROM_DEG = 45;
    private static final int TO_DEG = 315;
    private static final int USUAL_MOST_DEG = 60;
    private static final int STEP_MINUTES = 20;
    private static final int STEPS_A_DAY = 24 * 60 / STEP_MINUTES;

    record Dot(String x, String y) {}

    /** The sun of one day. @param words its name, at (x, y) */
    record SunWay(String path, String words, String x, String y) {}

    /** @param at along its axis */
    record Tick(String words, String at) {}

    private record Seen(double azimuthDeg, double elevationDeg) {}

    /** @param place where the sun is seen from; null leaves its ways out */
    static HorizonPlot of(List<Horizon.Reading> before, List<Horizon.Reading> dayOne, @Nullable Place place) {
        double highest = IntStream.range(0, before.size() + dayOne.size())
                .mapToDouble(
                        at -> (at < before.size() ? before.get(at) : dayOne.get(at - before.size())).elevationDeg())
                .max()
                .orElse(0);
        Scale scale = new Scale(highest + 5 > USUAL_MOST_DEG ? 90 : USUAL_MOST_DEG);
        String line = scale.line(seen(before));
        return new HorizonPlot(
                line,
                line.isEmpty() ? "" : scale.area(line, before),
                scale.dots(before),
                scale.line(seen(dayOne)),
                scale.dots(dayOne),
                place == null ? List.of() : ways(scale, place),
                compass(),
                scale.elevations());
    }

    private static List<Seen> seen(List<Horizon.Reading> readings) {
        return readings.stream()
                .map(one -> new Seen(one.azimuthDeg(), one.elevationDeg()))
                .toList();
    }

    private static List<SunWay> ways(Scale scale, Place place) {
        return List.of(way(scale, place, 6, "Jun 21"), way(scale, place, 3, "Mar 21"), way(scale, place, 12, "Dec 21"));
    }

    /** The name stands where the way is highest within the picture, west of south where it leaves it. */
    private static SunWay way(Scale scale, Place place, int month, String words) {
        List<Seen> up = sun(place, month).stream()
                .filter(one -> one.elevationDeg >= 0 && one.elevationDeg <= scale.mostDeg)
                .filter(one -> one.azimuthDeg >= FROM_DEG && one.azimuthDeg <= TO_DEG)
                .toList();
        Seen named = up.stream()
                .filter(one -> one.azimuthDeg >= 175)
                .max(Comparator.comparingDouble(Seen::elevationDeg))
                .orElse(new Seen(180, 0));
        return new SunWay(
                scale.split(up),
                words,
                Scale.say(scale.x(named.azimuthDeg) + 4),
                Scale.say(Math.max(TOP + 10, scale.y(named.elevationDeg) - 5)));
    }

    /** Without its air's height, which moves a low sun by less than a line is wide. */
    private static List<Seen> sun(Place place, int month) {
        ZonedDateTime midnight = ZonedDateTime.of(SunTrack.YEAR, month, 21, 0, 0, 0, 0, ZoneOffset.UTC)
                .minusMinutes(Math.round(4 * place.longitudeDeg()));
        return IntStream.range(0, STEPS_A_DAY)
                .mapToObj(step -> SunPosition.at(midnight.plusMinutes((long) step * STEP_MINUTES), place))
                .map(sun -> new Seen(sun.azimuthDeg(), 90 - sun.apparentZenithDeg()))
                .toList();
    }

    private static List<Tick> compass() {
        List<Tick> ticks = new ArrayList<>();
        List<String> names = List.of("NE", "E", "SE", "S", "SW", "W", "NW");
        for (int at = 0; at < names.size(); at++) {
            ticks.add(new Tick(names.get(at), Scale.say(Scale.across(FROM_DEG + 45.0 * at))));
        }
        return ticks;
    }

    /** Degrees to units. */
    private record Scale(int mostDeg) {

        static double across(double azimuthDeg) {
            return LEFT + (RIGHT - LEFT) * (azimuthDeg - FROM_DEG) / (TO_DEG - FROM_DEG);
        }

        static String say(double units) {
            return String.format(Locale.ROOT, "%.1f", units);
        }

        double x(double azimuthDeg) {
            return across(azimuthDeg);
        }

        double y(double elevationDeg) {
            return GROUND - (GROUND - TOP) * elevationDeg / mostDeg;
        }

        private String point(Seen one) {
            return say(x(one.azimuthDeg)) + " " + say(y(one.elevationDeg));
        }

        String line(List<Seen> points) {
            StringBuilder path = new StringBuilder();
            points.forEach(one -> path.append(path.isEmpty() ? "M" : "L").append(point(one)));
            return path.toString();
        }

        /** Anew where the sun leaves the picture and comes back. */
        String split(List<Seen> points) {
            StringBuilder path = new StringBuilder();
            for (int at = 0; at < points.size(); at++) {
                boolean goesOn = at > 0 && points.get(at).azimuthDeg - points.get(at - 1).azimuthDeg < 30;
                path.append(goesOn ? "L" : "M").append(point(points.get(at)));
            }
            return path.toString();
        }

        String area(String line, List<Horizon.Reading> readings) {
            double last = x(readings.get(readings.size() - 1).azimuthDeg());
            return "%sL%s %dL%s %dZ"
                    .formatted(line, say(last), GROUND, say(x(readings.get(0).azimuthDeg())), GROUND);
        }

        List<Dot> dots(List<Horizon.Reading> readings) {
            return readings.stream()
                    .map(one -> new Dot(say(x(one.azimuthDeg())), say(y(one.elevationDeg()))))
                    .toList();
        }

        List<Tick> elevations() {
            return IntStream.iterate(0, deg -> deg <= mostDeg, deg -> deg + (mostDeg > USUAL_MOST_DEG ? 15 : 10))
                    .mapToObj(deg -> new Tick(deg + "°", say(y(deg))))
                    .toList();
        }
    }
}
