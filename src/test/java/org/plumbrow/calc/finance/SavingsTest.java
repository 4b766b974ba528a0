package org.plumbrow.calc.finance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.plumbrow.calc.Range;
import org.plumbrow.calc.energy.YearSpread;

/** Savings over the years against closed forms, and what every case must obey. */
class SavingsTest {

    private static SavingsCase plain(int years, double price, double escalation, double degradation, double discount) {
        return new SavingsCase(
                years,
                new SavingsCase.Production(100_000, degradation, 1),
                SavingsCase.Tariff.even(0.16, escalation),
                SavingsCase.Costs.price(price),
                List.of(),
                discount);
    }

    /** About 16,000 in the first year, 2 % a year, 30 years: about 600,000 with 0.5 % of fading a year. */
    @Test
    void theCommonCaseComesOutAtSixHundredThousand() {
        Savings savings = Savings.of(plain(30, 250_000, 0.02, 0.005, 0));
        assertThat(savings.years().get(0).billUsd()).isCloseTo(16_000, within(1e-6));
        assertThat(Cents.of(savings.billUsd())).isEqualTo("599695.97");
        assertThat(Cents.of(Savings.of(plain(30, 250_000, 0.02, 0, 0)).billUsd()))
                .isEqualTo("649089.27");
    }

    @Test
    void theFarmOfTheWorkedExample() {
        Savings savings = Savings.of(new SavingsCase(
                25,
                new SavingsCase.Production(133_000, 0.005, 1),
                SavingsCase.Tariff.even(0.135, 0.025),
                SavingsCase.Costs.price(0),
                List.of(),
                0));
        assertThat(Cents.of(savings.billUsd())).isEqualTo("574186.91");
    }

    @Test
    void presentValueAndReturnAgreeWithTheClosedForms() {
        double pv = Growth.presentValue(16_000, Growth.ratio(0.02, 0.005), 0.06, 30);
        Savings savings = Savings.of(plain(30, 200_000, 0.02, 0.005, 0.06));
        assertThat(savings.npvUsd()).isCloseTo(pv - 200_000, within(1e-6));
        // priced at its own present value, the return is the discount and the cost of a kWh its price made even
        Savings even = Savings.of(plain(30, pv, 0.02, 0.005, 0.06));
        assertThat(even.npvUsd()).isCloseTo(0, within(1e-6));
        assertThat(even.irr().orElseThrow()).isCloseTo(0.06, within(1e-9));
        double kwh = Growth.presentValue(100_000, 0.995, 0.06, 30);
        assertThat(even.levelisedUsdPerKwh().orElseThrow()).isCloseTo(pv / kwh, within(1e-12));
    }

    @Test
    void aBondReturnsItsCoupon() {
        Savings savings = Savings.of(new SavingsCase(
                10,
                new SavingsCase.Production(1000, 0, 1),
                SavingsCase.Tariff.even(0.05, 0),
                SavingsCase.Costs.price(1000),
                List.of(new Incentive("back", Incentive.Kind.SHARE_OF_PRICE, 1, 10, 1)),
                0));
        assertThat(savings.irr().orElseThrow()).isCloseTo(0.05, within(1e-9));
    }

    @Test
    void exportFixedChargesAndRunningCostsStandInTheirOwnColumns() {
        Savings savings = Savings.of(new SavingsCase(
                2,
                new SavingsCase.Production(1000, 0.01, 0.6),
                new SavingsCase.Tariff(0.20, 0.10, 0.05, 0, 12),
                new SavingsCase.Costs(500, 30, 0.02),
                List.of(
                        new Incentive("Rebate", Incentive.Kind.AMOUNT, 100, 0, 1),
                        new Incentive("Per kWh", Incentive.Kind.PER_KWH, 0.01, 1, 1)),
                0.05));
        Savings.Year first = savings.years().get(0);
        Savings.Year second = savings.years().get(1);
        assertThat(savings.upfrontUsd()).isEqualTo(400);
        assertThat(first.onSiteUsd()).isCloseTo(120, within(1e-9));
        assertThat(first.exportUsd()).isCloseTo(20, within(1e-9));
        assertThat(first.billUsd()).isCloseTo(128, within(1e-9));
        assertThat(first.incentivesUsd()).isCloseTo(10, within(1e-9));
        assertThat(first.netUsd()).isCloseTo(108, within(1e-9));
        assertThat(second.onSiteUsd()).isCloseTo(990 * 0.6 * 0.22, within(1e-9));
        assertThat(second.exportUsd()).isCloseTo(990 * 0.4 * 0.05, within(1e-9));
        assertThat(second.fixedUsd()).isCloseTo(13.2, within(1e-9));
        assertThat(second.operatingUsd()).isCloseTo(30.6, within(1e-9));
        assertThat(second.incentivesUsd()).isZero();
        assertThat(second.cumulativeUsd()).isCloseTo(-400 + savings.netUsd(), within(1e-9));
        assertThat(savings.paybackYears()).isEmpty();
        assertThat(savings.irr().orElseThrow()).isNegative();
    }

