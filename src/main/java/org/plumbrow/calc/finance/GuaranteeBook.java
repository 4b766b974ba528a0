package org.plumbrow.calc.finance;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.plumbrow.calc.Normal;
import org.plumbrow.calc.Range;
import org.plumbrow.calc.energy.YearSpread;

/**
 * All promises of a branch together. One bad year hits all: a site's weather is W = sqrt(r) C + sqrt(1 - r) E, with C
 * shared by all sites, E its own and r the correlation between two sites; an error of an estimate is each site's own.
 * Sums over C are taken by Simpson's rule from -8 to 8.
 *
 * @param contracts the promises of one year
 * @param correlation of the weather of two sites, 0 to 1; 0.7 is usual for neighbours
 */
public record GuaranteeBook(List<Contract> contracts, double correlation) {

    public static final Range CORRELATION = new Range(0, 1, "");
    public static final Range ONE_IN = new Range(1.01, 1000, "years");

    private static final double FAR = 8;
    private static final int SLICES = 400;

    /** @throws Range.OutOfRange if the correlation is outside 0 to 1 */
    public GuaranteeBook {
        contracts = List.copyOf(contracts);
        CORRELATION.check("correlation of the weather", correlation);
    }

    /**
     * One promise in one year.
     *
     * @param name of the project
     * @param expectedKwh P50 of the year
     * @param guaranteedKwh promised
     * @param yearShare spread of the weather from year to year, share
     * @param modelShare spread of the estimate, share
     * @param ratePerKwh USD/kWh
     */
    public record Contract(
            String name,
            double expectedKwh,
            double guaranteedKwh,
            double yearShare,
            double modelShare,
            double ratePerKwh) {

        /** @throws Range.OutOfRange if a value cannot be */
        public Contract {
            ProductionPromise.ESTIMATE.check("expected production", expectedKwh);
            ProductionPromise.ESTIMATE.check("promised production", guaranteedKwh);
            YearSpread.SHARE.check("spread from year to year", yearShare);
            YearSpread.SHARE.check("spread of the estimate", modelShare);
            TrueUp.RATE.check("contract rate", ratePerKwh);
        }

        double sigmaKwh() {
            return expectedKwh * Math.hypot(yearShare, modelShare);
        }

        /** On its own, all its spread counted. */
        public GuaranteeRisk risk() {
            return new GuaranteeRisk(expectedKwh, sigmaKwh(), guaranteedKwh, ratePerKwh);
        }

        /** What is left of the risk when the shared weather is known. */
        GuaranteeRisk given(double shared, double correlation) {
            double mean = expectedKwh * (1 + yearShare * Math.sqrt(correlation) * shared);
            double own = expectedKwh * Math.hypot(yearShare * Math.sqrt(1 - correlation), modelShare);
            return new GuaranteeRisk(Math.max(0, mean), own, guaranteedKwh, ratePerKwh);
        }
    }

    /** What one project owes in a year. */
    public record Owed(String name, double usd) {}

    /**
     * A year whose shared weather is as bad as one in so many.
     *
     * @param expectedUsd owed by the whole book on average over such years
     * @param sigmaUsd spread around it, as sites still differ
     */
    public record BadYear(double oneIn, double expectedUsd, double sigmaUsd, List<Owed> contracts) {}

    /** Mean payout of a year, USD; does not depend on the correlation. */
    public double expectedPayoutUsd() {
        return contracts.stream()
                .mapToDouble(each -> each.risk().expectedPayoutUsd())
                .sum();
    }

    /**
     * How far payouts of single years lie apart, USD, and from what.
     *
     * @param sharedUsd by the weather that all sites share
     * @param ownUsd by each site's own weather and the error of its estimate
     */
    public record Spread(double sharedUsd, double ownUsd) {
        public double sigmaUsd() {
            return Math.hypot(sharedUsd, ownUsd);
        }
    }

    /** Standard deviation of the year's payout, in its two parts. */
    public Spread spread() {
        double mean = expectedPayoutUsd();
        double between = over(shared -> square(expectedGiven(shared) - mean));
        double within = over(this::varianceGiven);
        return new Spread(Math.sqrt(between), Math.sqrt(within));
    }

    /** Standard deviation of the year's payout, USD. */
    public double sigmaPayoutUsd() {
        return spread().sigmaUsd();
    }

    /**
     * Spread of the production of the whole book, as a share of its mean: var = sum p^2 (model^2 + year^2 (1 - r)) + r (sum
     * p year)^2.
     */
    public double sigmaProductionShare() {
        double own = 0;
        double shared = 0;
        double sum = 0;
        for (Contract each : contracts) {
            double model = each.expectedKwh * each.modelShare;
            double year = each.expectedKwh * each.yearShare;
            own += model * model + year * year * (1 - correlation);
            shared += year;
            sum += each.expectedKwh;
        }
        return sum > 0 ? Math.sqrt(own + correlation * shared * shared) / sum : 0;
    }

    /** What is owed if the shared weather is as bad as one year in so many, the book and each project. */
    public BadYear badYear(double oneIn) {
        ONE_IN.check("one year in", oneIn);
        double shared = Normal.quantile(1 / oneIn);
        List<Owed> owed = new ArrayList<>();
        contracts.forEach(each ->
                owed.add(new Owed(each.name, each.given(shared, correlation).expectedPayoutUsd())));
        return new BadYear(oneIn, expectedGiven(shared), Math.sqrt(varianceGiven(shared)), List.copyOf(owed));
    }

    private double expectedGiven(double shared) {
        return contracts.stream()
                .mapToDouble(each -> each.given(shared, correlation).expectedPayoutUsd())
                .sum();
    }

    private double varianceGiven(double shared) {
        return contracts.stream()
                .mapToDouble(each -> square(each.given(shared, correlation).sigmaPayoutUsd()))
                .sum();
    }

    /** Mean over the shared weather. */
    private static double over(DoubleUnaryOperator value) {
        double step = 2 * FAR / SLICES;
        double sum = 0;
        for (int slice = 0; slice <= SLICES; slice++) {
            double at = -FAR + slice * step;
            int weight = slice == 0 || slice == SLICES ? 1 : slice % 2 == 0 ? 2 : 4;
            sum += weight * Normal.density(at) * value.applyAsDouble(at);
        }
        return sum * step / 3;
    }

    private static double square(double value) {
        return value * value;
    }
}
