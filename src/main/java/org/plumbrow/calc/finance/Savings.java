package org.plumbrow.calc.finance;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Savings over the years, row by row, and the figures made of them.
 *
 * @param asked what they are made from
 * @param upfrontUsd price less what comes with the purchase
 * @param years one row a year
 */
public record Savings(SavingsCase asked, double upfrontUsd, List<Year> years) {

    private static final double LOWEST_RATE = -0.99;
    private static final double HIGHEST_RATE = 10;
    private static final int HALVINGS = 200;

    /**
     * One year, USD.
     *
     * @param onSiteUsd saved by what the site uses itself
     * @param exportUsd credited for what it gives
     * @param fixedUsd charges that come with the system
     * @param operatingUsd cost of running it
     * @param cumulativeUsd since the purchase, which counts negative
     */
    public record Year(
            int year,
            double kwh,
            double onSiteUsd,
            double exportUsd,
            double fixedUsd,
            double operatingUsd,
            double incentivesUsd,
            double cumulativeUsd) {

        /** Change of the electricity bill. */
        public double billUsd() {
            return onSiteUsd + exportUsd - fixedUsd;
        }

        public double netUsd() {
            return billUsd() - operatingUsd + incentivesUsd;
        }
    }

    public Savings {
        years = List.copyOf(years);
    }

    public static Savings of(SavingsCase asked) {
        double price = asked.costs().priceUsd();
        double upfront = price - incentives(asked, 0, 0);
        List<Year> rows = new ArrayList<>();
        double cumulative = -upfront;
        for (int year = 1; year <= asked.years(); year++) {
            Year row = row(asked, year, cumulative);
            rows.add(row);
            cumulative = row.cumulativeUsd();
        }
        return new Savings(asked, upfront, rows);
    }

    private static Year row(SavingsCase asked, int year, double before) {
        SavingsCase.Tariff tariff = asked.tariff();
        double kwh = asked.production().kwh(year);
        double share = asked.production().onSiteShare();
        double rise = Growth.inYear(1, 1 + tariff.escalation(), year);
        double exportRise = Growth.inYear(1, 1 + tariff.exportEscalation(), year);
        Year row = new Year(
                year,
                kwh,
                kwh * share * tariff.ratePerKwh() * rise,
                kwh * (1 - share) * tariff.exportPerKwh() * exportRise,
                tariff.addedFixedUsd() * rise,
                Growth.inYear(asked.costs().operatingUsd(), 1 + asked.costs().operatingEscalation(), year),
                incentives(asked, year, kwh),
                0);
        return new Year(
                year,
                kwh,
                row.onSiteUsd,
                row.exportUsd,
                row.fixedUsd,
                row.operatingUsd,
                row.incentivesUsd,
                before + row.netUsd());
    }

    private static double incentives(SavingsCase asked, int year, double kwh) {
        return asked.incentives().stream()
                .mapToDouble(each -> each.usd(year, asked.costs().priceUsd(), kwh))
                .sum();
    }

    /** Change of the bill over all years, unrounded. */
    public double billUsd() {
        return years.stream().mapToDouble(Year::billUsd).sum();
    }

    /** What all years bring, before the purchase. */
    public double netUsd() {
        return years.stream().mapToDouble(Year::netUsd).sum();
    }

    /** Net cost over what the first year brings: years; empty when it brings nothing. */
    public Optional<Double> simplePaybackYears() {
        double first = years.isEmpty() ? 0 : years.get(0).netUsd();
        return first > 0 ? Optional.of(Math.max(0, upfrontUsd) / first) : Optional.empty();
    }

    /** Years until everything paid has come back, even within the year; empty when it does not. */
    public Optional<Double> paybackYears() {
        if (upfrontUsd <= 0) {
            return Optional.of(0.0);
        }
        return years.stream()
                .filter(year -> year.cumulativeUsd() >= 0)
                .findFirst()
                .map(year -> year.year() - year.cumulativeUsd() / year.netUsd());
    }

    /** Net present value at the discount asked, USD. */
    public double npvUsd() {
        return npvUsd(asked.discount());
    }

    double npvUsd(double discount) {
        double sum = -upfrontUsd;
        for (Year year : years) {
            sum += year.netUsd() / Math.pow(1 + discount, year.year());
        }
        return sum;
    }

    /** Internal rate of return, a year; empty when nothing is paid or it never comes back at any rate looked at. */
    public Optional<Double> irr() {
        double low = LOWEST_RATE;
        double high = HIGHEST_RATE;
        if (upfrontUsd <= 0 || npvUsd(low) < 0 || npvUsd(high) > 0) {
            return Optional.empty();
        }
        for (int halving = 0; halving < HALVINGS; halving++) {
            double middle = (low + high) / 2;
            if (npvUsd(middle) > 0) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return Optional.of((low + high) / 2);
    }

    /**
     * Levelised cost of a kWh: present value of purchase, running and fixed charges less incentives, over that of the kWh;
     * USD/kWh. Empty without production.
     */
    public Optional<Double> levelisedUsdPerKwh() {
        double cost = upfrontUsd;
        double kwh = 0;
        for (Year year : years) {
            double worth = Math.pow(1 + asked.discount(), -year.year());
            cost += (year.operatingUsd() + year.fixedUsd() - year.incentivesUsd()) * worth;
            kwh += year.kwh() * worth;
        }
        return kwh > 0 ? Optional.of(cost / kwh) : Optional.empty();
    }
}
