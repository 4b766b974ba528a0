package org.plumbrow.calc.energy;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.plumbrow.calc.Range;
import org.plumbrow.calc.energy.sun.HourOfYear;
import org.plumbrow.calc.energy.weather.InventedWeather;
import org.plumbrow.calc.energy.weather.MonthlyMeans;
import org.plumbrow.calc.energy.weather.ReferenceWeather;
import org.plumbrow.calc.energy.weather.WeatherFinding;
import org.plumbrow.calc.energy.weather.WeatherYear;

/** How far a year made from twelve means is off, measured against the hours that the means were taken from. */
class MonthlyMeansErrorTest {

    private static final List<Plane> SOUTH = List.of(new Plane(25, 180), new Plane(10, 180), new Plane(0, 0));
    private static final List<Plane> OTHER = List.of(new Plane(35, 225), new Plane(20, 90));

    private record Errors(double yearPercent, List<Double> monthPercents) {}

    private static Errors errors(SiteYear own, SiteYear made, Plane plane) {
        EnergyYield measured = ReferenceChain.yield(own, ReferenceChain.section(plane.tiltDeg(), plane.azimuthDeg()));
        EnergyYield estimate = ReferenceChain.yield(made, ReferenceChain.section(plane.tiltDeg(), plane.azimuthDeg()));
        List<Double> months = new ArrayList<>();
        for (int month = 0; month < HourOfYear.MONTHS; month++) {
            months.add(100 * (estimate.kwhByMonth()[month] / measured.kwhByMonth()[month] - 1));
        }
        return new Errors(100 * (estimate.kwhOfYear() / measured.kwhOfYear() - 1), months);
    }

    @ParameterizedTest
    @EnumSource(ReferenceWeather.class)
    void theErrorIsNoLargerThanTheYearItselfSays(ReferenceWeather file) {
        SiteYear own = ReferenceChain.site(file.name());
        WeatherYear year = own.weather().means().typicalYear();
        assertThat(year.findings().get(0).severity()).isEqualTo(WeatherFinding.Severity.WARNING);
        assertThat(year.findings().get(0).sentence())
                .contains("made from twelve monthly means")
                .contains("-1 to +3 % (facing south -0.5 to +1.5 %), a month's by -3.5 to +8.5 %");
        SiteYear made = SiteYear.of(year, own.sun());
        for (Plane plane : SOUTH) {
            assertThat(errors(own, made, plane).yearPercent()).isBetween(-0.65, 1.5);
        }
        for (Plane plane : OTHER) {
            assertThat(errors(own, made, plane).yearPercent()).isBetween(-1.0, 3.0);
        }
        for (Plane plane : SOUTH) {
            assertThat(errors(own, made, plane).monthPercents()).allMatch(error -> error > -3.5 && error < 8.5);
        }
    }

    @Test
    void theMeansComeOutAsTheyWentIn() {
        MonthlyMeans in = InventedWeather.year().means();
        MonthlyMeans out = in.typicalYear().means();
        for (int month = 0; month < HourOfYear.MONTHS; month++) {
            assertThat(out.ghiKwhPerM2Day()[month]).isCloseTo(in.ghiKwhPerM2Day()[month], within(1e-9));
            assertThat(out.airC()[month]).isCloseTo(in.airC()[month], within(0.1));
            assertThat(out.windMPerS()[month]).isCloseTo(in.windMPerS()[month], within(1e-9));
        }
    }

    @Test
    void beamAndDiffuseMakeTheGlobalAndNoneIsNegative() {
        WeatherYear year = InventedWeather.year();
        SiteYear site = SiteYear.of(year, org.plumbrow.calc.energy.sun.SunTrack.over(year.place()));
        for (int hour = 0; hour < HourOfYear.HOURS; hour++) {
            double made = year.dhiWPerM2(hour)
                    + year.dniWPerM2(hour) * Math.max(0, site.sun().up(hour));
            assertThat(made).isCloseTo(year.ghiWPerM2(hour), within(1e-9));
            assertThat(year.dniWPerM2(hour)).isBetween(0.0, 0.86 * site.sun().extraterrestrialWPerM2(hour));
            assertThat(year.dhiWPerM2(hour)).isNotNegative();
        }
    }

    @Test
    void moreThanTheSunSendsIsRefused() {
        double[] even = new double[12];
        java.util.Arrays.fill(even, 6);
        MonthlyMeans means = new MonthlyMeans(InventedWeather.PLACE, even, new double[12], new double[12]);
        assertThatThrownBy(means::typicalYear)
                .isInstanceOf(Range.OutOfRange.class)
                .hasMessageContaining("mean daily radiation of month 1");
    }

    @Test
    void aMeanThatNoPlaceHasIsRefused() {
        double[] means = new double[12];
        double[] tooMuch = new double[12];
        tooMuch[6] = 11;
        assertThatThrownBy(() -> new MonthlyMeans(InventedWeather.PLACE, tooMuch, means, means))
                .isInstanceOf(Range.OutOfRange.class)
                .hasMessageContaining("mean daily radiation of month 7");
        assertThatThrownBy(() -> new MonthlyMeans(InventedWeather.PLACE, new double[11], means, means))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