    @Test
    void whatCostsNothingIsPaidBackAtOnceAndWhatBringsNothingNever() {
        Savings gift = Savings.of(plain(10, 0, 0, 0, 0.05));
        assertThat(gift.paybackYears()).contains(0.0);
        assertThat(gift.irr()).isEmpty();
        Savings nothing = Savings.of(new SavingsCase(
                10,
                new SavingsCase.Production(0, 0, 1),
                SavingsCase.Tariff.even(0.1, 0),
                SavingsCase.Costs.price(1000),
                List.of(),
                0));
        assertThat(nothing.paybackYears()).isEmpty();
        assertThat(nothing.simplePaybackYears()).isEmpty();
        assertThat(nothing.irr()).isEmpty();
        assertThat(nothing.levelisedUsdPerKwh()).isEmpty();
    }

    @Test
    void theRangeHoldsTheLikelyFigureAndWidensWithConfidence() {
        SavingsCase likely = plain(30, 250_000, 0.02, 0.005, 0.05);
        SavingsRange narrow = SavingsRange.of(likely, YearSpread.USUAL, 0.75, 0);
        SavingsRange wide = SavingsRange.of(likely, YearSpread.USUAL, 0.9, 0.01);
        assertThat(narrow.low().billUsd()).isLessThan(narrow.likely().billUsd());
        assertThat(narrow.high().billUsd()).isGreaterThan(narrow.likely().billUsd());
        assertThat(wide.low().billUsd()).isLessThan(narrow.low().billUsd());
        assertThat(wide.high().billUsd()).isGreaterThan(narrow.high().billUsd());
        double apart = 1.2815516 * Math.sqrt(0.05 * 0.05 + 0.03 * 0.03 / 30);
        SavingsRange production = SavingsRange.of(likely, YearSpread.USUAL, 0.9, 0);
        assertThat(production.low().billUsd() / production.likely().billUsd()).isCloseTo(1 - apart, within(1e-7));
    }

    @Test
    void whatTheSiteUsesItselfByHourIsNeverMoreThanByMonth() {
        double[] use = new double[8760];
        double[] production = new double[8760];
        for (int hour = 0; hour < 8760; hour++) {
            use[hour] = 2;
            production[hour] = hour % 24 > 8 && hour % 24 < 16 ? 6 : 0;
        }
        SelfUse hours = SelfUse.byHour(use, production);
        double[] useMonths =
                hours.months().stream().mapToDouble(SelfUse.Month::useKwh).toArray();
        double[] productionMonths = hours.months().stream()
                .mapToDouble(SelfUse.Month::productionKwh)
                .toArray();
        SelfUse months = SelfUse.byMonth(useMonths, productionMonths);
        assertThat(hours.onSiteShare().orElseThrow()).isCloseTo(2.0 / 6, within(1e-9));
        assertThat(months.onSiteShare().orElseThrow()).isCloseTo(1, within(1e-9));
        assertThat(hours.exportedKwh()).isCloseTo(365 * 7 * 4, within(1e-6));
        assertThat(months.offset().orElseThrow()).isCloseTo(42.0 / 48, within(1e-9));
        for (SelfUse.Month month : hours.months()) {
            assertThat(month.onSiteKwh() + month.exportedKwh()).isCloseTo(month.productionKwh(), within(1e-9));
            assertThat(month.onSiteKwh() + month.importedKwh()).isCloseTo(month.useKwh(), within(1e-9));
        }
        assertThat(SelfUse.byMonth(new double[12], new double[12]).onSiteShare())
                .isEmpty();
        assertThat(SelfUse.byMonth(new double[12], new double[12]).offset()).isEmpty();
    }

    @Test
    void moneyIsRoundedHalfUp() {
        assertThat(Cents.of(0.125)).isEqualTo("0.13");
        assertThat(Cents.of(2.675)).isEqualTo("2.68");
        assertThat(Cents.of(-1)).isEqualTo("-1.00");
    }

    @Test
    void whatCannotBeIsRefused() {
        assertThatThrownBy(() -> plain(41, 0, 0, 0, 0)).isInstanceOf(Range.OutOfRange.class);
        assertThatThrownBy(() -> plain(30, -1, 0, 0, 0)).isInstanceOf(Range.OutOfRange.class);
        assertThatThrownBy(() -> plain(30, 1, 0.5, 0, 0)).isInstanceOf(Range.OutOfRange.class);
        assertThatThrownBy(() -> new Incentive("too much", Incentive.Kind.SHARE_OF_PRICE, 1.1, 0, 1))
                .isInstanceOf(Range.OutOfRange.class);
    }
}
