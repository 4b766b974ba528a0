package org.plumbrow.calc.energy;

import org.plumbrow.calc.Normal;
import org.plumbrow.calc.Range;

/**
 * How far years, and the estimate itself, may be off. Pxx = P50 (1 - z s), s = sqrt(model^2 + year^2 / n) for the mean of
 * n years: the weather averages out over years, an error of the estimate does not. A typical year is a P50; it holds no
 * spread of its own. Normal distribution.
 * <p>Usual figures, to be shown as assumptions: from year to year 3 % (2 % in dry sunny country, 4 % in cloudy), the model
 * 5 % with a weather file of the site. Source of the shares: Thevenard and Pelland, Solar Energy 91, 2013.
 *
 * @param yearShare standard deviation of the weather from year to year, 0 to 0.3
 * @param modelShare standard deviation of the estimate, 0 to 0.3
 */
public record YearSpread(double yearShare, double modelShare) {

    public static final Range SHARE = new Range(0, 0.3, "");
    public static final YearSpread USUAL = new YearSpread(0.03, 0.05);
    /** Where the year was made from monthly means. */
    public static final YearSpread FROM_MONTHLY_MEANS = new YearSpread(0.03, 0.07);

    /** @throws Range.OutOfRange if a share is outside its range or not a number */
    public YearSpread {
        SHARE.check("spread from year to year", yearShare);
        SHARE.check("spread of the estimate", modelShare);
    }

    /**
     * Standard deviation of the mean of some years, as a share.
     *
     * @param years 1 or more
     */
    public double share(int years) {
        if (years < 1) {
            throw new IllegalArgumentException("mean of " + years + " years");
        }
        return Math.sqrt(modelShare * modelShare + yearShare * yearShare / years);
    }

    /**
     * What is exceeded with this confidence.
     *
     * @param p50Kwh the estimate, kWh a year
     * @param confidence 0.5 gives the estimate itself, 0.9 what is exceeded in nine cases of ten
     * @param years one year, or the mean of several
     * @return kWh a year, not below 0
     */
    public double exceededKwh(double p50Kwh, double confidence, int years) {
        return Math.max(0, p50Kwh * (1 - Normal.quantile(confidence) * share(years)));
    }
}
