package org.plumbrow.calc.finance;

import java.util.Arrays;
import java.util.SplittableRandom;
import java.util.random.RandomGenerator;
import org.plumbrow.calc.Normal;

/**
 * Payouts of a book in many played years, from the least to the most: what sums and spreads do not say, as most years owe
 * little and a few owe much. The shared weather is laid evenly over its chances, each site's own part is drawn. The same
 * book gives the same figures, as the draws begin from one number.
 */
public final class PlayedPayouts {

    /** Enough that the payout of one year in a hundred is known to about 3 %. */
    public static final int ROUNDS = 10_000;

    private static final long BEGINNING = 20_270_301;

    private final double[] sortedUsd;

    private PlayedPayouts(double[] usd) {
        Arrays.sort(usd);
        sortedUsd = usd;
    }

    /** Years as they come. */
    public static PlayedPayouts ofYears(GuaranteeBook book, int rounds) {
        Site[] sites = sites(book);
        RandomGenerator random = new SplittableRandom(BEGINNING);
        double[] usd = new double[rounds];
        for (int round = 0; round < rounds; round++) {
            usd[round] = payout(sites, Normal.quantile((round + 0.5) / rounds), random);
        }
        return new PlayedPayouts(usd);
    }

    /** Years whose shared weather is as bad as one in so many. */
    public static PlayedPayouts ofBadYears(GuaranteeBook book, double oneIn, int rounds) {
        GuaranteeBook.ONE_IN.check("one year in", oneIn);
        Site[] sites = sites(book);
        RandomGenerator random = new SplittableRandom(BEGINNING);
        double shared = Normal.quantile(1 / oneIn);
        double[] usd = new double[rounds];
        for (int round = 0; round < rounds; round++) {
            usd[round] = payout(sites, shared, random);
        }
        return new PlayedPayouts(usd);
    }

    /** @param marginKwh expected less promised @param sharedKwh for one standard deviation of shared weather @param ownKwh of its own */
    private record Site(double marginKwh, double sharedKwh, double ownKwh, double ratePerKwh) {}

    private static Site[] sites(GuaranteeBook book) {
        double r = book.correlation();
        return book.contracts().stream()
                .map(each -> new Site(
                        each.expectedKwh() - each.guaranteedKwh(),
                        each.expectedKwh() * each.yearShare() * Math.sqrt(r),
                        each.expectedKwh() * Math.hypot(each.yearShare() * Math.sqrt(1 - r), each.modelShare()),
                        each.ratePerKwh()))
                .toArray(Site[]::new);
    }

    private static double payout(Site[] sites, double shared, RandomGenerator random) {
        double usd = 0;
        for (Site site : sites) {
            double over = site.marginKwh + site.sharedKwh * shared + site.ownKwh * random.nextGaussian();
            usd += over < 0 ? -over * site.ratePerKwh : 0;
        }
        return usd;
    }

    /** The payout that this share of the years does not exceed, USD. @param share 0 to 1 */
    public double quantileUsd(double share) {
        double at = Math.max(0, Math.min(sortedUsd.length - 1.0, share * sortedUsd.length - 0.5));
        int below = (int) at;
        int above = Math.min(below + 1, sortedUsd.length - 1);
        return sortedUsd[below] + (at - below) * (sortedUsd[above] - sortedUsd[below]);
    }

    public double meanUsd() {
        return Arrays.stream(sortedUsd).average().orElse(0);
    }

    /** Share of the years that owe something, 0 to 1. */
    public double shareThatOwes() {
        return Arrays.stream(sortedUsd).filter(usd -> usd > 0).count() / (double) sortedUsd.length;
    }

    /**
     * Share of the years in each of some equal steps of payout; what is beyond the last counts to it.
     *
     * @param mostUsd end of the last step, more than 0
     */
    public double[] shares(double mostUsd, int steps) {
        double[] shares = new double[steps];
        for (double usd : sortedUsd) {
            int step = (int) Math.min(steps - 1.0, usd / mostUsd * steps);
            shares[step] += 1.0 / sortedUsd.length;
        }
        return shares;
    }
}
