package org.plumbrow.calc.finance;

import java.util.ArrayList;
import java.util.List;
import org.plumbrow.calc.energy.YearSpread;

/**
 * One promise over all its years. In year y the system is expected to make E (1 - f)^(y-1), the promise stands at
 * P (1 - d)^(y-1), and what is missing below (1 - free) of it is owed at the year's rate; years settled together are owed
 * at the rate of the last of them. Weather differs from year to year; an error of the estimate comes back every year.
 *
 * @param estimateKwh E, P50 of the first year
 * @param systemFading f, by which the production is expected to fall each later year
 * @param spread of the production, all of it
 * @param promisedKwh P, promised for the first year
 */
public record GuaranteeCost(
        double estimateKwh, double systemFading, YearSpread spread, double promisedKwh, GuaranteeTerms terms) {

    /** @throws org.plumbrow.calc.Range.OutOfRange if a value is outside its range or not a number */
    public GuaranteeCost {
        ProductionPromise.ESTIMATE.check("estimate", estimateKwh);
        ProductionPromise.DEGRADATION.check("fading of the system", systemFading);
        ProductionPromise.ESTIMATE.check("promised production", promisedKwh);
    }

    /** The whole kWh that one year exceeds with this confidence, 0.9 = in nine years of ten. */
    public static double promiseAt(double estimateKwh, YearSpread spread, GuaranteeTerms terms, double confidence) {
        return Math.floor(terms.carried(spread).exceededKwh(estimateKwh, confidence, 1));
    }

    /** Chance that the first year exceeds the promise: 0.9 when it stands at P90. */
    public double confidence() {
        return 1 - new GuaranteeRisk(estimateKwh, sigmaKwh(), promisedKwh, terms.ratePerKwh()).chance();
    }

    private double sigmaKwh() {
        return estimateKwh * terms.carried(spread).share(1);
    }

    /**
     * One settlement.
     *
     * @param first year, 1 for the first of the promise
     * @param last the same where each year is settled by itself
     * @param promisedKwh of these years together
     * @param risk of these years together; its promised kWh are those below which something is owed
     */
    public record Settlement(int first, int last, double promisedKwh, GuaranteeRisk risk) {}

    /** A year by itself, settled or not. @param year 1 for the first */
    public Settlement year(int year) {
        return settlement(year, year);
    }

    /** In order; the last may be of fewer years than the others. */
    public List<Settlement> settlements() {
        List<Settlement> all = new ArrayList<>();
        for (int first = 1; first <= terms.years(); first += terms.settledYears()) {
            all.add(settlement(first, Math.min(terms.years(), first + terms.settledYears() - 1)));
        }
        return all;
    }

    private Settlement settlement(int first, int last) {
        double expected = 0;
        double squares = 0;
        double promised = 0;
        for (int year = first; year <= last; year++) {
            double kwh = Growth.inYear(estimateKwh, 1 - systemFading, year);
            expected += kwh;
            squares += kwh * kwh;
            promised += Growth.inYear(promisedKwh, 1 - terms.fading(), year);
        }
        YearSpread carried = terms.carried(spread);
        double sigma = Math.hypot(carried.modelShare() * expected, carried.yearShare() * Math.sqrt(squares));
        double owedBelow = (1 - terms.freeShare()) * promised;
        return new Settlement(first, last, promised, new GuaranteeRisk(expected, sigma, owedBelow, terms.rate(last)));
    }

    /** Mean payout of all years together, USD. */
    public double expectedPayoutUsd() {
        return settlements().stream()
                .mapToDouble(each -> each.risk().expectedPayoutUsd())
                .sum();
    }

    public double expectedPayoutAYearUsd() {
        return expectedPayoutUsd() / terms.years();
    }

    /** Standard deviation of the payout of all years together, USD: the error of the estimate is shared by all of them. */
    public double sigmaPayoutUsd() {
        double model = spread.modelShare();
        List<GuaranteeBook.Contract> years =
                settlements().stream().map(each -> ofOneSettlement(each, model)).toList();
        return new GuaranteeBook(years, 1).spread().sigmaUsd();
    }

    /** What is the same in all years stands where a book has the weather that all sites share. */
    private static GuaranteeBook.Contract ofOneSettlement(Settlement settlement, double model) {
        GuaranteeRisk risk = settlement.risk();
        double all = risk.expectedKwh() > 0 ? risk.sigmaKwh() / risk.expectedKwh() : 0;
        double own = Math.sqrt(Math.max(0, all * all - model * model));
        return new GuaranteeBook.Contract("", risk.expectedKwh(), risk.guaranteedKwh(), model, own, risk.ratePerKwh());
    }

    /** Owed for the first year when it is as bad as one in so many, settled by itself, USD. */
    public double payoutInBadYearUsd(double oneIn) {
        return year(1).risk().payoutInBadYearUsd(oneIn);
    }
}
