package org.plumbrow.calc.finance;

import java.util.List;
import org.plumbrow.calc.Range;

/**
 * What savings are made from.
 *
 * @param years 0 to 40
 * @param discount of money to come, a year, -0.05 to 0.5
 */
public record SavingsCase(
        int years, Production production, Tariff tariff, Costs costs, List<Incentive> incentives, double discount) {

    public static final Range YEARS = new Range(0, 40, "years");
    public static final Range DISCOUNT = new Range(-0.05, 0.5, "a year");
    public static final Range SHARE = new Range(0, 1, "");
    public static final Range ESCALATION = new Range(-0.1, 0.2, "a year");
    public static final Range RATE = new Range(0, 5, "USD/kWh");
    public static final Range MONEY = new Range(0, 100_000_000, "USD");
    public static final Range ADDED_FIXED = new Range(-1_000_000, 1_000_000, "USD a year");
    public static final Range KWH = new Range(0, 1_000_000_000, "kWh");

    /** @throws Range.OutOfRange if a value is outside its range or not a number */
    public SavingsCase {
        YEARS.check("years", years);
        DISCOUNT.check("discount", discount);
        incentives = List.copyOf(incentives);
    }

    /**
     * @param firstYearKwh of year 1
     * @param degradation fading of each later year, 0 to 1; 0.005 is the published median
     * @param onSiteShare share that the site uses itself, 0 to 1
     */
    public record Production(double firstYearKwh, double degradation, double onSiteShare) {
        public Production {
            KWH.check("production of the first year", firstYearKwh);
            SHARE.check("degradation", degradation);
            SHARE.check("share used on site", onSiteShare);
        }

        double kwh(int year) {
            return Growth.inYear(firstYearKwh, 1 - degradation, year);
        }
    }

    /**
     * @param ratePerKwh what a kWh used on site saves, USD, year 1
     * @param escalation of that rate and of the fixed charges, a year
     * @param exportPerKwh credit for a kWh given, USD, year 1
     * @param exportEscalation of that credit, a year
     * @param addedFixedUsd charges a year that only come with the system; negative where it takes some away
     */
    public record Tariff(
            double ratePerKwh, double escalation, double exportPerKwh, double exportEscalation, double addedFixedUsd) {
        public Tariff {
            RATE.check("rate", ratePerKwh);
            ESCALATION.check("escalation of the rate", escalation);
            RATE.check("export credit", exportPerKwh);
            ESCALATION.check("escalation of the export credit", exportEscalation);
            ADDED_FIXED.check("added fixed charges", addedFixedUsd);
        }

        /** Every kWh, used or given, is worth the same; no fixed charges. */
        public static Tariff even(double ratePerKwh, double escalation) {
            return new Tariff(ratePerKwh, escalation, ratePerKwh, escalation, 0);
        }
    }

    /**
     * @param priceUsd of the system
     * @param operatingUsd a year, year 1
     * @param operatingEscalation a year
     */
    public record Costs(double priceUsd, double operatingUsd, double operatingEscalation) {
        public Costs {
            MONEY.check("price", priceUsd);
            MONEY.check("operating cost", operatingUsd);
            ESCALATION.check("escalation of the operating cost", operatingEscalation);
        }

        public static Costs price(double usd) {
            return new Costs(usd, 0, 0);
        }
    }

    /** The same with another production and another rise of prices. */
    SavingsCase changed(double kwhFactor, double moreEscalation) {
        return new SavingsCase(
                years,
                new Production(production.firstYearKwh * kwhFactor, production.degradation, production.onSiteShare),
                new Tariff(
                        tariff.ratePerKwh,
                        tariff.escalation + moreEscalation,
                        tariff.exportPerKwh,
                        tariff.exportEscalation + moreEscalation,
                        tariff.addedFixedUsd),
                costs,
                incentives,
                discount);
    }
}
