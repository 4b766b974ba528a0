package org.plumbrow.calc.energy;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.plumbrow.calc.energy.sun.HourOfYear;
import org.plumbrow.calc.energy.sun.Place;
import org.plumbrow.calc.energy.sun.SunTrack;
import org.plumbrow.calc.energy.weather.InventedWeather;
import org.plumbrow.calc.energy.weather.WeatherYear;

/** What every yield must obey, whatever the place: sums, symmetry, energy that is never made out of nothing. */
class EnergyYieldTest {

    private static final SiteYear SITE = site(InventedWeather.PLACE, SkyModel.HAY_DAVIES);
    private static final Plane SOUTH = new Plane(25, 180);

    private static SiteYear site(Place place, SkyModel sky) {
        return SiteYear.of(InventedWeather.yearAt(place), SunTrack.over(place), sky, SiteYear.USUAL_ALBEDO);
    }

    private static ArraySection kw(double kw, Plane plane) {
        return ArraySection.open("one", kw, plane);
    }

    private static EnergyYield run(SiteYear site, double acKw, ArraySection... sections) {
        return EnergyYield.of(
                site, List.of(new InverterGroup("one", new Inverter(acKw, 0.96), List.of(sections))), Losses.USUAL);
    }

    @Test
    void hoursAddUpToDaysMonthsAndTheYear() {
        EnergyYield yield = run(SITE, 80, kw(100, SOUTH));
        double year = yield.kwhOfYear();
        assertThat(Arrays.stream(yield.kwhByHour()).sum()).isCloseTo(year, within(1e-6));
        assertThat(Arrays.stream(yield.kwhByDay()).sum()).isCloseTo(year, within(1e-6));
        assertThat(Arrays.stream(yield.kwhByMonth()).sum()).isCloseTo(year, within(1e-6));
        assertThat(yield.kwhPerKw()).isCloseTo(year / 100, within(1e-9)).isBetween(1150.0, 1450.0);
    }

    @ParameterizedTest
    @EnumSource(SkyModel.class)
    void theFastLoopAndTheTraceOfEachHourAgree(SkyModel sky) {
        SiteYear site = site(InventedWeather.PLACE, sky);
        ArraySection section = kw(1, new Plane(35, 140))
                .with(new Rows(4, 9))
                .with(new Horizon(List.of(new Horizon.Reading(90, 12), new Horizon.Reading(200, 3))));
        double[] fast = new SectionChain(site, section, Losses.USUAL).dcKwPerKw();
        for (int at = 0; at < fast.length; at++) {
            HourTrace trace = HourTrace.of(site, section, Losses.USUAL, site.hours[at]);
            assertThat(fast[at]).isCloseTo(trace.dcKwPerKw(), within(1e-12));
        }
    }

    @Test
    void nothingIsMadeWithoutLight() {
        EnergyYield yield = run(SITE, 80, kw(100, SOUTH));
        for (int hour = 0; hour < HourOfYear.HOURS; hour++) {
            if (SITE.weather().ghiWPerM2(hour) == 0) {
                assertThat(yield.kwh(hour)).isZero();
            }
            assertThat(yield.kwh(hour)).isBetween(0.0, 80.0);
        }
    }

    @ParameterizedTest
    @EnumSource(SkyModel.class)
    void aFlatPlaneSeesTheGlobalOfTheWeatherItself(SkyModel sky) {
        SiteYear site = site(InventedWeather.PLACE, sky);
        SectionYield flat = run(site, 1, kw(1, new Plane(0, 180)))
                .groups()
                .get(0)
                .sections()
                .get(0);
        for (int month = 1; month <= 12; month++) {
            assertThat(flat.kwhPerKw(Stage.OPEN_LIGHT, month) / site.ghiKwhPerM2(month))
                    .isBetween(0.985, 1.005);
        }
    }

    @Test
    void theSkiesOrderAsPublishedForAPlaneTowardsTheSun() {
        double isotropic = run(site(InventedWeather.PLACE, SkyModel.ISOTROPIC), 1, kw(1, SOUTH))
                .kwhOfYear();
        double hayDavies = run(SITE, 1, kw(1, SOUTH)).kwhOfYear();
        double perez = run(site(InventedWeather.PLACE, SkyModel.PEREZ), 1, kw(1, SOUTH))
                .kwhOfYear();
        assertThat(isotropic / hayDavies).isBetween(0.97, 0.995);
        assertThat(perez / hayDavies).isBetween(1.0, 1.03);
    }

