package org.plumbrow.calc.energy.weather;

import static org.plumbrow.calc.energy.sun.HourOfYear.HOURS;

import java.util.List;
import org.plumbrow.calc.Range;
import org.plumbrow.calc.energy.sun.SunTrack;

/** Can a year be like this? Radiation at night, more light than the sun sends, a year's sum that no place has. */
final class Plausibility {

    private static final Range YEAR_KWH_PER_M2 = new Range(600, 2800, "kWh/m2");
    private static final double NIGHT_ZENITH_DEG = 90 + 3 + 7.5;
    private static final double NIGHT_W_PER_M2 = 50;
    private static final int MOST_NIGHT_HOURS = 50;
    private static final int MOST_BRIGHT_HOURS = 24;
    private static final double DEGREES_FROM_ZONE_WARNED = 15;

    private final SunTrack sun;
    private final double[][] columns;
    private final List<RawHour> rows;
    private final List<WeatherFinding> findings;

    Plausibility(SunTrack sun, double[][] columns, List<RawHour> rows, List<WeatherFinding> findings) {
        this.sun = sun;
        this.columns = columns;
        this.rows = rows;
        this.findings = findings;
    }

    void judge() {
        yearsSum();
        night();
        brighterThanTheSun();
        zone();
        oneRealYear();
    }

    private void yearsSum() {
        double sum = java.util.Arrays.stream(columns[Column.GHI.ordinal()]).sum() / 1000;
        if (!YEAR_KWH_PER_M2.holds(sum)) {
            throw new Unreadable(
                    0,
                    "The year's global radiation is %,.0f kWh/m2; places on earth have 600 to 2,800.".formatted(sum),
                    "Check the unit: mean W/m2 or Wh/m2 of each hour are expected.");
        }
    }

    private void night() {
        int hours = 0;
        for (int hour = 0; hour < HOURS; hour++) {
            if (columns[Column.GHI.ordinal()][hour] > NIGHT_W_PER_M2
                    && sun.trueZenithDeg(hour) > NIGHT_ZENITH_DEG
                    && ++hours > MOST_NIGHT_HOURS) {
                throw new Unreadable(
                        rows.get(hour).line(),
                        "There is radiation at night in more than %d hours.".formatted(MOST_NIGHT_HOURS),
                        "Correct place and time zone in the header, or bring the file as it was published.");
            }
        }
    }

    private void brighterThanTheSun() {
        int hours = 0;
        int first = -1;
        for (int hour = 0; hour < HOURS; hour++) {
            if (isBrighterThanTheSun(hour)) {
                first = first < 0 ? hour : first;
                hours++;
            }
        }
        if (hours == 0) {
            return;
        }
        int line = rows.get(first).line();
        String what = "There is more radiation than the sun sends in %,d %s, first here."
                .formatted(hours, hours == 1 ? "hour" : "hours");
        if (hours > MOST_BRIGHT_HOURS) {
            throw new Unreadable(line, what, "Check place, time zone and unit.");
        }
        findings.add(WeatherFinding.warning(line, what, "It was left as it is."));
    }

    private boolean isBrighterThanTheSun(int hour) {
        double outside = sun.extraterrestrialWPerM2(hour);
        double onHorizontal = 1.2 * outside * Math.max(0, sun.up(hour)) + 100;
        return columns[Column.GHI.ordinal()][hour] > onHorizontal || columns[Column.DNI.ordinal()][hour] > outside;
    }

    private void zone() {
        double apart = Places.degreesFromZone(sun.place());
        if (apart > DEGREES_FROM_ZONE_WARNED) {
            findings.add(WeatherFinding.warning(
                    0,
                    "The place lies %.0f degrees of longitude from the middle of its time zone.".formatted(apart),
                    "Check longitude and time zone in the header."));
        }
    }

    private void oneRealYear() {
        int year = rows.get(0).year();
        if (year > 0 && rows.stream().allMatch(row -> row.year() == year)) {
            findings.add(WeatherFinding.note(
                    0,
                    "All hours are of %d: one real year, not a typical one.".formatted(year),
                    "Bring a typical year for a figure that holds over many years."));
        }
    }
}
