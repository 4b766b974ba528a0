package org.plumbrow.calc;

/** The standard normal distribution. */
public final class Normal {

    private static final double TAIL = 38;
    private static final int HALVINGS = 80;

    private Normal() {}

    /** Density at z. */
    public static double density(double z) {
        return Math.exp(-z * z / 2) / Math.sqrt(2 * Math.PI);
    }

    /**
     * Share below z, to about 1e-15 near the middle: 1/2 + density(z) (z + z^3/3 + z^5/(3 5) + ...). Source: Marsaglia,
     * Journal of Statistical Software 11(4), 2004; beyond |z| = 7 the continued fraction of the tail.
     */
    public static double share(double z) {
        if (Math.abs(z) > 7) {
            return z < 0 ? tail(-z) : 1 - tail(z);
        }
        double sum = z;
        double term = z;
        for (int i = 3; Math.abs(term) > 1e-18; i += 2) {
            term *= z * z / i;
            sum += term;
        }
        return 0.5 + sum * density(z);
    }

    private static double tail(double z) {
        double fraction = z;
        for (int i = 60; i >= 1; i--) {
            fraction = z + i / fraction;
        }
        return density(z) / fraction;
    }

    /**
     * The z below which this share lies, by halving; 0.9 gives 1.28155.
     *
     * @param share more than 0, less than 1
     */
    public static double quantile(double share) {
        if (!(share > 0 && share < 1)) {
            throw new IllegalArgumentException("share " + share + " is not between 0 and 1");
        }
        double low = -TAIL;
        double high = TAIL;
        for (int i = 0; i < HALVINGS; i++) {
            double middle = (low + high) / 2;
            if (share(middle) < share) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return (low + high) / 2;
    }
}
