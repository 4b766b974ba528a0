package org.plumbrow.calc.forecast;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.plumbrow.calc.duration.Spread;

class UncertaintyTest {

    @Test
    void workHasItsThreePointsWhereTheTableSaysSo() {
        var work = new Uncertainty.Measured(new Spread(4, 6, 10));
        assertThat(work.share(4)).isCloseTo(0.10, within(1e-9));
        assertThat(work.share(6)).isCloseTo(0.50, within(1e-9));
        assertThat(work.share(10)).isCloseTo(0.90, within(1e-9));
        assertThat(work.share(0)).isZero();
    }

    /** With equal ratios on both sides it is the log-normal itself: mean m exp(s²/2), s = ln(high/m)/1.2816. */
    @Test
    void ofEqualRatiosItIsTheLogNormal() {
        var work = new Uncertainty.Measured(new Spread(5, 10, 20));
        double s = Math.log(2) / 1.2815515655446004;
        assertThat(mean(work, 400)).isCloseTo(10 * Math.exp(s * s / 2), within(0.01));
    }

    @Test
    void workWithoutSpreadIsCertain() {
        var work = new Uncertainty.Measured(new Spread(3, 3, 3));
        assertThat(work.share(2.99)).isZero();
        assertThat(work.share(3)).isEqualTo(1);
    }

    /** Mean (least + 4 usual + most)/6; the share below the usual value for shapes 2 and 4 by hand: 1 - .75^4(1 + 4·.25) . */
    @ParameterizedTest
    @CsvSource({"5, 15, 45", "2, 3, 10", "10, 25, 90", "3, 3, 9", "3, 9, 9"})
    void aWaitHasThePertMean(double least, double usual, double most) {
        var wait = new Uncertainty.OfWait(new Spread(least, usual, most));
        assertThat(mean(wait, most + 1)).isCloseTo((least + 4 * usual + most) / 6, within(0.01));
        assertThat(wait.share(least)).isZero();
        assertThat(wait.share(most)).isEqualTo(1);
    }

    /** Beta(2, 4) up to x: 1 - (1-x)^4 (1 + 4x), from integrating 20 x (1-x)³. */
    @Test
    void aWaitFollowsTheBetaDistribution() {
        var wait = new Uncertainty.OfWait(new Spread(0, 10, 40));
        for (double x : new double[] {0.1, 0.25, 0.5, 0.8}) {
            assertThat(wait.share(40 * x)).isCloseTo(1 - Math.pow(1 - x, 4) * (1 + 4 * x), within(1e-12));
        }
    }

    private static double mean(Uncertainty uncertainty, double most) {
        double sum = 0;
        double step = 0.001;
        for (double at = 0; at < most; at += step) {
            sum += (1 - uncertainty.share(at + step / 2)) * step;
        }
        return sum;
    }
}
