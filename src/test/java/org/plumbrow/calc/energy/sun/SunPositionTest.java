package org.plumbrow.calc.energy.sun;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.time.Instant;
import java.time.ZoneOffset;
import java.time.ZonedDateTime;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.plumbrow.calc.Range;

/** The published worked example, a table of instants all over the earth, and what every sun must obey. */
class SunPositionTest {

    @Test
    void agreesWithTheWorkedExampleOfThePublishedAlgorithm() {
        var sun = SunPosition.at(
                ZonedDateTime.of(2003, 10, 17, 12, 30, 30, 0, ZoneOffset.ofHours(-7)),
                new Place(39.742476, -105.1786, 1830.14, -7),
                new SunPosition.Air(82_000, 11));
        assertThat(sun.apparentZenithDeg()).isCloseTo(50.11162, within(0.00001));
        assertThat(sun.azimuthDeg()).isCloseTo(194.340241, within(0.00001));
        assertThat(90 - sun.trueZenithDeg()).isCloseTo(39.872046, within(0.00001));
    }

    @ParameterizedTest
    @CsvFileSource(resources = "/reference/energy/sun-position.csv", useHeadersInDisplayName = true)
    void agreesWithTheTable(
            String utc,
            double latitude,
            double longitude,
            double elevation,
            double pressure,
            double temperature,
            double zenithTrue,
            double zenithApparent,
            double azimuth) {
        var sun = SunPosition.at(
                Instant.parse(utc).atZone(ZoneOffset.UTC),
                new Place(latitude, longitude, elevation, 0),
                new SunPosition.Air(pressure, temperature));
        assertThat(sun.trueZenithDeg()).isCloseTo(zenithTrue, within(0.0003));
        assertThat(sun.apparentZenithDeg()).isCloseTo(zenithApparent, within(0.0003));
        double turn = Math.abs(sun.azimuthDeg() - azimuth) % 360;
        assertThat(Math.min(turn, 360 - turn) * Math.sin(Math.toRadians(zenithTrue)))
                .isLessThan(0.0003);
    }

    @ParameterizedTest
    @CsvFileSource(resources = "/reference/energy/extraterrestrial.csv", useHeadersInDisplayName = true)
    void whatTheSunSendsAgreesWithTheTable(int dayOfYear, double normal) {
        assertThat(Extraterrestrial.normalWPerM2(dayOfYear)).isCloseTo(normal, within(0.001));
    }

    @ParameterizedTest
    @CsvFileSource(resources = "/reference/energy/erbs.csv", useHeadersInDisplayName = true)
    void theSplitOfTheGlobalAgreesWithTheTable(double ghi, double zenith, int day, double kt, double dni, double dhi) {
        ErbsSplit split = ErbsSplit.of(ghi, zenith, Extraterrestrial.normalWPerM2(day));
        assertThat(split.clearness()).isCloseTo(kt, within(0.000001));
        assertThat(split.dniWPerM2()).isCloseTo(dni, within(0.0001));
        assertThat(split.dhiWPerM2()).isCloseTo(dhi, within(0.0001));
    }

    @Test
    void aPlaceOffTheEarthIsRefused() {
        assertThatThrownBy(() -> new Place(90.1, 0, 0, 0)).isInstanceOf(Range.OutOfRange.class);
        assertThatThrownBy(() -> new Place(0, 181, 0, 0)).isInstanceOf(Range.OutOfRange.class);
        assertThatThrownBy(() -> new Place(0, 0, Double.NaN, 0)).isInstanceOf(Range.OutOfRange.class);
    }

    @Test
    void aQuarterOfTheEarthIsTenThousandKilometres() {
        Place pole = new Place(90, 0, 0, 0);
        assertThat(pole.distanceKmTo(new Place(0, 50, 0, 0))).isCloseTo(10_007.5, within(0.1));
        assertThat(pole.distanceKmTo(pole)).isZero();
    }
}
