package org.plumbrow.calc.energy;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.assertj.core.data.Percentage;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.plumbrow.calc.energy.sun.HourOfYear;
import org.plumbrow.calc.energy.sun.Place;
import org.plumbrow.calc.energy.sun.SunTrack;
import org.plumbrow.calc.energy.weather.WeatherYear;

/** Whole years and single hours against an open reference library: five public weather files, five planes. */
class ReferenceYieldTest {

    private static final String TABLES = "/reference/energy/";
    private static final Percentage ANNUAL = Percentage.withPercentage(0.005);
    private static final Percentage MONTHLY = Percentage.withPercentage(0.005);

    @ParameterizedTest
    @CsvFileSource(resources = TABLES + "annual.csv", useHeadersInDisplayName = true)
    void yearsAgree(
            String site,
            double tilt,
            double azimuth,
            double ghi,
            double beam,
            double sky,
            double ground,
            double poa,
            double effective,
            double dcGross,
            double dcAfterLosses,
            double ac,
            int clippedHours) {
        EnergyYield yield = ReferenceChain.yield(ReferenceChain.site(site), ReferenceChain.section(tilt, azimuth));
        GroupYield group = yield.groups().get(0);
        SectionYield section = group.sections().get(0);
        assertThat(section.kwhPerKw(Stage.OPEN_LIGHT)).isCloseTo(poa, ANNUAL);
        assertThat(section.kwhPerKw(Stage.LIGHT)).isCloseTo(poa, ANNUAL);
        assertThat(section.kwhPerKw(Stage.ENTERED)).isCloseTo(effective, ANNUAL);
        assertThat(section.kwhPerKw(Stage.WARM_DC)).isCloseTo(dcGross, ANNUAL);
        assertThat(section.kwhPerKw(Stage.DC)).isCloseTo(dcAfterLosses, ANNUAL);
        assertThat(yield.kwhOfYear()).isCloseTo(ac, ANNUAL);
        assertThat(group.clippedHours()).isEqualTo(clippedHours);
    }

    @ParameterizedTest
    @CsvFileSource(resources = TABLES + "monthly.csv", useHeadersInDisplayName = true)
    void monthsAgree(
            String site,
            double tilt,
            double azimuth,
            int month,
            double ghi,
            double poa,
            double effective,
            double dcAfterLosses,
            double ac) {
        EnergyYield yield = ReferenceChain.yield(ReferenceChain.site(site), ReferenceChain.section(tilt, azimuth));
        SectionYield section = yield.groups().get(0).sections().get(0);
        assertThat(yield.site().ghiKwhPerM2(month)).isCloseTo(ghi, within(0.0006));
        assertThat(section.kwhPerKw(Stage.LIGHT, month)).isCloseTo(poa, MONTHLY);
        assertThat(section.kwhPerKw(Stage.ENTERED, month)).isCloseTo(effective, MONTHLY);
        assertThat(section.kwhPerKw(Stage.DC, month)).isCloseTo(dcAfterLosses, MONTHLY);
        assertThat(yield.kwhByMonth()[month - 1]).isCloseTo(ac, MONTHLY);
    }

    @ParameterizedTest
    @CsvFileSource(resources = TABLES + "shading-annual.csv", useHeadersInDisplayName = true)
    void shadedYearsAgree(
            String site,
            String kind,
            double tilt,
            double azimuth,
            Double gcr,
            double poa,
            double ac,
            double unshaded,
            double lossPercent) {
        EnergyYield yield = shaded(site, kind, tilt, azimuth, gcr);
        assertThat(yield.groups().get(0).sections().get(0).kwhPerKw(Stage.LIGHT))
                .isCloseTo(poa, ANNUAL);
        assertThat(yield.kwhOfYear()).isCloseTo(ac, ANNUAL);
        assertThat(100 * (1 - yield.kwhOfYear() / unshaded)).isCloseTo(lossPercent, within(0.02));
    }

    @ParameterizedTest
    @CsvFileSource(resources = TABLES + "shading-monthly.csv", useHeadersInDisplayName = true)
    void shadedMonthsAgree(
            String site, String kind, double tilt, double azimuth, Double gcr, int month, double poa, double ac) {
        EnergyYield yield = shaded(site, kind, tilt, azimuth, gcr);
        assertThat(yield.groups().get(0).sections().get(0).kwhPerKw(Stage.LIGHT, month))
                .isCloseTo(poa, MONTHLY);
        assertThat(yield.kwhByMonth()[month - 1]).isCloseTo(ac, MONTHLY);
    }

