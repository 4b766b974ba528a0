package org.plumbrow.calc.finance;

import org.plumbrow.calc.Range;
import org.plumbrow.calc.energy.YearSpread;

/**
 * What a contract says of its promise of production, beside the kWh of the first year.
 *
 * @param ratePerKwh what a missing kWh costs in year 1, USD
 * @param escalation of that rate, a year
 * @param years for which the promise stands
 * @param settledYears years that are settled together, so that good ones make up for bad ones; 1 = each by itself
 * @param fading by which the promise itself falls each later year
 * @param freeShare of the promise that may be missing without payment; only what is missing beyond it is owed
 * @param carriesWeather false where the promise follows the light of the year, so that bad weather is the customer's
 */
public record GuaranteeTerms(
        double ratePerKwh,
        double escalation,
        int years,
        int settledYears,
        double fading,
        double freeShare,
        boolean carriesWeather) {

    public static final Range YEARS = new Range(1, 40, "years");
    public static final Range FREE = new Range(0, 0.3, "of the promise");

    /** @throws Range.OutOfRange if a value is outside its range or not a number */
    public GuaranteeTerms {
        TrueUp.RATE.check("contract rate", ratePerKwh);
        SavingsCase.ESCALATION.check("escalation of the rate", escalation);
        YEARS.check("years of the promise", years);
        new Range(1, years, "years").check("years settled together", settledYears);
        ProductionPromise.DEGRADATION.check("fading of the promise", fading);
        FREE.check("shortfall without payment", freeShare);
    }

    /** @param year 1 for the first */
    public double rate(int year) {
        return Growth.inYear(ratePerKwh, 1 + escalation, year);
    }

    /** What of the spread the promise carries. */
    public YearSpread carried(YearSpread spread) {
        return carriesWeather ? spread : new YearSpread(0, spread.modelShare());
    }
}
