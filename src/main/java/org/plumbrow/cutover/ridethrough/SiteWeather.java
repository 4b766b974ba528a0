package org.plumbrow.cutover.ridethrough;

import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.plumbrow.calc.energy.sun.HourOfYear;
import org.plumbrow.calc.energy.weather.WeatherYear;
import org.plumbrow.calc.outage.ranking.WeatherHour;
import org.plumbrow.calc.outage.ranking.WeatherHours;

/**
 * The weather of one site by its own clock.
 *
 * @param words what it is made from, shown with every figure
 * @param forecast hours that somebody brought; they go before the typical ones
 */
public record SiteWeather(
        WeatherYear year, ZoneId zone, String words, Map<LocalDateTime, WeatherHour.Forecast> forecast) {

    private static final int HOURS_OF_DAY = 24;

    HourOutside at(LocalDateTime time) {
        LocalDateTime hour = fullHour(time);
        return outside(hours(hour, 1).hours().get(0), hour);
    }

    public SiteWeather {
        forecast = Map.copyOf(forecast);
    }

    /** As forecast, else as such hours usually are. */
    public WeatherHours hours(LocalDateTime first, int count) {
        List<WeatherHour> hours =
                new ArrayList<>(WeatherHours.typical(year, zone, first, count).hours());
        for (int i = 0; i < count; i++) {
            WeatherHour.Forecast known = forecast.get(first.plusHours(i));
            if (known != null) {
                hours.set(i, known);
            }
        }
        return new WeatherHours(first, hours);
    }

    /** Of each hour of that weather, with the strongest sun of such hours. */
    List<HourOutside> outside(WeatherHours weather) {
        List<HourOutside> outside = new ArrayList<>(weather.hours().size());
        for (int i = 0; i < weather.hours().size(); i++) {
            outside.add(outside(weather.hours().get(i), weather.first().plusHours(i)));
        }
        return outside;
    }

    private HourOutside outside(WeatherHour hour, LocalDateTime time) {
        return new HourOutside(hour.warmC(), hour.coldC(), hour.relativeHumidityPercent(), sunAt(time));
    }

    double sunAt(LocalDateTime time) {
        ZoneOffset standard =
                ZoneOffset.ofTotalSeconds((int) Math.round(3600 * year.place().utcOffsetHours()));
        LocalDateTime at = LocalDateTime.ofInstant(time.atZone(zone).toInstant(), standard);
        int hour = (at.getDayOfYear() - 1) % 365 * HOURS_OF_DAY + at.getHour();
        double most = 0;
        for (int day = -WeatherHours.DAYS_AROUND; day <= WeatherHours.DAYS_AROUND; day++) {
            most = Math.max(most, year.ghiWPerM2(Math.floorMod(hour + HOURS_OF_DAY * day, HourOfYear.HOURS)));
        }
        return most;
    }

    static LocalDateTime fullHour(LocalDateTime time) {
        return time.withMinute(0).withSecond(0).withNano(0);
    }
}
