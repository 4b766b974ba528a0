package org.plumbrow.calc.energy.weather;

import java.util.Locale;
import java.util.function.Function;
import java.util.regex.Pattern;

/** The formats that are read, each known by its first lines. */
enum WeatherFormat {
    EPW(EpwRows::read),
    TMY3_CSV(Tmy3Rows::read),
    NSRDB_CSV(NsrdbRows::read),
    TM2(Tm2Rows::read);

    private static final Pattern TM2_HEADER = Pattern.compile(
            " ?\\d{5} .{22} .{2} +[-+]?\\d+ [NS] [ \\d]\\d [ \\d]\\d [EW] [ \\d]{3} [ \\d]\\d +-?\\d+.*");
    private static final String CURE = "Bring an EPW, TMY3, NSRDB or TM2 file of one year.";

    private final Function<TextLines, RawYear> reader;

    WeatherFormat(Function<TextLines, RawYear> reader) {
        this.reader = reader;
    }

    RawYear read(TextLines lines) {
        return reader.apply(lines);
    }

    static WeatherFormat of(TextLines lines) {
        String first = lines.line(1);
        String second = lines.line(2).trim();
        if (first.startsWith("LOCATION")) {
            refuseOtherSeparator(first.substring("LOCATION".length()));
            return EPW;
        }
        if (second.startsWith("Date (MM/DD/YYYY)")) {
            refuseOtherSeparator(second.substring("Date (MM/DD/YYYY)".length()));
            return TMY3_CSV;
        }
        if (first.startsWith("Source,Location ID")) {
            return NSRDB_CSV;
        }
        if (TM2_HEADER.matcher(first).matches()) {
            return TM2;
        }
        throw new Unreadable(lines.count() == 0 ? 0 : 1, "This " + seemsToBe(lines) + ".", CURE);
    }

    private static void refuseOtherSeparator(String rest) {
        if (rest.startsWith(";") || rest.startsWith("\t")) {
            throw new Unreadable(
                    1,
                    "The cells are separated by %s.".formatted(rest.startsWith(";") ? "semicolons" : "tabs"),
                    "Bring the file as it was published, with commas between cells and points in numbers.");
        }
    }

    private static String seemsToBe(TextLines lines) {
        String first = lines.line(1).trim().toLowerCase(Locale.ROOT);
        if (lines.count() == 0) {
            return "file is empty";
        }
        if (first.startsWith("pk")) {
            return "seems to be a ZIP or a spreadsheet, still packed";
        }
        if (first.startsWith("<")) {
            return "seems to be a web page, not a weather file";
        }
        return "is none of the weather formats that are read";
    }
}
