package org.plumbrow.calc.finance;

import org.plumbrow.calc.Normal;
import org.plumbrow.calc.Range;

/**
 * What one year of one promise may cost. Production is normal with mean mu and standard deviation s: with z = (G - mu) / s
 * the mean shortfall is (G - mu) Phi(z) + s phi(z), its mean square ((G - mu)^2 + s^2) Phi(z) + (G - mu) s phi(z).
 *
 * @param expectedKwh mean of the year's production
 * @param sigmaKwh its standard deviation, 0 or more
 * @param guaranteedKwh promised
 * @param ratePerKwh what a missing kWh costs, USD
 */
public record GuaranteeRisk(double expectedKwh, double sigmaKwh, double guaranteedKwh, double ratePerKwh) {

    /** @throws Range.OutOfRange if a value cannot be */
    public GuaranteeRisk {
        ProductionPromise.ESTIMATE.check("expected production", expectedKwh);
        ProductionPromise.ESTIMATE.check("spread of production", sigmaKwh);
        ProductionPromise.ESTIMATE.check("promised production", guaranteedKwh);
        TrueUp.RATE.check("contract rate", ratePerKwh);
    }

    private double z() {
        return (guaranteedKwh - expectedKwh) / sigmaKwh;
    }

    /** Chance that the year falls short, 0 to 1. */
    public double chance() {
        if (sigmaKwh == 0) {
            return expectedKwh < guaranteedKwh ? 1 : 0;
        }
        return Normal.share(z());
    }

    /** Mean shortfall over all years, short ones and others, kWh. */
    public double expectedShortfallKwh() {
        if (sigmaKwh == 0) {
            return Math.max(0, guaranteedKwh - expectedKwh);
        }
        return (guaranteedKwh - expectedKwh) * Normal.share(z()) + sigmaKwh * Normal.density(z());
    }

    /** Standard deviation of the shortfall, kWh. */
    public double sigmaShortfallKwh() {
        if (sigmaKwh == 0) {
            return 0;
        }
        double short0 = guaranteedKwh - expectedKwh;
        double square =
                (short0 * short0 + sigmaKwh * sigmaKwh) * Normal.share(z()) + short0 * sigmaKwh * Normal.density(z());
        double mean = expectedShortfallKwh();
        return Math.sqrt(Math.max(0, square - mean * mean));
    }

    public double expectedPayoutUsd() {
        return ratePerKwh * expectedShortfallKwh();
    }

    public double sigmaPayoutUsd() {
        return ratePerKwh * sigmaShortfallKwh();
    }

    /** What is owed when the year is as bad as one in so many: 10 = the production exceeded in nine years of ten. */
    public double payoutInBadYearUsd(double oneIn) {
        double kwh = expectedKwh + sigmaKwh * Normal.quantile(1 / oneIn);
        return ratePerKwh * Math.max(0, guaranteedKwh - kwh);
    }
}
