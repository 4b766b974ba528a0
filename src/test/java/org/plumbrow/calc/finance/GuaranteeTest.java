package org.plumbrow.calc.finance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.plumbrow.calc.Range;
import org.plumbrow.calc.energy.YearSpread;

/** Promises of production: what they settle at, and what they may cost, one by one and all together. */
class GuaranteeTest {

    private static final ProductionPromise FARM = new ProductionPromise(133_000, 0.005, 0.95);

    @Test
    void theGuaranteedKilowattHoursFadeWithTheModules() {
        double[] expected = {126_350.00, 125_718.25, 125_089.66, 124_464.21, 123_841.89};
        for (int year = 1; year <= 5; year++) {
            assertThat(FARM.guaranteedKwh(year)).isCloseTo(expected[year - 1], within(0.005));
        }
    }

    @Test
    void surplusInTheBankIsUsedFirst() {
        List<TrueUp.Year> years = new TrueUp(FARM, 0.135, 0).withBank(List.of(128_900.0, 121_000.0));
        assertThat(years.get(0).bankKwh()).isCloseTo(2550, within(1e-6));
        assertThat(years.get(1).shortfallKwh()).isCloseTo(2168.25, within(1e-6));
        assertThat(Cents.of(years.get(1).paymentUsd())).isEqualTo("292.71");
        assertThat(years.get(1).bankKwh()).isZero();
    }

    @Test
    void aPromiseCanFollowTheSunOfTheYear() {
        double adjusted = TrueUp.weatherAdjustedKwh(126_350, 1520, 1650);
        assertThat(adjusted).isCloseTo(116_395.15, within(0.005));
        assertThat(117_500 - adjusted).isCloseTo(1104.85, within(0.005));
    }

    @Test
    void aFirstPartYearCountsItsDays() {
        double[] months = {5.0, 6.2, 8.5, 9.8, 11.0, 11.3, 11.5, 10.6, 9.0, 7.3, 5.3, 4.5};
        double share = TrueUp.shareOfPartYear(months, LocalDate.of(2026, 5, 15), LocalDate.of(2026, 12, 31));
        assertThat(share).isCloseTo(0.655323, within(0.0000005));
        assertThat(FARM.guaranteedKwh(1) * share).isCloseTo(82_800.01, within(0.005));
        assertThat(TrueUp.shareOfPartYear(months, LocalDate.of(2026, 1, 1), LocalDate.of(2026, 12, 31)))
                .isCloseTo(1, within(1e-12));
    }

    @Test
    void theConfidenceDecidesWhatIsPromised() {
        YearSpread year = new YearSpread(0.04, 0);
        assertThat(ProductionPromise.atConfidence(133_000, 0.005, year, 0.9).guaranteedKwh(1))
                .isCloseTo(126_182, within(0.5));
        YearSpread all = new YearSpread(0.04, Math.sqrt(0.03 * 0.03 + 0.02 * 0.02 + 0.015 * 0.015));
        assertThat(ProductionPromise.atConfidence(133_000, 0.005, all, 0.9).guaranteedKwh(1))
                .isCloseTo(123_471, within(1.0));
        assertThat(ProductionPromise.atConfidence(133_000, 0.005, all, 0.5).share())
                .isCloseTo(1, within(1e-9));
    }

    @Test
    void chanceAndSizeOfAShortfallOfTheWorkedExample() {
        GuaranteeRisk year = new GuaranteeRisk(133_000, 133_000 * 0.04, 133_000 * 0.95, 0.135);
        assertThat(year.chance()).isCloseTo(0.1056, within(0.00005));
        assertThat(year.expectedShortfallKwh()).isCloseTo(269.1, within(0.05));
        assertThat(Cents.of(year.expectedPayoutUsd())).isEqualTo("36.33");
        GuaranteeRisk all = new GuaranteeRisk(133_000, 133_000 * 0.0559, 133_000 * 0.95, 0.135);
        assertThat(all.chance()).isCloseTo(0.1855, within(0.0001));
        assertThat(all.expectedShortfallKwh()).isCloseTo(754.4, within(0.6));
    }

    @Test
    void withoutSpreadNothingIsLeftToChance() {
        assertThat(new GuaranteeRisk(100, 0, 95, 1).expectedPayoutUsd()).isZero();
        assertThat(new GuaranteeRisk(100, 0, 105, 2).expectedPayoutUsd()).isEqualTo(10);
        assertThat(new GuaranteeRisk(100, 0, 105, 2).chance()).isEqualTo(1);
        assertThat(new GuaranteeRisk(100, 0, 105, 2).sigmaPayoutUsd()).isZero();
    }

