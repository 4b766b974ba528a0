package org.plumbrow.calc.energy.weather;

import static org.plumbrow.calc.energy.sun.HourOfYear.HOURS;

import java.util.List;
import org.plumbrow.calc.energy.sun.HourOfYear;

/**
 * Fills what a file calls missing, and says so: radiation by the same hour of the days around, air between its
 * neighbours, wind by a light air of 1 m/s. Too many of them and the file is refused.
 */
final class Gaps {

    /** Radiation: at most so many hours of a month. */
    private static final int MOST_HOURS_A_MONTH = 24;
    /** Air: at most so many hours running. */
    private static final int MOST_AIR_RUNNING = 6;

    private static final double LIGHT_AIR_M_PER_S = 1;
    private static final int[] DAYS_AROUND = {-24, 24, -48, 48};

    private final double[][] columns;
    private final List<RawHour> rows;
    private final List<WeatherFinding> findings;

    Gaps(double[][] columns, List<RawHour> rows, List<WeatherFinding> findings) {
        this.columns = columns;
        this.rows = rows;
        this.findings = findings;
    }

    void fill() {
        fillRadiation(Column.GHI);
        fillRadiation(Column.DNI);
        fillRadiation(Column.DHI);
        fillAir();
        fillWind();
    }

    private void fillRadiation(Column column) {
        double[] values = columns[column.ordinal()];
        double[] asRead = values.clone();
        int[] inMonth = new int[HourOfYear.MONTHS + 1];
        int filled = 0;
        int first = -1;
        for (int hour = 0; hour < HOURS; hour++) {
            if (Double.isNaN(asRead[hour])) {
                first = first < 0 ? hour : first;
                refuseTooMany(column, hour, ++inMonth[HourOfYear.monthOf(hour)]);
                values[hour] = aroundOf(column, asRead, hour);
                filled++;
            }
        }
        if (filled > 0) {
            warn(column, first, filled, "taken from the same hour of the days around");
        }
    }

    private void refuseTooMany(Column column, int hour, int inMonth) {
        if (inMonth > MOST_HOURS_A_MONTH) {
            throw new Unreadable(
                    rows.get(hour).line(),
                    "%s is missing in more than %d hours of month %d."
                            .formatted(column.words(), MOST_HOURS_A_MONTH, HourOfYear.monthOf(hour)),
                    "Bring a file without such gaps.");
        }
    }

    private double aroundOf(Column column, double[] asRead, int hour) {
        double sum = 0;
        int count = 0;
        for (int away : DAYS_AROUND) {
            double value = asRead[Math.floorMod(hour + away, HOURS)];
            if (count < 2 && !Double.isNaN(value)) {
                sum += value;
                count++;
            }
        }
        if (count == 0) {
            throw new Unreadable(
                    rows.get(hour).line(),
                    "%s is missing, and at the same hour of the days around too.".formatted(column.words()),
                    "Bring a file without such gaps.");
        }
        return sum / count;
    }

    private void fillAir() {
        double[] air = columns[Column.AIR.ordinal()];
        int filled = 0;
        int first = -1;
        for (int hour = 0; hour < HOURS; hour++) {
            if (Double.isNaN(air[hour])) {
                first = first < 0 ? hour : first;
                int end = bridge(air, hour);
                filled += end - hour;
                hour = end;
            }
        }
        if (filled > 0) {
            warn(Column.AIR, first, filled, "drawn straight between the hours around");
        }
    }

    /** Fills from the first missing hour to the next known one; at the year's edge the known side holds. */
    private int bridge(double[] air, int from) {
        int end = from;
        while (end < HOURS && Double.isNaN(air[end])) {
            end++;
        }
        if (end - from > MOST_AIR_RUNNING || from == 0 && end == HOURS) {
            throw new Unreadable(
                    rows.get(from).line(),
                    "air temperature is missing for more than %d hours running.".formatted(MOST_AIR_RUNNING),
                    "Bring a file without such gaps.");
        }
        double before = from > 0 ? air[from - 1] : air[end];
        double after = end < HOURS ? air[end] : before;
        for (int hour = from; hour < end; hour++) {
            air[hour] = before + (after - before) * (hour - from + 1) / (end - from + 1);
        }
        return end;
    }

    private void fillWind() {
        double[] wind = columns[Column.WIND.ordinal()];
        int filled = 0;
        int first = -1;
        for (int hour = 0; hour < HOURS; hour++) {
            if (Double.isNaN(wind[hour])) {
                first = first < 0 ? hour : first;
                wind[hour] = LIGHT_AIR_M_PER_S;
                filled++;
            }
        }
        if (filled > 0) {
            warn(Column.WIND, first, filled, "taken as 1 m/s, which makes the modules warmer and the yield lower");
        }
    }

    private void warn(Column column, int hour, int count, String done) {
        findings.add(WeatherFinding.warning(
                rows.get(hour).line(),
                "%s is missing in %,d %s, first here.".formatted(column.words(), count, count == 1 ? "hour" : "hours"),
                "It was " + done + "."));
    }
}
