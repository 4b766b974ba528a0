package org.plumbrow.estimate.site;

import java.util.IntSummaryStatistics;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.plumbrow.calc.energy.weather.WeatherYear.Origin;

/** From which years a weather file took its hours: a typical year is put together from months of several. For showing only. */
final class YearsOfFile {

    private static final Pattern EPW = Pattern.compile("^(\\d{4}),\\d{1,2},\\d{1,2},");
    private static final Pattern TMY3 = Pattern.compile("^\\d{1,2}/\\d{1,2}/(\\d{4}),");
    private static final Pattern TM2 = Pattern.compile("^ (\\d{2})[ \\d]\\d[ \\d]\\d");

    private YearsOfFile() {}

    /** @return "1976 to 2004", "2019", or empty where it is not told */
    static String of(Origin origin, String text) {
        Pattern row = switch (origin) {
            case TMY3_CSV -> TMY3;
            case TM2 -> TM2;
            default -> EPW;
        };
        IntSummaryStatistics years = text.lines()
                .map(row::matcher)
                .filter(Matcher::find)
                .mapToInt(found -> whole(found.group(1)))
                .filter(year -> year >= 1900 && year <= 2100)
                .summaryStatistics();
        if (years.getCount() == 0) {
            return "";
        }
        return years.getMin() == years.getMax()
                ? String.valueOf(years.getMin())
                : years.getMin() + " to " + years.getMax();
    }

    private static int whole(String digits) {
        int year = Integer.parseInt(digits);
        return digits.length() == 2 ? 1900 + year : year;
    }
}
