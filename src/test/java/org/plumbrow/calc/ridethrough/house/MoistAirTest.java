package org.plumbrow.calc.ridethrough.house;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

class MoistAirTest {

    @ParameterizedTest
    @CsvFileSource(resources = "/reference/ridethrough/saturation.csv", useHeadersInDisplayName = true)
    void saturationIsThatOfThePsychrometricTables(double airC, double kpa) {
        assertThat(MoistAir.saturationKpa(airC)).isCloseTo(kpa, within(0.0001));
    }

    @Test
    void iceAndWaterMeetAtFreezing() {
        assertThat(MoistAir.saturationKpa(-1e-9)).isCloseTo(MoistAir.saturationKpa(0), within(1e-4));
        assertThat(MoistAir.saturationKpa(-20)).isLessThan(MoistAir.saturationKpa(-10));
    }

    /** 0.0147 and 0.0272 kg/kg: the same tables. */
    @Test
    void saturatedAirHoldsWhatTheTablesSay() {
        assertThat(MoistAir.humidityRatio(20, 100)).isCloseTo(0.0147, within(0.00005));
        assertThat(MoistAir.humidityRatio(30, 100)).isCloseTo(0.0272, within(0.00005));
    }

    @Test
    void humidityComesBack() {
        for (double humidity : new double[] {5, 40, 80, 100}) {
            double ratio = MoistAir.humidityRatio(26, humidity);
            assertThat(MoistAir.relativeHumidityPercent(26, ratio)).isCloseTo(humidity, within(1e-9));
        }
        assertThat(MoistAir.relativeHumidityPercent(10, MoistAir.humidityRatio(26, 100)))
                .isEqualTo(100);
    }

    @ParameterizedTest
    @CsvFileSource(resources = "/reference/ridethrough/thi.csv", useHeadersInDisplayName = true)
    void theIndexOfCattleIsThePublishedOne(double airC, double relativeHumidity, double original, double used) {
        assertThat(MoistAir.thi(airC, relativeHumidity)).isCloseTo(used, within(0.005));
        double nrc = 1.8 * airC + 32 - (0.55 - 0.0055 * relativeHumidity) * (1.8 * airC - 26);
        assertThat(nrc).isCloseTo(original, within(0.005));
        assertThat(MoistAir.thi(airC, relativeHumidity)).isCloseTo(nrc, within(0.2));
    }
}
