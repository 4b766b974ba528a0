package org.plumbrow.calc.duration;

import java.text.DecimalFormat;
import java.text.DecimalFormatSymbols;
import java.util.Locale;

/** How the core's own formulas write a number: grouped, at most two decimals, none that are zero. */
final class Figures {

    private Figures() {}

    static String of(double value) {
        return new DecimalFormat("#,##0.##", DecimalFormatSymbols.getInstance(Locale.US)).format(value);
    }

    static String of(Spread days) {
        return "%s (%s to %s)".formatted(of(days.typical()), of(days.low()), of(days.high()));
    }
}
