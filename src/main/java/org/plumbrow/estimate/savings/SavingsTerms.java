package org.plumbrow.estimate.savings;

import java.math.BigDecimal;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.plumbrow.calc.Range;
import org.plumbrow.calc.energy.YearSpread;
import org.plumbrow.calc.finance.Incentive;
import org.plumbrow.calc.finance.Loan;
import org.plumbrow.calc.finance.SavingsCase;
import org.plumbrow.calc.finance.SavingsRange;

/**
 * What a project's savings are worked out with, beside its yield, its use and its price.
 *
 * @param years looked at
 * @param ratePerKwh what a bought kWh costs in year 1, USD
 * @param escalationPercent rise of that rate and of the fixed charges, a year
 * @param exportPerKwh credit for a kWh given to the utility in year 1, USD
 * @param fixedBeforeUsd fixed charges a month without the system
 * @param fixedAfterUsd the same with it
 * @param degradationPercent fading of the production, a year
 * @param upkeepUsd in year 1
 * @param discountPercent of money to come, a year
 * @param confidencePercent 90: the low production is exceeded in nine cases of ten
 * @param apartPercent how much slower or faster prices may rise, a year
 * @param loan null where none is taken
 */
public record SavingsTerms(
        int years,
        double ratePerKwh,
        double escalationPercent,
        double exportPerKwh,
        double exportEscalationPercent,
        double fixedBeforeUsd,
        double fixedAfterUsd,
        double degradationPercent,
        double upkeepUsd,
        double upkeepEscalationPercent,
        double discountPercent,
        double confidencePercent,
        double apartPercent,
        List<Incentive> incentives,
        @Nullable Loan loan) {

    static final Range YEARS = new Range(1, SavingsCase.YEARS.most(), "years");
    static final Range RISE = new Range(-5, 15, "% a year");
    static final Range FIXED = new Range(0, 10_000, "USD a month");
    static final Range DEGRADATION = new Range(0, 5, "% a year");
    static final Range UPKEEP = new Range(0, 10_000_000, "USD a year");
    static final Range DISCOUNT = new Range(-5, 50, "% a year");
    static final Range CONFIDENCE = new Range(50, 99, "%");
    static final Range APART = new Range(0, 5, "% a year");

    private static final double USUAL_RATE = 0.16;
    private static final double USUAL_UPKEEP_PER_KW_DC = 15;
    private static final int MONTHS = 12;

    public SavingsTerms {
        incentives = List.copyOf(incentives);
    }

    /** Common practice, no source; the fading is the published median (Jordan and Kurtz). */
    static SavingsTerms usual(double kwDc) {
        double upkeep = Math.rint(USUAL_UPKEEP_PER_KW_DC * kwDc);
        return new SavingsTerms(30, USUAL_RATE, 2, USUAL_RATE, 2, 0, 0, 0.5, upkeep, 2, 5, 90, 1, List.of(), null);
    }

    /** 0.057 of 5.7 %, without the noise of a division. */
    static double share(BigDecimal percent) {
        return percent.movePointLeft(2).doubleValue();
    }

    static BigDecimal percent(double share) {
        return BigDecimal.valueOf(share).movePointRight(2);
    }

    /**
     * @param onSiteShare of the production, 0 to 1
     * @param priceUsd 0 where it is not known
     */
    SavingsRange range(double kwh, double onSiteShare, double priceUsd, YearSpread spread) {
        SavingsCase likely = new SavingsCase(
                years,
                new SavingsCase.Production(kwh, degradationPercent / 100, onSiteShare),
                new SavingsCase.Tariff(
                        ratePerKwh,
                        escalationPercent / 100,
                        exportPerKwh,
                        exportEscalationPercent / 100,
                        MONTHS * (fixedAfterUsd - fixedBeforeUsd)),
                new SavingsCase.Costs(priceUsd, upkeepUsd, upkeepEscalationPercent / 100),
                incentives,
                discountPercent / 100);
        return SavingsRange.of(likely, spread, confidencePercent / 100, apartPercent / 100);
    }
}
