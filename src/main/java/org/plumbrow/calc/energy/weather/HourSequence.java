package org.plumbrow.calc.energy.weather;

import static org.plumbrow.calc.energy.sun.HourOfYear.HOURS;

import java.util.ArrayList;
import java.util.List;
import org.plumbrow.calc.energy.sun.HourOfYear;

/** The hours of a file must be 1 to 24 of every day in order; a whole 29 February is left out. */
final class HourSequence {

    private static final int HOURS_OF_LEAP_YEAR = HOURS + 24;

    private HourSequence() {}

    /**
     * @param findings takes a note when a day was left out
     * @return the 8,760 rows of the year
     * @throws Unreadable with the first row that is wrong
     */
    static List<RawHour> of(List<RawHour> rows, List<WeatherFinding> findings) {
        if (rows.isEmpty()) {
            throw new Unreadable(0, "There is a header but no hour.", "Bring the whole file.");
        }
        refuseHourZero(rows);
        List<RawHour> year = withoutLeapDay(rows, findings);
        for (int at = 0; at < Math.min(year.size(), HOURS); at++) {
            refuseWrongHour(at, year.get(at));
        }
        refuseWrongCount(year, year.size() < rows.size());
        return year;
    }

    private static void refuseHourZero(List<RawHour> rows) {
        RawHour first = rows.get(0);
        if (first.hour() == 0) {
            throw new Unreadable(
                    first.line(),
                    "The hours count from 0: whether a number names the beginning or the end of its hour is unknown.",
                    "Bring a file whose hours count from 1 to 24.");
        }
    }

    private static List<RawHour> withoutLeapDay(List<RawHour> rows, List<WeatherFinding> findings) {
        List<RawHour> leap = rows.stream().filter(RawHour::isLeapDay).toList();
        if (leap.isEmpty()) {
            return rows;
        }
        if (rows.size() != HOURS_OF_LEAP_YEAR || leap.size() != 24) {
            throw new Unreadable(
                    leap.get(0).line(),
                    "The file holds 29 February, but %,d hours in place of 8,784.".formatted(rows.size()),
                    "Bring a whole leap year, or a year without 29 February.");
        }
        List<RawHour> kept = new ArrayList<>(rows);
        kept.removeAll(leap);
        findings.add(
                WeatherFinding.note(leap.get(0).line(), "The file is a leap year's.", "29 February was left out."));
        return kept;
    }

    private static void refuseWrongHour(int at, RawHour found) {
        int month = HourOfYear.monthOf(at);
        int day = HourOfYear.dayOfMonth(at);
        int hour = at % 24 + 1;
        if (found.month() != month || found.day() != day || found.hour() != hour) {
            throw new Unreadable(
                    found.line(),
                    "%d/%d, hour %d is expected, %s is found: a row is missing, twice or out of order."
                            .formatted(month, day, hour, found.when()),
                    "Bring the whole file, its rows in order.");
        }
    }

    private static void refuseWrongCount(List<RawHour> year, boolean leap) {
        RawHour last = year.get(Math.min(year.size(), HOURS) - 1);
        if (year.size() < HOURS) {
            throw new Unreadable(
                    last.line(),
                    "The file ends at %s: %,d of 8,760 hours.".formatted(last.when(), year.size()),
                    "Bring the whole file; nothing is made up for the hours that lack.");
        }
        if (year.size() > HOURS) {
            throw new Unreadable(
                    year.get(HOURS).line(),
                    "The file goes on after the year's last hour%s.".formatted(leap ? " (29 February left out)" : ""),
                    "Bring one year.");
        }
    }
}
