package org.plumbrow.calc.energy.weather;

import java.util.ArrayList;
import java.util.List;
import org.plumbrow.calc.energy.sun.Place;

/** TMY3: one line of station, one of column names, then rows dated MM/DD/YYYY with the hour 01:00 to 24:00. */
final class Tmy3Rows {

    private static final double MISSING = -9900;

    private final int[] at;
    private final int date;
    private final int time;

    private Tmy3Rows(NamedColumns names) {
        this.date = names.need("the date", "date");
        this.time = names.need("the time", "time");
        this.at = new int[] {
            names.need(Column.GHI.words(), "ghi"),
            names.need(Column.DNI.words(), "dni"),
            names.need(Column.DHI.words(), "dhi"),
            names.need(Column.AIR.words(), "dry-bulb"),
            names.find("rhum"),
            names.find("wspd")
        };
    }

    static RawYear read(TextLines lines) {
        CommaRow station = CommaRow.of(1, lines.line(1));
        Place place = Places.checked(
                1,
                station.number(4, "Latitude"),
                station.number(5, "Longitude"),
                station.number(6, "Elevation"),
                station.number(3, "Time zone"));
        Tmy3Rows rows = new Tmy3Rows(new NamedColumns(CommaRow.of(2, lines.line(2))));
        List<RawHour> hours = new ArrayList<>();
        for (int number = 3; number <= lines.count(); number++) {
            hours.add(rows.row(CommaRow.of(number, lines.line(number))));
        }
        return new RawYear(WeatherYear.Origin.TMY3_CSV, station.text(1), place, hours);
    }

    private RawHour row(CommaRow row) {
        int[] day = parts(row, date, "/", 3, "a date MM/DD/YYYY");
        int[] clock = parts(row, time, ":", 2, "a time HH:MM");
        if (clock[1] != 0) {
            throw new Unreadable(
                    row.line(),
                    "The time reads \"%s\", a full hour is expected.".formatted(row.text(time)),
                    "Bring a file with one row for each full hour, 01:00 to 24:00.");
        }
        RowValues values = new RowValues(row.line());
        for (Column column : Column.values()) {
            int place = at[column.ordinal()];
            if (place >= 0) {
                double value = row.number(place, column.words());
                values.with(column, value, value <= MISSING);
            }
        }
        return new RawHour(row.line(), day[2], day[0], day[1], clock[0], values.all());
    }

    private static int[] parts(CommaRow row, int at, String separator, int count, String expected) {
        String[] texts = row.text(at).split(separator, -1);
        try {
            int[] numbers =
                    java.util.Arrays.stream(texts).mapToInt(Integer::parseInt).toArray();
            if (numbers.length == count) {
                return numbers;
            }
        } catch (NumberFormatException e) {
            // said below, in words
        }
        throw new Unreadable(
                row.line(),
                "Column %d reads \"%s\", %s is expected.".formatted(at + 1, row.text(at), expected),
                "Bring the whole file; the last good line is %,d.".formatted(row.line() - 1));
    }
}