    @Test
    void lossesAndShadeOnlyTake() {
        double open = run(SITE, 1, kw(1, SOUTH)).kwhOfYear();
        assertThat(run(SITE, 1, kw(1, SOUTH).with(new Rows(4, 8))).kwhOfYear()).isLessThan(open);
        double low = run(SITE, 1, kw(1, SOUTH).with(around(5))).kwhOfYear();
        double high = run(SITE, 1, kw(1, SOUTH).with(around(20))).kwhOfYear();
        assertThat(low).isLessThan(open);
        assertThat(high).isLessThan(low);
        assertThat(run(SITE, 1, kw(1, SOUTH).with(around(0))).kwhOfYear()).isEqualTo(open);
    }

    private static Horizon around(double elevation) {
        return new Horizon(List.of(new Horizon.Reading(0, elevation)));
    }

    @Test
    void rowsFarApartAreAsGoodAsNone() {
        double open = run(SITE, 1, kw(1, SOUTH)).kwhOfYear();
        assertThat(run(SITE, 1, kw(1, SOUTH).with(new Rows(1, 200))).kwhOfYear())
                .isCloseTo(open, within(0.001 * open));
    }

    @Test
    void twoHalvesMakeAWhole() {
        double whole = run(SITE, 80, kw(100, SOUTH)).kwhOfYear();
        assertThat(run(SITE, 80, kw(50, SOUTH), kw(50, SOUTH)).kwhOfYear()).isCloseTo(whole, within(1e-6));
        EnergyYield apart = EnergyYield.of(
                SITE,
                List.of(
                        new InverterGroup("east", new Inverter(40, 0.96), List.of(kw(50, SOUTH))),
                        new InverterGroup("west", new Inverter(40, 0.96), List.of(kw(50, SOUTH)))),
                Losses.USUAL);
        assertThat(apart.kwhOfYear()).isCloseTo(whole, within(1e-6));
        assertThat(apart.groups()).hasSize(2);
        assertThat(apart.kwDc()).isEqualTo(100);
    }

    @Test
    void eastAndWestOnOneInverterClipLessThanAllSouth() {
        Plane east = new Plane(25, 90);
        Plane west = new Plane(25, 270);
        GroupYield mixed = run(SITE, 60, kw(50, east), kw(50, west)).groups().get(0);
        GroupYield south = run(SITE, 60, kw(100, SOUTH)).groups().get(0);
        assertThat(mixed.clippedKwh()).isLessThan(south.clippedKwh());
        assertThat(south.clippedHours()).isPositive();
        assertThat(south.group().dcToAc()).isCloseTo(100.0 / 60, within(1e-12));
    }

    @ParameterizedTest
    @CsvSource({"41.5,-88.25,-6", "45,7.5,1", "33.9,18.6,2"})
    void theOtherHemisphereIsTheMirror(double latitude, double longitude, double utcOffset) {
        Place north = new Place(latitude, longitude, 100, utcOffset);
        Place south = new Place(-latitude, longitude, 100, utcOffset);
        double towardsSouth = run(site(north, SkyModel.HAY_DAVIES), 1, kw(1, new Plane(25, 180)))
                .kwhOfYear();
        double towardsNorth = run(site(south, SkyModel.HAY_DAVIES), 1, kw(1, new Plane(25, 0)))
                .kwhOfYear();
        assertThat(towardsNorth).isCloseTo(towardsSouth, within(0.02 * towardsSouth));
        double wrongWay = run(site(south, SkyModel.HAY_DAVIES), 1, kw(1, new Plane(25, 180)))
                .kwhOfYear();
        assertThat(wrongWay).isLessThan(towardsNorth);
    }

