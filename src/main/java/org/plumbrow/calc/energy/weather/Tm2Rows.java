package org.plumbrow.calc.energy.weather;

import java.util.ArrayList;
import java.util.List;
import org.plumbrow.calc.energy.sun.Place;

/**
 * TM2: one line of station, then 8,760 rows of fixed columns, each line with one leading blank that some editors take
 * away. Latitude and longitude are degrees and minutes; temperature and wind are tenths.
 */
final class Tm2Rows {

    private static final int LEAST_LENGTH = 97;

    private Tm2Rows() {}

    static RawYear read(TextLines lines) {
        FixedRow header = FixedRow.of(1, lines.line(1));
        double latitude = header.number(38, 40, "Latitude") + header.number(41, 43, "Latitude") / 60;
        double longitude = header.number(46, 49, "Longitude") + header.number(50, 52, "Longitude") / 60;
        Place place = Places.checked(
                1,
                header.text(36, 37).equals("S") ? -latitude : latitude,
                header.text(44, 45).equals("W") ? -longitude : longitude,
                header.number(54, 58, "Elevation"),
                header.number(32, 35, "Time zone"));
        List<RawHour> hours = new ArrayList<>();
        for (int number = 2; number <= lines.count(); number++) {
            hours.add(row(FixedRow.of(number, lines.line(number))));
        }
        return new RawYear(WeatherYear.Origin.TM2, header.text(6, 28), place, hours);
    }

    private static RawHour row(FixedRow row) {
        if (row.text().length() < LEAST_LENGTH) {
            throw new Unreadable(
                    row.line(),
                    "%d characters, at least %d are expected."
                            .formatted(row.text().length(), LEAST_LENGTH),
                    "Bring the whole file; the last good line is %,d.".formatted(row.line() - 1));
        }
        RowValues values = new RowValues(row.line());
        coded(values, Column.GHI, row, 16, 20, 9999, 1);
        coded(values, Column.DNI, row, 22, 26, 9999, 1);
        coded(values, Column.DHI, row, 28, 32, 9999, 1);
        coded(values, Column.AIR, row, 66, 70, 9999, 10);
        coded(values, Column.HUMIDITY, row, 78, 81, 999, 1);
        coded(values, Column.WIND, row, 94, 97, 999, 10);
        return new RawHour(
                row.line(),
                1900 + (int) row.number(0, 2, "Year"),
                (int) row.number(2, 4, "Month"),
                (int) row.number(4, 6, "Day"),
                (int) row.number(6, 8, "Hour"),
                values.all());
    }

    private static void coded(
            RowValues values, Column column, FixedRow row, int from, int to, double missing, double parts) {
        double value = row.number(from, to, column.words());
        values.with(column, value / parts, value >= missing);
    }

    /** A line of fixed columns without its leading blank; columns count from 0. */
    private record FixedRow(int line, String text) {

        static FixedRow of(int line, String text) {
            return new FixedRow(line, text.startsWith(" ") ? text.substring(1) : text);
        }

        String text(int from, int to) {
            return text.substring(Math.min(from, text.length()), Math.min(to, text.length()))
                    .trim();
        }

        double number(int from, int to, String what) {
            String cell = text(from, to);
            try {
                return Integer.parseInt(cell);
            } catch (NumberFormatException e) {
                throw new Unreadable(
                        line,
                        "%s (characters %d to %d) reads \"%s\", a whole number is expected."
                                .formatted(what, from + 1, to, cell),
                        "Bring a whole file, with its fixed columns as they were.");
            }
        }
    }
}
