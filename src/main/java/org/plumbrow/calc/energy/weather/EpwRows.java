package org.plumbrow.calc.energy.weather;

import java.util.ArrayList;
import java.util.List;
import org.plumbrow.calc.energy.sun.Place;

/**
 * EPW: eight header lines, then 8,760 comma-separated rows. The minute is not read: 0 and 60 mean the same in these
 * files. Source: the format's data dictionary.
 */
final class EpwRows {

    private static final int LEAST_COLUMNS = 22;
    private static final int LAST_HEADER_LINE = 8;
    private static final String PERIODS = "DATA PERIODS";

    private EpwRows() {}

    static RawYear read(TextLines lines) {
        CommaRow location = CommaRow.of(1, lines.line(1));
        Place place = Places.checked(
                1,
                location.number(6, "Latitude"),
                location.number(7, "Longitude"),
                location.number(9, "Elevation"),
                location.number(8, "Time zone"));
        return new RawYear(WeatherYear.Origin.EPW, location.text(1), place, rows(lines));
    }

    private static List<RawHour> rows(TextLines lines) {
        int header = lastHeaderLine(lines);
        List<RawHour> hours = new ArrayList<>();
        for (int number = header + 1; number <= lines.count(); number++) {
            hours.add(row(CommaRow.of(number, lines.line(number)), number == lines.count()));
        }
        return hours;
    }

    private static int lastHeaderLine(TextLines lines) {
        for (int number = 1; number <= Math.min(lines.count(), 2 * LAST_HEADER_LINE); number++) {
            if (lines.line(number).startsWith(PERIODS)) {
                CommaRow periods = CommaRow.of(number, lines.line(number));
                if (periods.count() > 2 && periods.whole(2, "Records an hour") != 1) {
                    throw new Unreadable(
                            number,
                            "The file holds %s records an hour.".formatted(periods.text(2)),
                            "Bring a file with one record an hour.");
                }
                return number;
            }
        }
        throw new Unreadable(
                Math.min(lines.count(), LAST_HEADER_LINE),
                "The header has no line DATA PERIODS.",
                "Bring the whole EPW file, with its eight header lines.");
    }

    private static RawHour row(CommaRow row, boolean last) {
        if (row.count() < LEAST_COLUMNS) {
            throw new Unreadable(
                    row.line(),
                    "%d columns, at least %d are expected%s."
                            .formatted(
                                    row.count(), LEAST_COLUMNS, last ? ": the file ends in the middle of a row" : ""),
                    "Bring the whole file; the last good line is %,d.".formatted(row.line() - 1));
        }
        RowValues values = new RowValues(row.line());
        radiation(values, Column.GHI, row, 13);
        radiation(values, Column.DNI, row, 14);
        radiation(values, Column.DHI, row, 15);
        coded(values, Column.AIR, row, 6, 99.9);
        coded(values, Column.HUMIDITY, row, 8, 999);
        coded(values, Column.WIND, row, 21, 999);
        return new RawHour(
                row.line(),
                row.whole(0, "Year"),
                row.whole(1, "Month"),
                row.whole(2, "Day"),
                row.whole(3, "Hour"),
                values.all());
    }

    private static void radiation(RowValues values, Column column, CommaRow row, int at) {
        coded(values, column, row, at, 9999);
    }

    private static void coded(RowValues values, Column column, CommaRow row, int at, double missingFrom) {
        double value = row.number(at, column.words());
        values.with(column, value, value >= missingFrom);
    }
}
