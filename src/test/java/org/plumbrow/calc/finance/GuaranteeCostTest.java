package org.plumbrow.calc.finance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.plumbrow.calc.Normal;
import org.plumbrow.calc.Range;
import org.plumbrow.calc.energy.YearSpread;

/**
 * A promise over its years and the payouts of a book. Held against the loss function of the normal distribution,
 * E[(K - X)+] = (K - mu) Phi(z) + s phi(z) with z = (K - mu) / s (any text on stock keeping, the "newsvendor" loss; the
 * formula is written down here from memory and played), and against example F9 of the published values.
 */
class GuaranteeCostTest {

    private static final YearSpread F9 = new YearSpread(0.04, 0);

    private static GuaranteeTerms terms(int years, int settled, double fading, double free, boolean weather) {
        return new GuaranteeTerms(0.135, 0, years, settled, fading, free, weather);
    }

    private static double loss(double k, double mu, double sigma) {
        double z = (k - mu) / sigma;
        return (k - mu) * Normal.share(z) + sigma * Normal.density(z);
    }

    @Test
    void theFirstYearIsTheWorkedExampleF9() {
        GuaranteeCost cost = new GuaranteeCost(133_000, 0, F9, 126_350, terms(1, 1, 0, 0, true));
        assertThat(cost.confidence()).isCloseTo(1 - 0.1056, within(0.00005));
        assertThat(Cents.of(cost.expectedPayoutUsd())).isEqualTo("36.33");
        assertThat(cost.payoutInBadYearUsd(10))
                .isCloseTo(0.135 * (126_350 - 133_000 * (1 - 0.04 * 1.2815516)), within(1e-3));
    }

    @Test
    void promisesByConfidenceAreThoseOfF8InWholeKilowattHours() {
        GuaranteeTerms each = terms(10, 1, 0.005, 0, true);
        assertThat(GuaranteeCost.promiseAt(133_000, F9, each, 0.9)).isEqualTo(126_182);
        assertThat(GuaranteeCost.promiseAt(133_000, F9, each, 0.5)).isEqualTo(133_000);
        YearSpread usual = YearSpread.USUAL;
        assertThat(GuaranteeCost.promiseAt(133_000, usual, terms(10, 1, 0, 0, false), 0.9))
                .as("without the weather only the error of the estimate counts")
                .isEqualTo(Math.floor(133_000 * (1 - 0.05 * 1.2815515655)));
    }

    @Test
    void eachYearIsALossFunctionOfItsOwnFigures() {
        GuaranteeTerms flat = new GuaranteeTerms(0.12, 0.02, 10, 1, 0.0, 0.05, true);
        YearSpread spread = new YearSpread(0.03, 0.05);
        GuaranteeCost cost = new GuaranteeCost(100_000, 0.005, spread, 95_000, flat);
        double sum = 0;
        for (int year = 1; year <= 10; year++) {
            double mu = 100_000 * Math.pow(0.995, year - 1);
            double owed = loss(0.95 * 95_000, mu, mu * Math.hypot(0.03, 0.05)) * 0.12 * Math.pow(1.02, year - 1);
            assertThat(cost.year(year).risk().expectedPayoutUsd()).isCloseTo(owed, within(1e-6));
            sum += owed;
        }
        assertThat(cost.settlements()).hasSize(10);
        assertThat(cost.expectedPayoutUsd()).isCloseTo(sum, within(1e-6));
        assertThat(cost.expectedPayoutAYearUsd()).isCloseTo(sum / 10, within(1e-6));
        assertThat(cost.year(10).risk().expectedPayoutUsd())
                .as("a promise that does not fade with the system costs more each year")
                .isGreaterThan(cost.year(1).risk().expectedPayoutUsd());
    }

    @Test
    void yearsSettledTogetherMakeUpForOneAnother() {
        YearSpread spread = new YearSpread(0.04, 0.02);
        GuaranteeCost each = new GuaranteeCost(100_000, 0, spread, 97_000, terms(10, 1, 0, 0, true));
        GuaranteeCost three = new GuaranteeCost(100_000, 0, spread, 97_000, terms(10, 3, 0, 0, true));
        assertThat(three.settlements())
                .extracting(GuaranteeCost.Settlement::last)
                .containsExactly(3, 6, 9, 10);
        double sigma = 300_000 * Math.sqrt(0.02 * 0.02 + 0.04 * 0.04 / 3);
        assertThat(three.settlements().get(0).risk().expectedShortfallKwh())
                .isCloseTo(loss(291_000, 300_000, sigma), within(1e-6));
        assertThat(three.expectedPayoutUsd()).isLessThan(each.expectedPayoutUsd());
    }

