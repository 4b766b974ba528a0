package org.plumbrow.calc.finance;

import java.util.List;
import java.util.stream.DoubleStream;
import org.plumbrow.calc.energy.YearSpread;

/**
 * What a promise of the first year costs by the confidence behind it.
 *
 * @param confidence 0.9: the production exceeds the promise in nine years of ten
 * @param promise the promise it makes
 * @param risk its chance, mean payout and spread in one year
 */
public record PromiseChoice(double confidence, ProductionPromise promise, GuaranteeRisk risk) {

    /** The usual ones: an even chance, three of four, nine of ten, nineteen of twenty, ninety-nine of a hundred. */
    private static final double[] CONFIDENCES = {0.5, 0.75, 0.9, 0.95, 0.99};

    /**
     * @param estimateKwh P50 of the first year
     * @param degradation fading of each later year
     * @param ratePerKwh what a missing kWh costs, USD
     * @return from P50 to P99
     */
    public static List<PromiseChoice> of(double estimateKwh, double degradation, YearSpread spread, double ratePerKwh) {
        return DoubleStream.of(CONFIDENCES)
                .mapToObj(confidence -> at(
                        confidence,
                        ProductionPromise.atConfidence(estimateKwh, degradation, spread, confidence),
                        spread,
                        ratePerKwh))
                .toList();
    }

    private static PromiseChoice at(
            double confidence, ProductionPromise promise, YearSpread spread, double ratePerKwh) {
        double sigma = promise.estimateKwh() * spread.share(1);
        return new PromiseChoice(
                confidence,
                promise,
                new GuaranteeRisk(promise.estimateKwh(), sigma, promise.guaranteedKwh(1), ratePerKwh));
    }
}
