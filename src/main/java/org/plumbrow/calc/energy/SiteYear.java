package org.plumbrow.calc.energy;

import static org.plumbrow.calc.energy.sun.HourOfYear.HOURS;
import static org.plumbrow.calc.energy.sun.HourOfYear.MONTHS;

import org.plumbrow.calc.Range;
import org.plumbrow.calc.energy.sun.HourOfYear;
import org.plumbrow.calc.energy.sun.SunTrack;
import org.plumbrow.calc.energy.weather.WeatherYear;

/**
 * Weather and sun of one site, prepared once for any number of arrays and orientations: the hours with light, each with
 * the sun's direction and the parts of the sky's light. Never changes.
 */
public final class SiteYear {

    public static final Range ALBEDO = new Range(0, 1, "");
    /** Grass and fields; snow has 0.6 to 0.8. */
    public static final double USUAL_ALBEDO = 0.2;

    private final WeatherYear weather;
    private final SunTrack sun;
    private final SkyModel sky;
    private final double albedo;

    /** Each lit hour's hour of the year; the arrays below are in the same order. */
    final int[] hours;
    /** {@code int[13]}: where each month's lit hours begin, and the end. */
    final int[] monthStarts = new int[MONTHS + 1];

    final double[] up;
    final double[] east;
    final double[] north;
    final double[] beam;
    final double[] circumsolar;
    final double[] isotropic;
    final double[] horizon;
    final double[] ground;
    final double[] airC;
    final double[] windMPerS;

    private SiteYear(WeatherYear weather, SunTrack sun, SkyModel sky, double albedo) {
        this.weather = weather;
        this.sun = sun;
        this.sky = sky;
        this.albedo = ALBEDO.check("reflection of the ground", albedo);
        this.hours = litHours(weather);
        this.up = new double[hours.length];
        this.east = new double[hours.length];
        this.north = new double[hours.length];
        this.beam = new double[hours.length];
        this.circumsolar = new double[hours.length];
        this.isotropic = new double[hours.length];
        this.horizon = new double[hours.length];
        this.ground = new double[hours.length];
        this.airC = new double[hours.length];
        this.windMPerS = new double[hours.length];
        for (int at = 0; at < hours.length; at++) {
            prepare(at);
        }
        beginMonths();
    }

    /** With the sky of Hay and Davies over grass. */
    public static SiteYear of(WeatherYear weather, SunTrack sun) {
        return of(weather, sun, SkyModel.HAY_DAVIES, USUAL_ALBEDO);
    }

    /**
     * @param sun the track over the weather's own place
     * @param albedo share that the ground reflects, 0 to 1
     * @throws IllegalArgumentException if the sun is that of another place: a caller's bug
     */
    public static SiteYear of(WeatherYear weather, SunTrack sun, SkyModel sky, double albedo) {
        if (!sun.place().equals(weather.place())) {
            throw new IllegalArgumentException("sun over %s, weather of %s".formatted(sun.place(), weather.place()));
        }
        return new SiteYear(weather, sun, sky, albedo);
    }

    private static int[] litHours(WeatherYear weather) {
        int[] lit = new int[HOURS];
        int count = 0;
        for (int hour = 0; hour < HOURS; hour++) {
            if (weather.ghiWPerM2(hour) > 0 || weather.dhiWPerM2(hour) > 0 || weather.dniWPerM2(hour) > 0) {
                lit[count++] = hour;
            }
        }
        return java.util.Arrays.copyOf(lit, count);
    }

    private void prepare(int at) {
        int hour = hours[at];
        SkyLight light = light(hour);
        up[at] = sun.up(hour);
        east[at] = sun.east(hour);
        north[at] = sun.north(hour);
        beam[at] = light.beam();
        circumsolar[at] = light.circumsolar();
        isotropic[at] = light.isotropic();
        horizon[at] = light.horizon();
        ground[at] = groundWPerM2(hour);
        airC[at] = weather.airC(hour);
        windMPerS[at] = weather.windMPerS(hour);
    }

    private void beginMonths() {
        for (int month = 1, at = 0; month <= MONTHS; month++) {
            while (at < hours.length && HourOfYear.monthOf(hours[at]) <= month) {
                at++;
            }
            monthStarts[month] = at;
        }
    }

    SkyLight light(int hour) {
        return sky.light(
                weather.dniWPerM2(hour), weather.dhiWPerM2(hour), sun.extraterrestrialWPerM2(hour), sun.up(hour));
    }

    double groundWPerM2(int hour) {
        return weather.ghiWPerM2(hour) * albedo;
    }

    public WeatherYear weather() {
        return weather;
    }

    public SunTrack sun() {
        return sun;
    }

    public SkyModel sky() {
        return sky;
    }

    public double albedo() {
        return albedo;
    }

    /** Global radiation on the horizontal in a month, kWh/m2. */
    public double ghiKwhPerM2(int month) {
        double sum = 0;
        int end = month == MONTHS ? HOURS : HourOfYear.firstOf(month + 1);
        for (int hour = HourOfYear.firstOf(month); hour < end; hour++) {
            sum += weather.ghiWPerM2(hour);
        }
        return sum / 1000;
    }
}
