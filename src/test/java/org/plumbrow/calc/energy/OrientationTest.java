package org.plumbrow.calc.energy;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.plumbrow.calc.energy.sun.Place;
import org.plumbrow.calc.energy.sun.SunTrack;
import org.plumbrow.calc.energy.weather.InventedWeather;

/** The map of tilts and azimuths, and how far apart rows must stand. */
class OrientationTest {

    private static SiteYear site(Place place) {
        return SiteYear.of(InventedWeather.yearAt(place), SunTrack.over(place));
    }

    private static OrientationMap map(SiteYear site) {
        return OrientationMap.of(
                site,
                ArraySection.open("one", 10, new Plane(0, 180)),
                new Inverter(10, 0.96),
                Losses.USUAL,
                OrientationMap.steps(0, 60, 13),
                OrientationMap.steps(0, 350, 36));
    }

    @Test
    void theBestWayIsTowardsTheEquatorAtAModerateTilt() {
        OrientationMap north = map(site(InventedWeather.PLACE));
        assertThat(north.best().plane().azimuthDeg()).isBetween(160.0, 200.0);
        assertThat(north.best().plane().tiltDeg()).isBetween(25.0, 40.0);
        OrientationMap south = map(site(new Place(-41.5, -88.25, 210, -6)));
        assertThat(Math.abs(((south.best().plane().azimuthDeg() + 180) % 360) - 180))
                .isLessThanOrEqualTo(20);
        assertThat(south.shareOfBest(0, 0)).isBetween(0.8, 1.0);
    }

    @Test
    void eachPointIsWhatTheWholeChainGives() {
        SiteYear site = site(InventedWeather.PLACE);
        OrientationMap map = map(site);
        ArraySection turned = ArraySection.open("one", 10, new Plane(map.tiltsDeg()[5], map.azimuthsDeg()[20]));
        EnergyYield yield = EnergyYield.of(
                site, List.of(new InverterGroup("one", new Inverter(10, 0.96), List.of(turned))), Losses.USUAL);
        assertThat(map.kwhPerKw()[5][20]).isCloseTo(yield.kwhPerKw(), within(1e-9));
    }

    @Test
    void aFlatPlaneFacesEverywhere() {
        OrientationMap map = map(site(InventedWeather.PLACE));
        for (double kwhPerKw : map.kwhPerKw()[0]) {
            assertThat(kwhPerKw).isCloseTo(map.kwhPerKw()[0][0], within(1e-9));
        }
    }

    @Test
    void atNoonOnTheShortestDayTheSunsHeightGivesThePitch() {
        // the sun's noon on 21 December: 90 - 41.5 - 23.44 = 25.06 degrees and a little refraction
        RowSpacing noon = RowSpacing.free(InventedWeather.PLACE, new Plane(25, 180), 4, 0);
        double height = Math.toRadians(25.1);
        double expected = 4 * (Math.cos(Math.toRadians(25)) + Math.sin(Math.toRadians(25)) / Math.tan(height));
        assertThat(noon.pitchM()).isCloseTo(expected, within(0.02));
        assertThat(noon.profileDeg()).isCloseTo(25.1, within(0.1));
        assertThat(noon.gapM()).isCloseTo(noon.pitchM() - 4 * Math.cos(Math.toRadians(25)), within(1e-9));
    }

    @ParameterizedTest
    @CsvSource({"41.5,-88.25,-6,180", "-41.5,-88.25,-6,0", "25.8,-80.27,-5,180"})
    void rowsAtThatPitchAreFreeOfShadeAndALittleCloserAreNot(
            double latitude, double longitude, double utcOffset, double azimuth) {
        Place place = new Place(latitude, longitude, 0, utcOffset);
        Plane plane = new Plane(25, azimuth);
        RowSpacing four = RowSpacing.free(place, plane, 4, 4);
        var sun = org.plumbrow.calc.energy.sun.SunPosition.at(four.when(), place);
        double zenith = Math.toRadians(sun.apparentZenithDeg());
        double turned = Math.toRadians(sun.azimuthDeg());
        double up = Math.cos(zenith);
        double cosine =
                plane.cosineOfIncidence(up, Math.sin(zenith) * Math.sin(turned), Math.sin(zenith) * Math.cos(turned));
        assertThat(new Rows(4, four.pitchM()).shadedShare(up, cosine)).isCloseTo(0, within(1e-9));
        assertThat(new Rows(4, four.pitchM() * 0.98).shadedShare(up, cosine)).isPositive();
        assertThat(four.pitchM())
                .isGreaterThan(RowSpacing.free(place, plane, 4, 0).pitchM());
        assertThat(four.landM2PerKw(4, 213)).isCloseTo(four.pitchM() / 4 / 0.213, within(1e-9));
    }

    @Test
    void noPitchIsWideEnoughWhenTheSunIsNotUp() {
        assertThatThrownBy(() -> RowSpacing.free(new Place(69.7, 18.9, 0, 1), new Plane(40, 180), 4, 4))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("the sun is not up for 4.0 h on the shortest day");
    }
}
