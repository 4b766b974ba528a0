package org.plumbrow.calc.outage.ranking;

import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import org.plumbrow.calc.energy.sun.HourOfYear;
import org.plumbrow.calc.energy.weather.WeatherYear;

/**
 * Weather hour after hour.
 *
 * @param first a full hour of the site's clock
 */
public record WeatherHours(LocalDateTime first, List<WeatherHour> hours) {

    /** Gust over the hour's mean wind (common practice, no source). */
    public static final double GUST_OVER_MEAN = 1.5;
    /** Days on either side that count as such days. */
    public static final int DAYS_AROUND = 7;

    private static final double UNKNOWN_HUMIDITY = 70;

    public WeatherHours {
        hours = List.copyOf(hours);
        if (first.getMinute() != 0) {
            throw new IllegalArgumentException("weather begins at " + first + ", not at a full hour");
        }
    }

    /** As a typical year has such hours; its own clock knows no daylight saving, the site's does. */
    public static WeatherHours typical(WeatherYear year, ZoneId zone, LocalDateTime first, int hours) {
        ZoneOffset standard =
                ZoneOffset.ofTotalSeconds((int) Math.round(3600 * year.place().utcOffsetHours()));
        List<WeatherHour> typical = new ArrayList<>(hours);
        for (int i = 0; i < hours; i++) {
            LocalDateTime at =
                    LocalDateTime.ofInstant(first.plusHours(i).atZone(zone).toInstant(), standard);
            typical.add(typical(year, (at.getDayOfYear() - 1) % 365 * 24 + at.getHour()));
        }
        return new WeatherHours(first, typical);
    }

    private static WeatherHour typical(WeatherYear year, int hour) {
        List<Double> air = new ArrayList<>();
        List<Double> gust = new ArrayList<>();
        for (int day = -DAYS_AROUND; day <= DAYS_AROUND; day++) {
            int at = Math.floorMod(hour + 24 * day, HourOfYear.HOURS);
            air.add(year.airC(at));
            gust.add(GUST_OVER_MEAN * year.windMPerS(at));
        }
        return new WeatherHour.Typical(
                air, gust, year.relativeHumidityPercent(hour).orElse(UNKNOWN_HUMIDITY));
    }
}
