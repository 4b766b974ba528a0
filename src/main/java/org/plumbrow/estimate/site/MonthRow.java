package org.plumbrow.estimate.site;

import java.time.Month;
import java.time.format.TextStyle;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * A month of a table whose rows carry their bar.
 *
 * @param bar width of the bar on the table's common scale, "62.5%"
 */
record MonthRow(String month, double value, String bar) {

    /** @param values January to December */
    static List<MonthRow> of(List<Double> values) {
        double most = values.stream().mapToDouble(Double::doubleValue).max().orElse(0);
        List<MonthRow> rows = new ArrayList<>();
        for (Month month : Month.values()) {
            double value = values.get(month.ordinal());
            rows.add(new MonthRow(name(month), value, width(value, most)));
        }
        return rows;
    }

    static String name(Month month) {
        return month.getDisplayName(TextStyle.SHORT, Locale.US);
    }

    static String width(double value, double most) {
        return String.format(Locale.ROOT, "%.1f%%", most > 0 ? Math.max(0, 100 * value / most) : 0);
    }
}
