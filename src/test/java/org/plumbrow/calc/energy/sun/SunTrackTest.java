package org.plumbrow.calc.energy.sun;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.ZoneOffset;
import java.time.ZonedDateTime;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A year of sun: middles of hours, both hemispheres, odd clocks, the pole. */
class SunTrackTest {

    @Test
    void hourTenOfTheFilesIsTheSunAtHalfPastNine() {
        Place chicago = new Place(41.98, -87.92, 201, -6);
        int hour = HourOfYear.of(3, 21, 10);
        var sun = SunPosition.at(ZonedDateTime.of(2023, 3, 21, 9, 30, 0, 0, ZoneOffset.ofHours(-6)), chicago);
        SunTrack track = SunTrack.over(chicago);
        assertThat(track.apparentZenithDeg(hour)).isCloseTo(sun.apparentZenithDeg(), within(0.0003));
        assertThat(track.azimuthDeg(hour)).isCloseTo(sun.azimuthDeg(), within(0.0005));
    }

    @ParameterizedTest
    @CsvSource({"41.98,-87.92,-6", "-33.9,18.6,2", "0,36.8,3", "23.44,72.9,5.5", "-77,166,12", "89.9,0,0"})
    void everyHourOfTheYearAgreesWithTheLongAlgorithm(double latitude, double longitude, double utcOffset) {
        Place place = new Place(latitude, longitude, 300, utcOffset);
        SunTrack track = SunTrack.over(place);
        ZonedDateTime first =
                ZonedDateTime.of(2023, 1, 1, 0, 30, 0, 0, ZoneOffset.UTC).minusMinutes(Math.round(utcOffset * 60));
        double furthest = 0;
        for (int hour = 0; hour < HourOfYear.HOURS; hour++) {
            var there = AnchoredSun.Vector.to(SunPosition.at(first.plusHours(hour), place));
            double zenith = Math.toRadians(track.trueZenithDeg(hour));
            double azimuth = Math.toRadians(track.azimuthDeg(hour));
            var here = new AnchoredSun.Vector(
                    Math.sin(zenith) * Math.sin(azimuth), Math.sin(zenith) * Math.cos(azimuth), Math.cos(zenith));
            furthest = Math.max(furthest, Math.sqrt(there.minus(here).dot(there.minus(here))));
        }
        assertThat(Math.toDegrees(furthest)).isLessThan(0.0003);
    }

    @ParameterizedTest
    @CsvSource({"41.98,-87.92,-6", "-33.9,18.6,2", "0,36.8,3", "19.1,72.9,5.5", "-41.3,174.8,12", "69.7,18.9,1"})
    void theSunIsUpForHalfOfTheYearEverywhere(double latitude, double longitude, double utcOffset) {
        SunTrack track = SunTrack.over(new Place(latitude, longitude, 0, utcOffset));
        long hoursUp = IntStream.range(0, HourOfYear.HOURS)
                .filter(hour -> track.apparentZenithDeg(hour) < 90)
                .count();
        assertThat(hoursUp).isBetween(4300L, 4640L);
    }

    @ParameterizedTest
    @CsvSource({"41.98,-87.92,-6,180", "-33.9,18.6,2,0", "-41.3,174.8,12,0", "53.3,-6.3,0,180"})
    void theSunStandsHighestTowardsTheEquator(double latitude, double longitude, double utcOffset, double azimuth) {
        SunTrack track = SunTrack.over(new Place(latitude, longitude, 0, utcOffset));
        for (int day = 0; day < 365; day++) {
            int highest = IntStream.range(day * 24, day * 24 + 24)
                    .reduce((a, b) -> track.up(a) > track.up(b) ? a : b)
                    .orElseThrow();
            double turn = Math.abs(track.azimuthDeg(highest) - azimuth);
            assertThat(Math.min(turn, 360 - turn)).as("day %d", day).isLessThan(26);
        }
    }

    @Test
    void polarDayAndPolarNightAreWhole() {
        SunTrack track = SunTrack.over(new Place(78.2, 15.6, 0, 1));
        IntStream.range(HourOfYear.of(6, 21, 1), HourOfYear.of(6, 21, 24))
                .forEach(hour -> assertThat(track.apparentZenithDeg(hour)).isLessThan(90));
        IntStream.range(HourOfYear.of(12, 21, 1), HourOfYear.of(12, 21, 24))
                .forEach(hour -> assertThat(track.apparentZenithDeg(hour)).isGreaterThan(90));
    }

    @Test
    void theVectorToTheSunHasLengthOneAndAgreesWithTheAngles() {
        SunTrack track = SunTrack.over(new Place(32.17, -110.88, 809, -7));
        for (int hour = 0; hour < HourOfYear.HOURS; hour += 7) {
            double length = Math.sqrt(track.up(hour) * track.up(hour)
                    + track.east(hour) * track.east(hour)
                    + track.north(hour) * track.north(hour));
            assertThat(length).isCloseTo(1, within(1e-12));
            assertThat(Math.toDegrees(Math.acos(track.up(hour))))
                    .isCloseTo(track.apparentZenithDeg(hour), within(1e-6));
        }
    }

    @Test
    void theLastHourOfAMonthBelongsToIt() {
        assertThat(HourOfYear.monthOf(HourOfYear.of(1, 31, 24))).isEqualTo(1);
        assertThat(HourOfYear.monthOf(HourOfYear.of(2, 1, 1))).isEqualTo(2);
        assertThat(HourOfYear.of(12, 31, 24)).isEqualTo(HourOfYear.HOURS - 1);
        assertThat(HourOfYear.dayOfMonth(HourOfYear.of(2, 28, 24))).isEqualTo(28);
        assertThat(HourOfYear.firstOf(12)).isEqualTo(HourOfYear.of(12, 1, 1));
    }
}
