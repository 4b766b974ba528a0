package org.plumbrow.cutover.ridethrough;

import java.time.LocalDateTime;
import java.time.format.DateTimeParseException;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.OptionalDouble;
import org.plumbrow.calc.Range;
import org.plumbrow.calc.outage.ranking.WeatherHour.Forecast;
import org.plumbrow.web.NumbersAsWritten;

/** Reads a pasted forecast: a line an hour, time, degF, humidity, gust in mph, chances of rain and of lightning in %. */
final class ForecastText {

    private static final Range AIR = new Range(-60, 130, "°F");
    private static final Range PERCENT = new Range(0, 100, "%");
    private static final Range GUST = new Range(0, 200, "mph");
    private static final double M_PER_S_OF_MPH = 0.44704;
    private static final int LEAST_CELLS = 4;
    private static final int RAIN = 4;
    private static final int LIGHTNING = 5;

    private ForecastText() {}

    /** @throws IllegalArgumentException with a sentence that names the line */
    static Map<LocalDateTime, Forecast> read(String text) {
        Map<LocalDateTime, Forecast> hours = new LinkedHashMap<>();
        String[] lines = text.split("\\R");
        for (int i = 0; i < lines.length; i++) {
            String line = lines[i].strip();
            if (!line.isEmpty() && (i > 0 || Character.isDigit(line.charAt(0)))) {
                read(line, i + 1, hours);
            }
        }
        return hours;
    }

    private static void read(String line, int number, Map<LocalDateTime, Forecast> hours) {
        String[] cells = line.split("\\s*[,;\\t]\\s*", -1);
        try {
            if (cells.length < LEAST_CELLS) {
                throw new IllegalArgumentException("time, temperature, humidity and gust are needed");
            }
            LocalDateTime time = LocalDateTime.parse(cells[0].replace(' ', 'T'));
            if (time.getMinute() != 0) {
                throw new IllegalArgumentException("a line begins at a full hour");
            }
            hours.put(
                    time,
                    new Forecast(
                            UsUnits.degC(figure("temperature", cells[1], AIR)),
                            figure("humidity", cells[2], PERCENT),
                            M_PER_S_OF_MPH * figure("gust", cells[3], GUST),
                            chance("rain", cells, RAIN),
                            chance("lightning", cells, LIGHTNING)));
        } catch (DateTimeParseException unreadable) {
            throw new IllegalArgumentException("Line %d: write the time like 2027-03-26 09:00.".formatted(number));
        } catch (IllegalArgumentException wrong) {
            throw new IllegalArgumentException("Line %d: %s.".formatted(number, wrong.getMessage()));
        }
    }

    private static double figure(String what, String cell, Range range) {
        try {
            return range.check(what, NumbersAsWritten.read(cell).doubleValue());
        } catch (NumberFormatException none) {
            throw new IllegalArgumentException(what + " “" + cell + "” is no number");
        }
    }

    private static OptionalDouble chance(String what, String[] cells, int at) {
        return cells.length <= at || cells[at].isBlank()
                ? OptionalDouble.empty()
                : OptionalDouble.of(figure("chance of " + what, cells[at], PERCENT));
    }
}
