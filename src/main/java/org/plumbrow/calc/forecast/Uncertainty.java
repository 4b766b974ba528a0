package org.plumbrow.calc.forecast;

import org.apache.commons.statistics.distribution.BetaDistribution;
import org.plumbrow.calc.Normal;
import org.plumbrow.calc.duration.Spread;

/** How long something may take, as a distribution over days. */
public sealed interface Uncertainty {

    Spread days();

    /** More days than this are not played. */
    double most();

    /** Share of the cases that take at most so many days, 0 to 1. */
    double share(double atMostDays);

    /**
     * Work, or a wait that was measured: low, typical and high are its 10, 50 and 90 of 100 points, with a log-normal half on either side of the
     * middle (two log-normal distributions with one median). Without a low above 0 the lower half is a straight line.
     */
    record Measured(Spread days) implements Uncertainty {

        /** z below which 90 of 100 lie. */
        private static final double TENTH = 1.2815515655446004;

        private static final double TIMES_HIGH = 20;

        @Override
        public double most() {
            return TIMES_HIGH * days.high();
        }

        @Override
        public double share(double atMostDays) {
            double middle = days.typical();
            if (atMostDays >= middle) {
                return days.high() == middle
                        ? 1
                        : Normal.share(TENTH * Math.log(atMostDays / middle) / Math.log(days.high() / middle));
            }
            if (atMostDays <= 0 || days.low() == middle) {
                return 0;
            }
            return days.low() > 0
                    ? Normal.share(TENTH * Math.log(atMostDays / middle) / Math.log(middle / days.low()))
                    : atMostDays / middle / 2;
        }
    }

    /**
     * A wait: least, usual and most as a PERT beta distribution, with shapes 1 + 4 (usual - least) / (most - least) and
     * 1 + 4 (most - usual) / (most - least), mean (least + 4 usual + most) / 6. Source: Malcolm, Roseboom, Clark, Fazar,
     * Operations Research 7(5), 1959, with the weight 4 of its mean.
     */
    record OfWait(Spread days) implements Uncertainty {

        @Override
        public double most() {
            return days.high();
        }

        @Override
        public double share(double atMostDays) {
            double width = days.high() - days.low();
            if (atMostDays >= days.high()) {
                return 1;
            }
            if (atMostDays <= days.low()) {
                return 0;
            }
            double alpha = 1 + 4 * (days.typical() - days.low()) / width;
            double beta = 1 + 4 * (days.high() - days.typical()) / width;
            return BetaDistribution.of(alpha, beta).cumulativeProbability((atMostDays - days.low()) / width);
        }
    }
}