    private static EnergyYield shaded(String site, String kind, double tilt, double azimuth, Double gcr) {
        ArraySection open = ReferenceChain.section(tilt, azimuth);
        return ReferenceChain.yield(
                ReferenceChain.site(site),
                kind.equals("rows") ? open.with(Rows.ofCoverage(gcr)) : open.with(ReferenceChain.HORIZON));
    }

    /** The rows hold the weather of their hours, so this runs without the public files. */
    @ParameterizedTest
    @CsvFileSource(
            resources = {
                TABLES + "hourly-chicago.csv",
                TABLES + "hourly-denver.csv",
                TABLES + "hourly-tucson.csv",
                TABLES + "hourly-greensboro.csv",
                TABLES + "hourly-miami.csv"
            },
            useHeadersInDisplayName = true)
    void everyStepOfSingleHoursAgrees(
            double tilt,
            double azimuth,
            int month,
            int day,
            int hour,
            double ghi,
            double dni,
            double dhi,
            double air,
            double wind,
            double zenithTrue,
            double zenithApparent,
            double sunAzimuth,
            double extraterrestrial,
            double aoi,
            double beam,
            double circumsolar,
            double isotropic,
            double ground,
            double poa,
            double iam,
            double effective,
            double cell,
            double dcGross,
            double dc,
            double ac) {
        int at = HourOfYear.of(month, day, hour);
        SiteYear site = HourlySites.with(extraterrestrial, zenithTrue, at, ghi, dni, dhi, air, wind);
        double sunWithin = 0.0004;
        assertThat(site.sun().trueZenithDeg(at)).isCloseTo(zenithTrue, within(sunWithin));
        assertThat(site.sun().apparentZenithDeg(at)).isCloseTo(zenithApparent, within(sunWithin));
        assertThat(site.sun().azimuthDeg(at))
                .isCloseTo(sunAzimuth, within(sunWithin / Math.sin(Math.toRadians(zenithTrue))));
        ArraySection section = ReferenceChain.section(tilt, azimuth);
        HourTrace trace = HourTrace.of(site, section, ReferenceChain.LOSSES, at);
        assertThat(trace.light().incidenceDeg()).isCloseTo(aoi, within(sunWithin));
        assertThat(trace.light().beam()).isCloseTo(beam, within(0.01));
        assertThat(trace.light().circumsolar()).isCloseTo(circumsolar, within(0.01));
        assertThat(trace.light().isotropic()).isCloseTo(isotropic, within(0.01));
        assertThat(trace.light().ground()).isCloseTo(ground, within(0.001));
        assertThat(trace.light().total()).isCloseTo(poa, within(0.01));
        assertThat(trace.modifier()).isCloseTo(iam, within(0.0002));
        assertThat(trace.effectiveWPerM2()).isCloseTo(effective, within(0.02));
        assertThat(trace.cellC()).isCloseTo(cell, within(0.001));
        assertThat(trace.grossDcKwPerKw()).isCloseTo(dcGross, within(0.00002));
        assertThat(trace.dcKwPerKw()).isCloseTo(dc, within(0.00002));
        assertThat(ReferenceChain.INVERTER.acKw(trace.dcKwPerKw())).isCloseTo(ac, within(0.00002));
    }

    /** Which of the five places a row is of is told by its sun. */
    private static final class HourlySites {

        private static final SunTrack[] TRACKS = {
            SunTrack.over(new Place(41.98, -87.92, 201, -6)),
            SunTrack.over(new Place(39.83, -104.65, 1650, -7)),
            SunTrack.over(new Place(32.17, -110.88, 809, -7)),
            SunTrack.over(new Place(36.1, -79.95, 273, -5)),
            SunTrack.over(new Place(25.8, -(80 + 16 / 60.0), 2, -5))
        };

        static SiteYear with(
                double outside, double zenith, int at, double ghi, double dni, double dhi, double air, double wind) {
            SunTrack sun = java.util.Arrays.stream(TRACKS)
                    .min(java.util.Comparator.comparingDouble(each -> Math.abs(each.trueZenithDeg(at) - zenith)))
                    .orElseThrow();
            assertThat(sun.extraterrestrialWPerM2(at)).isCloseTo(outside, within(0.001));
            double[][] hours = new double[5][HourOfYear.HOURS];
            double[] values = {ghi, dni, dhi, air, wind};
            for (int column = 0; column < 5; column++) {
                hours[column][at] = values[column];
            }
            return SiteYear.of(WeatherYear.given(sun.place(), hours[0], hours[1], hours[2], hours[3], hours[4]), sun);
        }
    }
}
