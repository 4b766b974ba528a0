package org.plumbrow.calc.leadtime;

import java.util.List;
import org.plumbrow.calc.duration.Spread;
import org.plumbrow.calc.duration.WaitTime;

/**
 * How long somebody takes, learned from past waits: normal-gamma updating of the logarithm of the days, as means of the
 * posterior.
 *
 * <p>Waits are taken as log-normal. The branch's table counts as k = 5 past waits (a choice, no source): the more answers
 * there are, the less of it is left. With the n days x and l = ln x,
 *
 * <pre>
 * m   = (k m0 + sum of l) / (k + n)
 * s^2 = (k s0^2 + sum of (l - mean l)^2 + k n (mean l - m0)^2 / (k + n)) / (k + n)
 * P50 = exp(m),  P80 = exp(m + 0.8416 s),  P10 = exp(m - 1.2816 s)
 * </pre>
 *
 * <p>A measured row of the table (10, 50 and 90 of 100) has m0 = ln P50 and s0 = ln(P90 / P10) / 2.5631. A row of least,
 * usual and most is a PERT beta: mean (a + 4 b + c) / 6 and variance (mean - a)(c - mean) / 7; m0 and s0 are those of the
 * log-normal with the same mean and variance. Without answers the result is that log-normal.
 *
 * <p>Source: Murphy, Conjugate Bayesian Analysis of the Gaussian Distribution, 2007, section 3 (from memory). Limits: no
 * trend in time, none of the seasons, nothing about waits that still go on; an answer on the same day counts as half a day.
 */
public final class LeadTimeLearning {

    /** Past waits that the table stands for. */
    public static final double TABLE_WAITS = 5;

    /** An answer on the day of the question, in days. */
    public static final double SAME_DAY = 0.5;

    private static final double Z80 = 0.8416212335729143;
    private static final double Z90 = 1.2815515655446004;

    private LeadTimeLearning() {}

    /** Of the logarithm of days. */
    private record LogNormal(double m, double s) {

        double at(double z) {
            return Math.exp(m + z * s);
        }
    }

    /** @param days from sent to received, each 0 or more, counted as the table counts */
    public static LearnedLeadTime of(WaitTime table, List<Double> days) {
        if (days.stream().anyMatch(one -> !(one >= 0) || one.isInfinite())) {
            throw new IllegalArgumentException("days of a wait are 0 or more: " + days);
        }
        LogNormal learned = learned(prior(table), days);
        return new LearnedLeadTime(
                table,
                learned.at(-Z90),
                learned.at(0),
                learned.at(Z80),
                learned.at(Z90),
                days.size(),
                days.stream().mapToDouble(Double::doubleValue).min().orElse(0),
                days.stream().mapToDouble(Double::doubleValue).max().orElse(0));
    }

    private static LogNormal learned(LogNormal prior, List<Double> days) {
        if (days.isEmpty()) {
            return prior;
        }
        int n = days.size();
        double[] logs = days.stream()
                .mapToDouble(one -> Math.log(Math.max(SAME_DAY, one)))
                .toArray();
        double mean = java.util.Arrays.stream(logs).sum() / n;
        double among = java.util.Arrays.stream(logs)
                .map(one -> (one - mean) * (one - mean))
                .sum();
        double all = TABLE_WAITS + n;
        double away = TABLE_WAITS * n * (mean - prior.m) * (mean - prior.m) / all;
        double m = (TABLE_WAITS * prior.m + n * mean) / all;
        return new LogNormal(m, Math.sqrt((TABLE_WAITS * prior.s * prior.s + among + away) / all));
    }

    private static LogNormal prior(WaitTime table) {
        Spread days = table.days();
        if (table.shape() == WaitTime.Shape.LOG_NORMAL) {
            return new LogNormal(
                    Math.log(Math.max(SAME_DAY, days.typical())),
                    Math.log(Math.max(SAME_DAY, days.high()) / Math.max(SAME_DAY / 2, days.low())) / (2 * Z90));
        }
        double mean = Math.max(SAME_DAY, days.mean());
        double variance = Math.max(0, (mean - days.low()) * (days.high() - mean) / 7);
        double squared = Math.log1p(variance / (mean * mean));
        return new LogNormal(Math.log(mean) - squared / 2, Math.sqrt(squared));
    }
}
