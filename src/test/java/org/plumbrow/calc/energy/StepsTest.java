package org.plumbrow.calc.energy;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.plumbrow.calc.Normal;
import org.plumbrow.calc.Range;
import org.plumbrow.calc.energy.sun.Extraterrestrial;

/** Each step of the chain alone, against tables computed with an open reference library. */
class StepsTest {

    private static final String TABLES = "/reference/energy/";

    @ParameterizedTest
    @CsvFileSource(resources = TABLES + "transposition.csv", useHeadersInDisplayName = true)
    void lightOnAPlane(
            double zenith,
            double sunAzimuth,
            double tilt,
            double azimuth,
            double ghi,
            double dni,
            double dhi,
            int day,
            double extraterrestrial,
            double aoi,
            double beam,
            double circumsolar,
            double isotropic,
            double ground,
            double poa,
            double iam,
            double effective) {
        Plane plane = new Plane(tilt, azimuth);
        double up = Math.cos(Math.toRadians(zenith));
        double east = Math.sin(Math.toRadians(zenith)) * Math.sin(Math.toRadians(sunAzimuth));
        double north = Math.sin(Math.toRadians(zenith)) * Math.cos(Math.toRadians(sunAzimuth));
        double cosine = plane.cosineOfIncidence(up, east, north);
        PlaneLight light = SkyModel.HAY_DAVIES
                .light(dni, dhi, Extraterrestrial.normalWPerM2(day), up)
                .on(plane, cosine, 0.2 * ghi);
        double modifier = IncidenceModifier.USUAL.at(cosine);
        assertThat(light.incidenceDeg()).isCloseTo(aoi, within(0.0001));
        assertThat(light.beam()).isCloseTo(beam, within(0.01));
        assertThat(light.circumsolar()).isCloseTo(circumsolar, within(0.01));
        assertThat(light.isotropic()).isCloseTo(isotropic, within(0.01));
        assertThat(light.ground()).isCloseTo(ground, within(0.01));
        assertThat(light.total()).isCloseTo(poa, within(0.01));
        assertThat(modifier).isCloseTo(iam, within(0.000001));
        assertThat(light.total() - light.beam() * (1 - modifier)).isCloseTo(effective, within(0.01));
    }

    @ParameterizedTest
    @CsvFileSource(resources = TABLES + "perez.csv", useHeadersInDisplayName = true)
    void lightOfThePerezSky(
            double dni,
            double dhi,
            double zenith,
            double sunAzimuth,
            double tilt,
            double azimuth,
            double extraterrestrial,
            int skyClass,
            double circumsolar,
            double isotropic,
            double horizon) {
        Plane plane = new Plane(tilt, azimuth);
        double up = Math.cos(Math.toRadians(zenith));
        double east = Math.sin(Math.toRadians(zenith)) * Math.sin(Math.toRadians(sunAzimuth));
        double north = Math.sin(Math.toRadians(zenith)) * Math.cos(Math.toRadians(sunAzimuth));
        PlaneLight light = SkyModel.PEREZ
                .light(dni, dhi, extraterrestrial, up)
                .on(plane, plane.cosineOfIncidence(up, east, north), 0);
        assertThat(light.circumsolar()).as("class %d", skyClass).isCloseTo(circumsolar, within(0.00001));
        assertThat(light.isotropic()).isCloseTo(isotropic, within(0.00001));
        assertThat(light.horizon()).isCloseTo(horizon, within(0.00001));
    }

    @ParameterizedTest
    @CsvFileSource(resources = TABLES + "iam.csv", useHeadersInDisplayName = true)
    void whatTheGlassLetsThrough(double aoi, double ashrae, double physical) {
        double cosine = aoi >= 90 ? Math.min(0, Math.cos(Math.toRadians(aoi))) : Math.cos(Math.toRadians(aoi));
        assertThat(IncidenceModifier.USUAL.at(cosine)).isCloseTo(ashrae, within(0.0000011));
        assertThat(IncidenceModifier.Physical.GLASS.at(cosine)).isCloseTo(physical, within(0.0000011));
        assertThat(IncidenceModifier.USUAL.times(cosine)).isCloseTo(ashrae * Math.max(0, cosine), within(0.000001));
    }

