package org.plumbrow.calc.finance;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.plumbrow.calc.energy.sun.HourOfYear;

/**
 * What of the production the site uses itself and what it gives away.
 *
 * @param basis what stood beside what
 * @param months January to December
 */
public record SelfUse(Basis basis, List<Month> months) {

    /** Hour by hour is what happens in the wires; month by month is what a monthly settlement sees, and counts less as given. */
    public enum Basis {
        HOURS("hour by hour"),
        MONTHS("month by month: within a month what was given counts against what was taken");

        private final String words;

        Basis(String words) {
            this.words = words;
        }

        public String words() {
            return words;
        }
    }

    /** kWh of one month; on-site and exported make the production, on-site and imported the use. */
    public record Month(double useKwh, double productionKwh, double onSiteKwh) {
        public double exportedKwh() {
            return productionKwh - onSiteKwh;
        }

        public double importedKwh() {
            return useKwh - onSiteKwh;
        }
    }

    public SelfUse {
        months = List.copyOf(months);
    }

    /**
     * @param useKwh {@code double[8760]}, standard time
     * @param productionKwh {@code double[8760]}, standard time
     */
    public static SelfUse byHour(double[] useKwh, double[] productionKwh) {
        double[][] sums = new double[3][HourOfYear.MONTHS];
        for (int hour = 0; hour < HourOfYear.HOURS; hour++) {
            int month = HourOfYear.monthOf(hour) - 1;
            sums[0][month] += useKwh[hour];
            sums[1][month] += productionKwh[hour];
            sums[2][month] += onSite(useKwh[hour], productionKwh[hour]);
        }
        return new SelfUse(Basis.HOURS, months(sums));
    }

    /**
     * @param useKwh {@code double[12]}
     * @param productionKwh {@code double[12]}
     */
    public static SelfUse byMonth(double[] useKwh, double[] productionKwh) {
        double[] onSite = new double[HourOfYear.MONTHS];
        Arrays.setAll(onSite, month -> onSite(useKwh[month], productionKwh[month]));
        return new SelfUse(Basis.MONTHS, months(new double[][] {useKwh, productionKwh, onSite}));
    }

    private static double onSite(double use, double production) {
        return Math.max(0, Math.min(use, production));
    }

    private static List<Month> months(double[][] sums) {
        List<Month> months = new ArrayList<>();
        for (int month = 0; month < HourOfYear.MONTHS; month++) {
            months.add(new Month(sums[0][month], sums[1][month], sums[2][month]));
        }
        return months;
    }

    public double useKwh() {
        return months.stream().mapToDouble(Month::useKwh).sum();
    }

    public double productionKwh() {
        return months.stream().mapToDouble(Month::productionKwh).sum();
    }

    public double onSiteKwh() {
        return months.stream().mapToDouble(Month::onSiteKwh).sum();
    }

    public double exportedKwh() {
        return productionKwh() - onSiteKwh();
    }

    /** Share of the production used on site, 0 to 1; empty without production. */
    public Optional<Double> onSiteShare() {
        return productionKwh() > 0 ? Optional.of(onSiteKwh() / productionKwh()) : Optional.empty();
    }

    /** Production over use of the year; empty without use. */
    public Optional<Double> offset() {
        return useKwh() > 0 ? Optional.of(productionKwh() / useKwh()) : Optional.empty();
    }
}
