package org.plumbrow.calc.outage;

import java.util.List;

/**
 * How much longer or shorter outages of one kind (same utility, same kind of work) have been than expected.
 *
 * <p>Rule: each finished outage gives the ratio of its minutes to the minutes expected of it, held between
 * {@value #LEAST} and {@value #MOST} so that one bad day does not rule. The factor is the mean of these ratios and of
 * {@value #WEIGHT} outages that took exactly what was expected: ({@value #WEIGHT} × 1 + Σ ratio) / ({@value #WEIGHT} + n).
 * One outage moves it by a quarter of the way, nine by three quarters. This is the mean of a normal model whose known
 * spread within a kind is √{@value #WEIGHT} times the spread between kinds; that the weight is {@value #WEIGHT} is common
 * practice for so few figures, no source. Limits: it says nothing of the spread, and knows only what was logged.
 *
 * @param n finished outages that it comes from
 * @param factor by which expected minutes are multiplied; 1 without any
 */
public record LearnedOutage(int n, double factor) {

    /** How many outages that took what was expected it is worth to know nothing. */
    public static final int WEIGHT = 3;

    static final double LEAST = 0.25;
    static final double MOST = 4;

    /**
     * One finished outage.
     *
     * @param expected typical minutes that were expected of it, at least 1
     * @param actual minutes from power off to the last load back, at least 0
     */
    public record Finished(int expected, int actual) {
        public Finished {
            if (expected < 1 || actual < 0) {
                throw new IllegalArgumentException(expected + " expected, " + actual + " taken");
            }
        }

        /** Actual by expected, held between the limits. */
        public double ratio() {
            return Math.max(LEAST, Math.min(MOST, (double) actual / expected));
        }
    }

    public static LearnedOutage of(List<Finished> finished) {
        double sum = finished.stream().mapToDouble(Finished::ratio).sum();
        return new LearnedOutage(finished.size(), (WEIGHT + sum) / (WEIGHT + finished.size()));
    }

    /** What to expect instead of these minutes, to the whole minute. */
    public int minutes(int expected) {
        return (int) Math.round(expected * factor);
    }
}
