package org.plumbrow.calc.finance;

import org.plumbrow.calc.Normal;
import org.plumbrow.calc.Range;
import org.plumbrow.calc.energy.YearSpread;

/**
 * Kilowatt-hours promised for each year.
 *
 * @param estimateKwh P50 of the first year
 * @param degradation fading of each later year, 0 to 0.05
 * @param share of the estimate that is promised, 0.5 to 1.2; 0.85 to 1 is usual
 */
public record ProductionPromise(double estimateKwh, double degradation, double share) {

    public static final Range ESTIMATE = new Range(0, 1_000_000_000, "kWh");
    public static final Range DEGRADATION = new Range(0, 0.05, "a year");
    public static final Range SHARE = new Range(0.3, 1.2, "of the estimate");

    /** @throws Range.OutOfRange if a value is outside its range or not a number */
    public ProductionPromise {
        ESTIMATE.check("estimate", estimateKwh);
        DEGRADATION.check("degradation", degradation);
        SHARE.check("promised share", share);
    }

    /** Promises what is exceeded in one year with this confidence: 0.9 = in nine years of ten. */
    public static ProductionPromise atConfidence(
            double estimateKwh, double degradation, YearSpread spread, double confidence) {
        return new ProductionPromise(estimateKwh, degradation, 1 - Normal.quantile(confidence) * spread.share(1));
    }

    /** @param year 1 for the first */
    public double guaranteedKwh(int year) {
        return share * estimatedKwh(year);
    }

    public double estimatedKwh(int year) {
        return Growth.inYear(estimateKwh, 1 - degradation, year);
    }
}