    @Test
    void eastAndWestAreAlikeWhereTheDayIsSymmetric() {
        // longitude in the middle of the zone, so that the clock's noon is the sun's
        Place place = new Place(40, -90, 0, -6);
        SiteYear site = site(place, SkyModel.HAY_DAVIES);
        double east = run(site, 1, kw(1, new Plane(20, 90))).kwhOfYear();
        double west = run(site, 1, kw(1, new Plane(20, 270))).kwhOfYear();
        assertThat(west).isCloseTo(east, within(0.03 * east));
    }

    @Test
    void thePolarNightMakesNothingAndTheEquatorIsEven() {
        EnergyYield far = run(site(new Place(78.2, 15.6, 0, 1), SkyModel.HAY_DAVIES), 1, kw(1, SOUTH));
        assertThat(far.kwhByMonth()[11]).isZero();
        assertThat(far.kwhByMonth()[5]).isPositive();
        SiteYear equator = site(new Place(0, 36.8, 1700, 3), SkyModel.HAY_DAVIES);
        double east = run(equator, 1, kw(1, new Plane(10, 180))).kwhOfYear();
        double west = run(equator, 1, kw(1, new Plane(10, 0))).kwhOfYear();
        assertThat(west / east).isBetween(0.9, 1.1);
    }

    @Test
    void snowTakesFromItsMonthsOnly() {
        double[] snow = new double[12];
        snow[0] = 30;
        snow[1] = 20;
        EnergyYield without = run(SITE, 200, kw(100, SOUTH));
        EnergyYield with = EnergyYield.of(
                SITE,
                List.of(new InverterGroup("one", new Inverter(200, 0.96), List.of(kw(100, SOUTH)))),
                Losses.USUAL.withSnow(snow));
        assertThat(with.kwhByMonth()[0] / without.kwhByMonth()[0]).isBetween(0.68, 0.70);
        assertThat(with.kwhByMonth()[1] / without.kwhByMonth()[1]).isBetween(0.78, 0.80);
        assertThat(with.kwhByMonth()[6]).isEqualTo(without.kwhByMonth()[6]);
        assertThat(LossLadder.of(with)).extracting(LossLadder.Step::name).contains("Snow");
        assertThat(LossLadder.of(without)).extracting(LossLadder.Step::name).doesNotContain("Snow");
    }

    @Test
    void theLadderGoesFromTheLightToTheMeterAndEachStepSaysWhatItTook() {
        EnergyYield yield = run(SITE, 60, kw(60, SOUTH).with(new Rows(4, 8)), kw(40, new Plane(25, 90)));
        List<LossLadder.Step> ladder = LossLadder.of(yield);
        assertThat(ladder.get(0).lostPercent()).isZero();
        double kwh = ladder.get(0).kwh();
        for (LossLadder.Step step : ladder.subList(1, ladder.size())) {
            kwh *= 1 - step.lostPercent() / 100;
            assertThat(step.kwh()).isCloseTo(kwh, within(1e-6 * kwh));
        }
        assertThat(kwh).isCloseTo(yield.kwhOfYear(), within(1e-6 * kwh));
        assertThat(ladder)
                .extracting(LossLadder.Step::name)
                .contains("Soiling", "Inverter", "Clipping at the inverter's limit");
        assertThat(ladder.stream().filter(step -> step.name().equals("Soiling")))
                .allSatisfy(step -> assertThat(step.lostPercent()).isCloseTo(2, within(1e-9)));
    }

    @Test
    void aRoofThatCannotBreatheMakesLess() {
        double rack = run(SITE, 1, kw(1, SOUTH)).kwhOfYear();
        double roof = run(SITE, 1, kw(1, SOUTH).with(CellHeating.TwoConstants.FLUSH_ROOF))
                .kwhOfYear();
        assertThat(roof / rack).isBetween(0.90, 0.98);
    }

    @Test
    void sunAndWeatherMustBeOfOnePlace() {
        WeatherYear weather = InventedWeather.year();
        SunTrack elsewhere = SunTrack.over(new Place(0, 0, 0, 0));
        assertThatThrownBy(() -> SiteYear.of(weather, elsewhere)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new InverterGroup("none", new Inverter(1, 0.96), List.of()))
                .isInstanceOf(IllegalArgumentException.class);
        assertThat(kw(1, SOUTH).rows()).isEqualTo(Optional.empty());
    }
}