    @ParameterizedTest
    @CsvFileSource(resources = TABLES + "cell-temperature.csv", useHeadersInDisplayName = true)
    void howWarmCellsGet(
            double poa, double air, double wind, double faiman, double twoConstants, double rack, double roof) {
        assertThat(CellHeating.Faiman.OPEN_RACK.cellC(poa, air, wind)).isCloseTo(faiman, within(0.00001));
        assertThat(CellHeating.TwoConstants.OPEN_RACK.cellC(poa, air, wind)).isCloseTo(twoConstants, within(0.00001));
        assertThat(CellHeating.Exponential.OPEN_RACK_GLASS_POLYMER.cellC(poa, air, wind))
                .isCloseTo(rack, within(0.00001));
        assertThat(CellHeating.Exponential.CLOSE_ROOF_GLASS_GLASS.cellC(poa, air, wind))
                .isCloseTo(roof, within(0.00001));
    }

    @ParameterizedTest
    @CsvFileSource(resources = TABLES + "dc-power.csv", useHeadersInDisplayName = true)
    void powerOfTheModules(
            double effective, double cell, double usual, double older, double newer, double afterLosses) {
        assertThat(ModuleTraits.USUAL.dcPerKw(effective, cell)).isCloseTo(usual, within(0.000001));
        assertThat(new ModuleTraits(-0.0047, IncidenceModifier.USUAL).dcPerKw(effective, cell))
                .isCloseTo(older, within(0.000001));
        assertThat(new ModuleTraits(-0.0029, IncidenceModifier.USUAL).dcPerKw(effective, cell))
                .isCloseTo(newer, within(0.000001));
        assertThat(ModuleTraits.USUAL.dcPerKw(effective, cell)
                        * Losses.of(new Losses.Line("all", 14)).kept(1))
                .isCloseTo(afterLosses, within(0.000001));
    }

    @ParameterizedTest
    @CsvFileSource(resources = TABLES + "inverter.csv", useHeadersInDisplayName = true)
    void alternatingCurrent(double dcToAc, double dc, double dcLimit, double ac, double efficiency, String clipped) {
        Inverter inverter = new Inverter(1 / dcToAc, 0.96);
        assertThat(inverter.acKw() / inverter.efficiency()).isCloseTo(dcLimit, within(1e-8));
        assertThat(inverter.acKw(dc)).isCloseTo(ac, within(1e-8));
        // one row stands on the limit itself, to the digits printed
        assertThat(inverter.unclippedKw(dc) > inverter.acKw() - 1e-8).isEqualTo(clipped.equals("yes"));
    }

    @ParameterizedTest
    @CsvFileSource(resources = TABLES + "losses.csv", numLinesToSkip = 3)
    void lossesMultiply(
            double a,
            double b,
            double c,
            double d,
            double e,
            double f,
            double g,
            double h,
            double i,
            double j,
            double total) {
        Losses losses = Losses.of(java.util.stream.DoubleStream.of(a, b, c, d, e, f, g, h, i, j)
                .mapToObj(percent -> new Losses.Line("loss", percent))
                .toArray(Losses.Line[]::new));
        assertThat(losses.totalPercent()).isCloseTo(total, within(0.000001));
    }

