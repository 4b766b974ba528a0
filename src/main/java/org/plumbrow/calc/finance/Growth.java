package org.plumbrow.calc.finance;

/**
 * Sums of something that grows by the same ratio each year: year k of N is first q^(k-1), q = (1 + escalation)(1 -
 * degradation). Closed form of the sum: first (1 - q^N) / (1 - q), N first where q is 1.
 */
public final class Growth {

    private Growth() {}

    /** Yearly ratio of a price that rises and a production that fades. */
    public static double ratio(double escalation, double degradation) {
        return (1 + escalation) * (1 - degradation);
    }

    /** @param year 1 for the first */
    public static double inYear(double first, double ratio, int year) {
        return first * Math.pow(ratio, year - 1);
    }

    /** @param years 0 or more */
    public static double sum(double first, double ratio, int years) {
        if (ratio == 1 || years == 0) {
            return years * first;
        }
        return first * Math.expm1(years * Math.log1p(ratio - 1)) / (ratio - 1);
    }

    /** Worth today of that sum, each year discounted at its end. */
    public static double presentValue(double first, double ratio, double discount, int years) {
        return sum(first / (1 + discount), ratio / (1 + discount), years);
    }
}
