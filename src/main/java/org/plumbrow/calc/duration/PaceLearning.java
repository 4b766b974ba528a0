package org.plumbrow.calc.duration;

import java.util.List;
import org.apache.commons.statistics.distribution.TDistribution;

/**
 * How fast a crew is, learned from its finished work: normal-gamma conjugate updating with weights.
 *
 * <p>Units done a crew-day are taken as normal about the crew's own pace, work of d crew-days with a variance d times
 * smaller. The table counts as five crew-days of evidence (trade practice), both for the pace and for the scatter:
 * kappa0 = 5, mu0 = the typical rate, alpha0 = 5/2, and beta0 such that the 80 % interval of the pace without any work is
 * as wide as the table's low to high. Then, with Q units in D crew-days in n works,
 *
 * <pre>
 * pace   = (5 typical + Q) / (5 + D)
 * alpha  = (5 + n) / 2
 * beta   = beta0 + sum of d (q/d - Q/D)^2 / 2 + 5 D (Q/D - typical)^2 / (2 (5 + D))
 * within = t(2 alpha, 90 %) sqrt(beta / (alpha (5 + D)))   to either side, 80 %
 * </pre>
 *
 * Source: DeGroot, Optimal Statistical Decisions, 1970, section 9.6, and Murphy, Conjugate Bayesian Analysis of the
 * Gaussian Distribution, 2007, section 3 (both from memory). The table's two sides may differ in width; the interval
 * keeps their ratio, which is no part of the source. Limits: no trend in time, no difference between sites.
 */
public final class PaceLearning {

    /** Crew-days of evidence that the table stands for. */
    public static final double TABLE_CREW_DAYS = 5;

    private static final double NINE_OF_TEN = 0.9;

    /** A pace is not believed to be less than this share of its mean. */
    private static final double LEAST_SHARE = 0.1;

    /** A table without any spread counts as one with so much of its typical rate to either side, to divide by. */
    private static final double LEAST_WIDTH = 0.01;

    private PaceLearning() {}

    /**
     * @param prior the table, or what is known of other crews
     * @return without work the prior itself
     */
    public static LearnedPace of(WorkRate prior, List<DoneWork> works) {
        double quantity = works.stream().mapToDouble(DoneWork::quantity).sum();
        double crewDays = works.stream().mapToDouble(DoneWork::crewDays).sum();
        if (works.isEmpty()) {
            return new LearnedPace(
                    prior, prior.typical(), prior.low(), prior.high(), 0, 0, 0, prior.low(), prior.high());
        }
        double pace = (TABLE_CREW_DAYS * prior.typical() + quantity) / (TABLE_CREW_DAYS + crewDays);
        double scatter = scatter(prior, works, quantity / crewDays, crewDays);
        double known = scatter * Math.sqrt(TABLE_CREW_DAYS / (TABLE_CREW_DAYS + crewDays));
        double next =
                scatter * Math.sqrt((1 / (TABLE_CREW_DAYS + crewDays) + 1 / TABLE_CREW_DAYS) / (2 / TABLE_CREW_DAYS));
        return new LearnedPace(
                prior,
                pace,
                below(prior, pace, known),
                pace + (prior.high() - prior.typical()) * known,
                quantity,
                crewDays,
                works.size(),
                below(prior, pace, next),
                pace + (prior.high() - prior.typical()) * next);
    }

    private static double below(WorkRate prior, double pace, double share) {
        return Math.max(LEAST_SHARE * pace, pace - (prior.typical() - prior.low()) * share);
    }

    /** How much wider days scatter by now than the table says: t times sigma, by the same of the table. */
    private static double scatter(WorkRate prior, List<DoneWork> works, double mean, double crewDays) {
        double width = Math.max((prior.high() - prior.low()) / 2, LEAST_WIDTH * prior.typical());
        double tableT = t(TABLE_CREW_DAYS);
        double beta0 = TABLE_CREW_DAYS * TABLE_CREW_DAYS / 2 * Math.pow(width / tableT, 2);
        double among = works.stream()
                .mapToDouble(work -> work.crewDays() * Math.pow(work.quantity() / work.crewDays() - mean, 2))
                .sum();
        double away = TABLE_CREW_DAYS * crewDays * Math.pow(mean - prior.typical(), 2) / (TABLE_CREW_DAYS + crewDays);
        double alpha = (TABLE_CREW_DAYS + works.size()) / 2;
        double beta = beta0 + (among + away) / 2;
        return t(2 * alpha) * Math.sqrt(beta / alpha) / (tableT * Math.sqrt(beta0 / (TABLE_CREW_DAYS / 2)));
    }

    private static double t(double degreesOfFreedom) {
        return TDistribution.of(degreesOfFreedom).inverseCumulativeProbability(NINE_OF_TEN);
    }
}