    @ParameterizedTest
    @CsvFileSource(resources = TABLES + "row-shading.csv", useHeadersInDisplayName = true)
    void rowsShadeEachOther(
            double tilt,
            double gcr,
            double zenith,
            double sunAzimuth,
            double projectedZenith,
            double shaded,
            double bottom,
            double middle,
            double mean,
            double derate) {
        Rows rows = Rows.ofCoverage(gcr);
        Plane south = new Plane(tilt, 180);
        double up = Math.cos(Math.toRadians(zenith));
        double east = Math.sin(Math.toRadians(zenith)) * Math.sin(Math.toRadians(sunAzimuth));
        double north = Math.sin(Math.toRadians(zenith)) * Math.cos(Math.toRadians(sunAzimuth));
        double cosine = south.cosineOfIncidence(up, east, north);
        assertThat(rows.shadedShare(up, cosine)).isCloseTo(shaded, within(0.000001));
        assertThat(rows.maskingDeg(tilt, 0)).isCloseTo(bottom, within(0.00001));
        assertThat(rows.maskingDeg(tilt, 0.5)).isCloseTo(middle, within(0.00001));
        assertThat(rows.meanMaskingDeg(tilt)).isCloseTo(mean, within(0.00001));
        assertThat(1 - rows.isotropicKept(tilt)).isCloseTo(derate, within(0.000001));
    }

    @ParameterizedTest
    @CsvFileSource(resources = TABLES + "horizon-points.csv", useHeadersInDisplayName = true)
    void theHorizonBetweenReadings(double azimuth, double elevation) {
        assertThat(ReferenceChain.HORIZON.elevationDeg(azimuth)).isCloseTo(elevation, within(0.000001));
    }

    @Test
    void aHorizonOfOneReadingIsTheSameAllRound() {
        Horizon horizon = new Horizon(List.of(new Horizon.Reading(170, 12)));
        assertThat(horizon.elevationDeg(0)).isEqualTo(12);
        assertThat(horizon.elevationDeg(170)).isEqualTo(12);
        assertThat(horizon.elevationDeg(359)).isEqualTo(12);
    }

    @ParameterizedTest
    @CsvFileSource(resources = TABLES + "exceedance.csv", useHeadersInDisplayName = true)
    void spreadOfYears(
            double year, double model, int years, double share, double p75, double p90, double p95, double p99) {
        YearSpread spread = new YearSpread(year, model);
        assertThat(spread.share(years)).isCloseTo(share, within(0.0000006));
        assertThat(spread.exceededKwh(100, 0.5, years)).isCloseTo(100, within(1e-9));
        assertThat(spread.exceededKwh(100, 0.75, years)).isCloseTo(p75, within(0.0001));
        assertThat(spread.exceededKwh(100, 0.90, years)).isCloseTo(p90, within(0.0001));
        assertThat(spread.exceededKwh(100, 0.95, years)).isCloseTo(p95, within(0.0001));
        assertThat(spread.exceededKwh(100, 0.99, years)).isCloseTo(p99, within(0.0001));
    }

    @Test
    void theNormalDistributionHasItsPrintedValues() {
        assertThat(Normal.share(-1.25)).isCloseTo(0.105649774, within(1e-9));
        assertThat(Normal.share(1.959963985)).isCloseTo(0.975, within(1e-9));
        assertThat(Normal.share(-8)).isCloseTo(6.22096e-16, within(1e-20));
        assertThat(Normal.quantile(0.9)).isCloseTo(1.281551566, within(1e-9));
        assertThat(Normal.quantile(0.01)).isCloseTo(-2.326347874, within(1e-9));
        assertThatThrownBy(() -> Normal.quantile(1)).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void whatCannotBeIsRefused() {
        assertThatThrownBy(() -> new Plane(91, 180)).isInstanceOf(Range.OutOfRange.class);
        assertThatThrownBy(() -> new Plane(20, Double.NaN)).isInstanceOf(Range.OutOfRange.class);
        assertThatThrownBy(() -> new Inverter(0, 0.96)).isInstanceOf(Range.OutOfRange.class);
        assertThatThrownBy(() -> new Rows(2, 1.9)).isInstanceOf(Range.OutOfRange.class);
        assertThatThrownBy(() -> new Losses.Line("Soiling", 101)).isInstanceOf(Range.OutOfRange.class);
        assertThatThrownBy(() -> new Horizon(List.of())).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new YearSpread(-0.1, 0)).isInstanceOf(Range.OutOfRange.class);
    }
}
