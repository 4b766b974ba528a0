package org.plumbrow.calc.energy;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.plumbrow.calc.Range;
import org.plumbrow.calc.energy.HorizonChange.Verdict;
import org.plumbrow.calc.energy.sun.Place;
import org.plumbrow.calc.energy.sun.SunTrack;
import org.plumbrow.calc.energy.weather.InventedWeather;

/** Expected figures are worked by hand from the definitions; the last test goes through the whole chain. */
class HorizonChangeTest {

    private static final List<Double> EVEN = Collections.nCopies(12, 1000.0);

    private static HorizonChange december(double kwh) {
        List<Double> months = new ArrayList<>(EVEN);
        months.set(11, kwh);
        return new HorizonChange(EVEN, months, YearSpread.USUAL);
    }

    @Test
    void aLossInOneMonthIsAShareOfTheMonthAndATwelfthOfThatOfTheYear() {
        HorizonChange change = december(940);
        assertThat(change.changeOfYear()).isEqualTo(-60, within(1e-9));
        assertThat(change.shareOfYear()).isEqualTo(-0.005, within(1e-12));
        assertThat(change.shareOf(12)).isEqualTo(-0.06, within(1e-12));
        assertThat(change.worstMonth()).isEqualTo(12);
        // 3 % a year times the root of twelve
        assertThat(change.monthSpread()).isEqualTo(0.103923, within(1e-6));
        assertThat(change.verdict()).isEqualTo(Verdict.WITHIN_A_MONTH);
    }

    @Test
    void moreThanAMonthSpreadsIsToldAndSoAreTwoPercentOfTheYear() {
        assertThat(december(895).verdict()).isEqualTo(Verdict.TELL);
        List<Double> lessEachMonth = Collections.nCopies(12, 980.0);
        assertThat(new HorizonChange(EVEN, lessEachMonth, YearSpread.USUAL).verdict())
                .isEqualTo(Verdict.TELL);
        List<Double> aLittleLess = Collections.nCopies(12, 981.0);
        assertThat(new HorizonChange(EVEN, aLittleLess, YearSpread.USUAL).verdict())
                .isEqualTo(Verdict.WITHIN_A_MONTH);
    }

    @Test
    void aGainAndNothingAreNamed() {
        assertThat(december(1060).verdict()).isEqualTo(Verdict.MORE);
        assertThat(december(1000).verdict()).isEqualTo(Verdict.NONE);
        assertThat(december(995).verdict()).isEqualTo(Verdict.NONE);
    }

    @Test
    void aMonthWithoutLightHasNothingToLose() {
        List<Double> dark = new ArrayList<>(EVEN);
        dark.set(11, 0.0);
        HorizonChange change = new HorizonChange(dark, dark, YearSpread.USUAL);
        assertThat(change.shareOf(12)).isZero();
        assertThat(change.verdict()).isEqualTo(Verdict.NONE);
    }

    @Test
    void whatIsNoYearIsRefused() {
        assertThatThrownBy(() -> new HorizonChange(EVEN, EVEN.subList(0, 11), YearSpread.USUAL))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> december(Double.NaN)).isInstanceOf(Range.OutOfRange.class);
    }

    @Test
    void aHigherHorizonNeverGivesMoreInAnyMonth() {
        Place place = new Place(41.9, -77.3, 400, -5);
        SiteYear site = SiteYear.of(InventedWeather.yearAt(place), SunTrack.over(place));
        ArraySection open = ArraySection.open("Field", 10, new Plane(30, 180));
        List<Double> low = months(site, open.with(horizon(5)));
        List<Double> high = months(site, open.with(horizon(15)));
        HorizonChange change = new HorizonChange(low, high, YearSpread.USUAL);
        for (int month = 1; month <= 12; month++) {
            assertThat(change.shareOf(month)).isLessThanOrEqualTo(0);
        }
        // the low sun of winter suffers most
        assertThat(change.worstMonth()).isIn(11, 12, 1);
    }

    private static Horizon horizon(double elevationDeg) {
        return new Horizon(List.of(new Horizon.Reading(180, elevationDeg)));
    }

    private static List<Double> months(SiteYear site, ArraySection section) {
        InverterGroup group = new InverterGroup("Inverter", new Inverter(10, 0.96), List.of(section));
        return java.util.Arrays.stream(
                        EnergyYield.of(site, List.of(group), Losses.USUAL).kwhByMonth())
                .boxed()
                .toList();
    }
}