    @Test
    void aMoreCautiousPromiseIsSmallerAndCostsLess() {
        List<PromiseChoice> choices = PromiseChoice.of(133_000, 0.005, YearSpread.USUAL, 0.135);
        assertThat(choices).extracting(PromiseChoice::confidence).containsExactly(0.5, 0.75, 0.9, 0.95, 0.99);
        for (int at = 0; at < choices.size(); at++) {
            PromiseChoice each = choices.get(at);
            // whatever the spread, the chance to fall short is what the confidence leaves
            assertThat(each.risk().chance()).isCloseTo(1 - each.confidence(), within(1e-9));
            if (at > 0) {
                PromiseChoice bolder = choices.get(at - 1);
                assertThat(each.promise().guaranteedKwh(1))
                        .isLessThan(bolder.promise().guaranteedKwh(1));
                assertThat(each.risk().expectedPayoutUsd())
                        .isLessThan(bolder.risk().expectedPayoutUsd());
            }
        }
        // at P50 the mean shortfall is sigma / sqrt(2 pi)
        double sigma = 133_000 * Math.hypot(0.03, 0.05);
        assertThat(choices.get(0).risk().expectedShortfallKwh())
                .isCloseTo(sigma / Math.sqrt(2 * Math.PI), within(1e-6));
    }

    private static GuaranteeBook book(double correlation) {
        return new GuaranteeBook(
                List.of(
                        new GuaranteeBook.Contract("farm", 133_000, 126_350, 0.03, 0.05, 0.135),
                        new GuaranteeBook.Contract("home", 11_500, 10_925, 0.03, 0.05, 0.16),
                        new GuaranteeBook.Contract("dairy", 310_000, 279_000, 0.04, 0.05, 0.11),
                        new GuaranteeBook.Contract("old", 84_000, 84_000, 0.03, 0.07, 0.14)),
                correlation);
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, 0.4, 0.7, 1})
    void theBookAgreesWithPlayingManyYears(double correlation) {
        GuaranteeBook book = book(correlation);
        Random random = new Random(20261125);
        int rounds = 200_000;
        double sum = 0;
        double square = 0;
        double badSum = 0;
        int bad = 0;
        for (int round = 0; round < rounds; round++) {
            double shared = random.nextGaussian();
            double owed = 0;
            for (GuaranteeBook.Contract each : book.contracts()) {
                double weather = Math.sqrt(correlation) * shared + Math.sqrt(1 - correlation) * random.nextGaussian();
                double kwh = each.expectedKwh()
                        * (1 + each.yearShare() * weather + each.modelShare() * random.nextGaussian());
                owed += each.ratePerKwh() * Math.max(0, each.guaranteedKwh() - kwh);
            }
            sum += owed;
            square += owed * owed;
            if (Math.abs(shared + 1.2815516) < 0.05) {
                badSum += owed;
                bad++;
            }
        }
        double mean = sum / rounds;
        assertThat(book.expectedPayoutUsd()).isCloseTo(mean, within(0.02 * mean));
        assertThat(book.sigmaPayoutUsd()).isCloseTo(Math.sqrt(square / rounds - mean * mean), within(0.02 * mean));
        assertThat(book.badYear(10).expectedUsd()).isCloseTo(badSum / bad, within(0.04 * mean));
    }

    @Test
    void sharedWeatherMovesTheSpreadAndTheBadYearButNotTheMean() {
        assertThat(book(0.7).expectedPayoutUsd()).isCloseTo(book(0).expectedPayoutUsd(), within(1e-6));
        assertThat(book(0.7).sigmaPayoutUsd()).isGreaterThan(book(0).sigmaPayoutUsd());
        assertThat(book(0.7).badYear(10).expectedUsd())
                .isGreaterThan(book(0).badYear(10).expectedUsd());
        assertThat(book(0).badYear(10).expectedUsd()).isCloseTo(book(0).expectedPayoutUsd(), within(1e-6));
    }

    @Test
    void theWorseTheYearTheMoreIsOwedAndProjectsAddUpToTheBook() {
        double before = 0;
        for (double oneIn : new double[] {2, 5, 10, 20, 50, 100}) {
            GuaranteeBook.BadYear year = book(0.7).badYear(oneIn);
            assertThat(year.expectedUsd()).isGreaterThan(before);
            assertThat(year.contracts().stream()
                            .mapToDouble(GuaranteeBook.Owed::usd)
                            .sum())
                    .isCloseTo(year.expectedUsd(), within(1e-6));
            before = year.expectedUsd();
        }
    }

    @Test
    void ofOneContractAndOneWeatherTheBookIsTheRiskItself() {
        GuaranteeBook one =
                new GuaranteeBook(List.of(new GuaranteeBook.Contract("farm", 133_000, 126_350, 0.04, 0, 0.135)), 1);
        GuaranteeRisk risk = one.contracts().get(0).risk();
        assertThat(one.sigmaPayoutUsd()).isCloseTo(risk.sigmaPayoutUsd(), within(0.05));
        assertThat(one.badYear(10).expectedUsd()).isCloseTo(risk.payoutInBadYearUsd(10), within(1e-6));
        assertThat(new GuaranteeBook(new ArrayList<>(), 0.7).badYear(10).expectedUsd())
                .isZero();
        assertThatThrownBy(() -> new GuaranteeBook(List.of(), 1.1)).isInstanceOf(Range.OutOfRange.class);
    }
}
