package org.plumbrow.calc.energy.weather;

import java.util.ArrayList;
import java.util.List;
import org.plumbrow.calc.energy.sun.Place;

/**
 * NSRDB: a line of names and a line of values about the site, a line of column names, then rows with Year, Month, Day,
 * Hour 0 to 23 and Minute 30: the middle of the hour that begins then.
 */
final class NsrdbRows {

    private static final int HALF_PAST = 30;
    private static final String HALF_PAST_CURE =
            "Download the file with an interval of 60 minutes, stamped at half past, in local time.";

    private final int[] stamp;
    private final int[] at;

    private NsrdbRows(NamedColumns names) {
        this.stamp = new int[] {
            names.need("the year", "year"),
            names.need("the month", "month"),
            names.need("the day", "day"),
            names.need("the hour", "hour"),
            names.need("the minute", "minute")
        };
        this.at = new int[] {
            names.need(Column.GHI.words(), "ghi"),
            names.need(Column.DNI.words(), "dni"),
            names.need(Column.DHI.words(), "dhi"),
            names.need(Column.AIR.words(), "temperature", "air temperature"),
            names.find("relative humidity"),
            names.find("wind speed")
        };
    }

    static RawYear read(TextLines lines) {
        NamedColumns about = new NamedColumns(CommaRow.of(1, lines.line(1)));
        CommaRow site = CommaRow.of(2, lines.line(2));
        double zone = site.number(about.need("the time zone", "time zone"), "Time zone");
        int local = about.find("local time zone");
        if (local >= 0 && site.number(local, "Local time zone") != zone) {
            throw new Unreadable(2, "The hours are not those of the local clock.", HALF_PAST_CURE);
        }
        Place place = Places.checked(
                2,
                site.number(about.need("the latitude", "latitude"), "Latitude"),
                site.number(about.need("the longitude", "longitude"), "Longitude"),
                site.number(about.need("the elevation", "elevation"), "Elevation"),
                zone);
        int id = about.find("location id");
        return new RawYear(WeatherYear.Origin.NSRDB_CSV, id < 0 ? "" : "NSRDB " + site.text(id), place, rows(lines));
    }

    private static List<RawHour> rows(TextLines lines) {
        NsrdbRows rows = new NsrdbRows(new NamedColumns(CommaRow.of(3, lines.line(3))));
        List<RawHour> hours = new ArrayList<>();
        for (int number = 4; number <= lines.count(); number++) {
            hours.add(rows.row(CommaRow.of(number, lines.line(number))));
        }
        return hours;
    }

    private RawHour row(CommaRow row) {
        int minute = row.whole(stamp[4], "Minute");
        if (minute != HALF_PAST) {
            throw new Unreadable(row.line(), "The minute is %d, 30 is expected.".formatted(minute), HALF_PAST_CURE);
        }
        RowValues values = new RowValues(row.line());
        for (Column column : Column.values()) {
            int place = at[column.ordinal()];
            if (place >= 0) {
                double value = row.number(place, column.words());
                values.with(column, value, value <= -999);
            }
        }
        return new RawHour(
                row.line(),
                row.whole(stamp[0], "Year"),
                row.whole(stamp[1], "Month"),
                row.whole(stamp[2], "Day"),
                row.whole(stamp[3], "Hour") + 1,
                values.all());
    }
}
