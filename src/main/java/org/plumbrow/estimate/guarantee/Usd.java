package org.plumbrow.estimate.guarantee;

import java.util.Locale;

/** Whole dollars as people write them: such figures are no more exact than that. */
final class Usd {

    private Usd() {}

    static String of(double amount) {
        if (amount > 0 && amount < 1) {
            return "less than $1";
        }
        return String.format(Locale.US, "$%,.0f", amount);
    }
}
