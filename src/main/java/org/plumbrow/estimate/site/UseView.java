package org.plumbrow.estimate.site;

import java.time.Month;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.plumbrow.calc.finance.SelfUse;

/**
 * The use of a site as its page shows it.
 *
 * @param kwh of the year; null while months are missing
 * @param rows the season: use beside production; empty while nothing is known
 * @param self null without a yield
 */
record UseView(
        List<UseMeter> meters,
        @Nullable Double kwh,
        int monthsMissing,
        List<String> said,
        List<Row> rows,
        @Nullable SelfUse self) {

    /**
     * One month.
     *
     * @param useKwh null where it is not known
     * @param knownPercent of its hours
     * @param productionKwh null without a yield; so are on-site and exported
     * @param useBar @param productionBar widths on one scale for both
     */
    record Row(
            String month,
            @Nullable Double useKwh,
            double knownPercent,
            @Nullable Double productionKwh,
            @Nullable Double onSiteKwh,
            @Nullable Double exportedKwh,
            String useBar,
            String productionBar) {}

    static UseView of(List<UseMeter> meters, UseYears.@Nullable SiteUse use, @Nullable SelfUse self) {
        if (use == null) {
            return new UseView(meters, null, 12, List.of(), List.of(), null);
        }
        int missing = (int)
                use.kwhByMonth().stream().filter(java.util.Objects::isNull).count();
        return new UseView(meters, use.kwhOfYear(), missing, use.said(), rows(use, self), self);
    }

    private static List<Row> rows(UseYears.SiteUse use, @Nullable SelfUse self) {
        double most =
                use.kwhOrZero().stream().mapToDouble(Double::doubleValue).max().orElse(0);
        if (self != null) {
            most = Math.max(
                    most,
                    self.months().stream()
                            .mapToDouble(SelfUse.Month::productionKwh)
                            .max()
                            .orElse(0));
        }
        List<Row> rows = new ArrayList<>();
        for (Month month : Month.values()) {
            rows.add(row(month, use, self, most));
        }
        return rows;
    }

    private static Row row(Month month, UseYears.SiteUse use, @Nullable SelfUse self, double most) {
        int at = month.ordinal();
        Double kwh = use.kwhByMonth().get(at);
        SelfUse.Month of = self == null ? null : self.months().get(at);
        boolean known = kwh != null && of != null;
        return new Row(
                MonthRow.name(month),
                kwh,
                100 * use.knownShareByMonth().get(at),
                of == null ? null : of.productionKwh(),
                known ? of.onSiteKwh() : null,
                known ? of.exportedKwh() : null,
                MonthRow.width(kwh == null ? 0 : kwh, most),
                MonthRow.width(of == null ? 0 : of.productionKwh(), most));
    }
}
