package org.plumbrow.calc.forecast;

/**
 * How much is played.
 *
 * @param seed the same gives the same forecast
 * @param most runs, a multiple of {@link #ROUND}
 * @param stopEarly once every chance is known to within 2 points and every four-in-five date to within a day, at 95 %
 */
public record Effort(long seed, int most, boolean stopEarly) {

    /** Runs between two looks at how certain the figures are. */
    public static final int ROUND = 1_000;

    /** The usual: 10,000 runs know a chance to within one point. */
    public static final Effort USUAL = new Effort(1, 10_000, true);

    public Effort {
        if (most < ROUND || most % ROUND != 0) {
            throw new IllegalArgumentException("runs must be a multiple of " + ROUND + ": " + most);
        }
    }
}
