package org.plumbrow.calc.energy.weather;

/**
 * How clear and cloudy days share a month whose mean clearness is known.
 * <p>F(K) = (e^(g Kmin) - e^(g K)) / (e^(g Kmin) - e^(g Kmax)), Kmin = 0.05, Kmax = 0.6313 + 0.267 k - 11.9 (k -
 * 0.75)^8, g = -1.498 + (1.184 x - 27.182 e^(-1.5 x)) / (Kmax - Kmin), x = (Kmax - Kmin) / (Kmax - k). Source: Bendt,
 * Collares-Pereira and Rabl, Solar Energy 27(1), 1981, with the fit of g by Herzog (1985), as in Knight, Klein and
 * Duffie, Solar Energy 46(2), 1991.
 */
final class BendtDays {

    private static final double DULLEST = 0.05;
    private static final double MOST_MEAN = 0.8;
    /** A stride without a common factor with 28, 30 or 31 strews clear days among dull ones, every day once. */
    private static final int STRIDE = 11;

    private BendtDays() {}

    /**
     * @param meanClearness the month's, 0 to 1; taken as at most 0.8, at least 0.1
     * @param days 28, 30 or 31
     * @return {@code double[days]}, daily clearness in the order of the days
     */
    static double[] of(double meanClearness, int days) {
        double mean = Math.max(2 * DULLEST, Math.min(MOST_MEAN, meanClearness));
        double clearest = 0.6313 + 0.267 * mean - 11.9 * Math.pow(mean - 0.75, 8);
        double span = clearest - DULLEST;
        double x = span / (clearest - mean);
        double g = -1.498 + (1.184 * x - 27.182 * Math.exp(-1.5 * x)) / span;
        double[] clearness = new double[days];
        for (int day = 0; day < days; day++) {
            int rank = day * STRIDE % days;
            clearness[day] = atShare((rank + 0.5) / days, g, clearest);
        }
        return clearness;
    }

    private static double atShare(double share, double g, double clearest) {
        double dull = Math.exp(g * DULLEST);
        return Math.log(dull - share * (dull - Math.exp(g * clearest))) / g;
    }
}
