package org.plumbrow.calc.duration;

import static org.plumbrow.calc.duration.PaceLearning.TABLE_CREW_DAYS;

/**
 * What is known of a pace, in units a crew-day.
 *
 * @param prior what was known before
 * @param mean of the pace
 * @param low 90 of 100 it is faster
 * @param high 90 of 100 it is slower
 * @param quantity done, in the row's units
 * @param crewDays they took
 * @param works from which it was learned
 * @param nextLow pace that the next work of five crew-days reaches in 90 of 100, its own days' scatter included
 * @param nextHigh pace that it reaches in 10 of 100
 */
public record LearnedPace(
        WorkRate prior,
        double mean,
        double low,
        double high,
        double quantity,
        double crewDays,
        int works,
        double nextLow,
        double nextHigh) {

    static final String LEARNED = "learned";

    /** The row as a plan takes it: the table's own without work. */
    public WorkRate rate() {
        return works == 0
                ? prior
                : prior.paced(
                        nextLow,
                        mean,
                        nextHigh,
                        (LEARNED + " from %s crew-days of finished work; the table counts as %s")
                                .formatted(Figures.of(crewDays), Figures.of(TABLE_CREW_DAYS)));
    }

    /** The sum, line by line. */
    public String formula() {
        return "(%s × %s + %s) ÷ (%s + %s) = %s %s a crew-day"
                .formatted(
                        Figures.of(TABLE_CREW_DAYS),
                        Figures.of(prior.typical()),
                        Figures.of(quantity),
                        Figures.of(TABLE_CREW_DAYS),
                        Figures.of(crewDays),
                        Figures.of(mean),
                        prior.unit());
    }
}