    @Test
    void allYearsTogetherAgreeWithPlayingThem() {
        YearSpread spread = new YearSpread(0.03, 0.05);
        GuaranteeCost cost = new GuaranteeCost(100_000, 0.005, spread, 96_000, terms(10, 1, 0.005, 0, true));
        Random random = new Random(4);
        int rounds = 100_000;
        double sum = 0;
        double square = 0;
        for (int round = 0; round < rounds; round++) {
            double error = 0.05 * random.nextGaussian();
            double usd = 0;
            for (int year = 1; year <= 10; year++) {
                double fade = Math.pow(0.995, year - 1);
                double kwh = 100_000 * fade * (1 + error + 0.03 * random.nextGaussian());
                usd += 0.135 * Math.max(0, 96_000 * fade - kwh);
            }
            sum += usd;
            square += usd * usd;
        }
        double mean = sum / rounds;
        assertThat(cost.expectedPayoutUsd()).isCloseTo(mean, within(0.02 * mean));
        assertThat(cost.sigmaPayoutUsd()).isCloseTo(Math.sqrt(square / rounds - mean * mean), within(0.02 * mean));
    }

    @Test
    void termsOutsideTheirLimitsAreRefused() {
        assertThatThrownBy(() -> terms(0, 1, 0, 0, true)).isInstanceOf(Range.OutOfRange.class);
        assertThatThrownBy(() -> terms(5, 6, 0, 0, true)).isInstanceOf(Range.OutOfRange.class);
        assertThatThrownBy(() -> terms(5, 1, 0.06, 0, true)).isInstanceOf(Range.OutOfRange.class);
        assertThatThrownBy(() -> terms(5, 1, 0, 0.4, true)).isInstanceOf(Range.OutOfRange.class);
    }

    private static GuaranteeBook oneFarm(double correlation, double model) {
        return new GuaranteeBook(
                List.of(new GuaranteeBook.Contract("farm", 133_000, 126_350, 0.04, model, 0.135)), correlation);
    }

    @Test
    void playedYearsOfOneSiteAreTheNormalDistributionItself() {
        PlayedPayouts played = PlayedPayouts.ofYears(oneFarm(1, 0), PlayedPayouts.ROUNDS);
        GuaranteeRisk risk = new GuaranteeRisk(133_000, 133_000 * 0.04, 126_350, 0.135);
        assertThat(played.meanUsd()).isCloseTo(36.33, within(0.05));
        for (double oneIn : new double[] {10, 20, 100}) {
            assertThat(played.quantileUsd(1 - 1 / oneIn)).isCloseTo(risk.payoutInBadYearUsd(oneIn), within(1.0));
        }
        assertThat(played.quantileUsd(0.5)).isZero();
        assertThat(played.shareThatOwes()).isCloseTo(0.1056, within(0.0002));
        assertThat(java.util.Arrays.stream(played.shares(500, 10)).sum()).isCloseTo(1, within(1e-9));
    }

    @Test
    void playedBadYearsAgreeWithTheirMeanAndSpread() {
        GuaranteeBook book = oneFarm(0.7, 0.05);
        PlayedPayouts played = PlayedPayouts.ofBadYears(book, 10, 40_000);
        GuaranteeBook.BadYear bad = book.badYear(10);
        assertThat(played.meanUsd()).isCloseTo(bad.expectedUsd(), within(0.02 * bad.expectedUsd()));
        assertThat(played.quantileUsd(0.9)).isGreaterThan(bad.expectedUsd());
        assertThat(played.quantileUsd(0.1)).isLessThan(bad.expectedUsd());
    }

    @Test
    void theTwoPartsOfTheSpreadAreTheWhole() {
        GuaranteeBook.Spread spread = oneFarm(0.7, 0.05).spread();
        assertThat(spread.sigmaUsd()).isCloseTo(Math.hypot(spread.sharedUsd(), spread.ownUsd()), within(1e-9));
        assertThat(oneFarm(0, 0.05).spread().sharedUsd()).isCloseTo(0, within(1e-3));
        assertThat(oneFarm(1, 0).spread().ownUsd()).isCloseTo(0, within(1e-9));
    }

    @Test
    void ofThreeHundredSitesTheBookIsPlayedWithinAPagesTime() {
        List<GuaranteeBook.Contract> many = java.util.stream.IntStream.range(0, 300)
                .mapToObj(at -> new GuaranteeBook.Contract("s" + at, 100_000, 97_000, 0.03, 0.05, 0.12))
                .toList();
        GuaranteeBook book = new GuaranteeBook(many, 0.7);
        PlayedPayouts.ofYears(book, 1000);
        long before = System.nanoTime();
        PlayedPayouts played = PlayedPayouts.ofYears(book, PlayedPayouts.ROUNDS);
        GuaranteeBook.Spread spread = book.spread();
        long millis = (System.nanoTime() - before) / 1_000_000;
        System.out.println("300 sites, " + PlayedPayouts.ROUNDS + " played years and the spread: " + millis + " ms");
        assertThat(millis).isLessThan(5_000);
        assertThat(played.meanUsd()).isCloseTo(book.expectedPayoutUsd(), within(0.01 * book.expectedPayoutUsd()));
        assertThat(spread.sharedUsd()).isGreaterThan(spread.ownUsd());
    }
}
