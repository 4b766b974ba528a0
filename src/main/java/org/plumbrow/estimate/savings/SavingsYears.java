package org.plumbrow.estimate.savings;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.plumbrow.calc.finance.Savings;
import org.plumbrow.calc.finance.SavingsRange;

/**
 * The years as the page's tables show them: whole dollars, and on one common scale the sum since the purchase with its
 * range.
 *
 * @param zero where the scale has nothing, "32.5%"
 * @param rows the purchase first
 */
record SavingsYears(String zero, List<Row> rows) {

    /**
     * One year; the purchase is year 0 and only has its sums.
     *
     * @param since everything since the purchase, which counts negative
     * @param bar @param width of the likely sum @param from @param to ends of its range
     */
    record Row(
            int year,
            double kwh,
            BigDecimal onSite,
            BigDecimal export,
            BigDecimal fixed,
            BigDecimal upkeep,
            BigDecimal incentives,
            BigDecimal net,
            BigDecimal since,
            BigDecimal sinceLow,
            BigDecimal sinceHigh,
            String bar,
            String width,
            String from,
            String to) {}

    static SavingsYears of(SavingsRange range) {
        List<Savings> all = List.of(range.low(), range.likely(), range.high());
        double least = 0;
        double most = 0;
        for (Savings one : all) {
            least = Math.min(least, -one.upfrontUsd());
            most = Math.max(most, -one.upfrontUsd());
            for (Savings.Year year : one.years()) {
                least = Math.min(least, year.cumulativeUsd());
                most = Math.max(most, year.cumulativeUsd());
            }
        }
        Scale scale = new Scale(least, Math.max(most, least + 1));
        double purchase = -range.likely().upfrontUsd();
        List<Row> rows = new ArrayList<>();
        rows.add(row(new Savings.Year(0, 0, 0, 0, 0, 0, 0, purchase), purchase, purchase, scale));
        for (int at = 0; at < range.likely().years().size(); at++) {
            rows.add(row(
                    range.likely().years().get(at),
                    range.low().years().get(at).cumulativeUsd(),
                    range.high().years().get(at).cumulativeUsd(),
                    scale));
        }
        return new SavingsYears(scale.at(0), rows);
    }

    private record Scale(double least, double most) {
        String at(double usd) {
            return percent((usd - least) / (most - least));
        }

        String length(double usd) {
            return percent(Math.abs(usd) / (most - least));
        }

        private static String percent(double share) {
            return String.format(Locale.ROOT, "%.2f%%", 100 * share);
        }
    }

    private static Row row(Savings.Year year, double low, double high, Scale scale) {
        double since = year.cumulativeUsd();
        return new Row(
                year.year(),
                year.kwh(),
                whole(year.onSiteUsd()),
                whole(year.exportUsd()),
                whole(-year.fixedUsd()),
                whole(-year.operatingUsd()),
                whole(year.incentivesUsd()),
                whole(year.netUsd()),
                whole(since),
                whole(low),
                whole(high),
                scale.at(Math.min(0, since)),
                scale.length(since),
                scale.at(low),
                scale.at(high));
    }

    /** Whole dollars, half up. */
    static BigDecimal whole(double usd) {
        return BigDecimal.valueOf(usd).setScale(0, RoundingMode.HALF_UP);
    }
}
