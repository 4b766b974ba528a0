package org.plumbrow.calc.ridethrough.house;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import java.util.function.DoubleSupplier;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.plumbrow.calc.Range;

/** The published relations, value by value, and what others measured. */
class AnimalHeatTest {

    @ParameterizedTest
    @CsvFileSource(resources = "/reference/ridethrough/animal-heat.csv", useHeadersInDisplayName = true)
    void totalHeatIsThePublishedOne(String animal, double massKg, double extra, double days, double watt) {
        Animal one = switch (animal) {
            case "broiler" -> new Animal.Broiler(massKg);
            case "caged layer" -> new Animal.Layer(massKg, extra, true);
            case "floor layer" -> new Animal.Layer(massKg, extra, false);
            case "pullet" -> new Animal.Pullet(massKg);
            case "turkey" -> new Animal.Turkey(massKg);
            case "fattening pig" -> new Animal.FatteningPig(massKg, extra);
            case "piglet" -> new Animal.Piglet(massKg, extra);
            case "dry sow" -> new Animal.DrySow(massKg, days, extra);
            case "nursing sow" -> new Animal.NursingSow(massKg, extra);
            case "cow" -> new Animal.Cow(massKg, extra, days);
            default -> throw new IllegalArgumentException(animal);
        };
        assertThat(one.totalW()).isCloseTo(watt, within(0.005));
    }

    @ParameterizedTest
    @CsvFileSource(resources = "/reference/ridethrough/sensible-heat.csv", useHeadersInDisplayName = true)
    void sensibleHeatFallsAsTheHouseWarms(
            Species species, double at10, double at20, double at25, double at30, double at35, double at38) {
        double[] airC = {10, 20, 25, 30, 35, 38};
        double[] expected = {at10, at20, at25, at30, at35, at38};
        for (int i = 0; i < airC.length; i++) {
            assertThat(species.sensibleW(airC[i])).isCloseTo(expected[i], within(0.05));
            assertThat(species.sensibleW(airC[i]) + species.latentW(airC[i]))
                    .isCloseTo(species.totalW(airC[i]), within(1e-9));
        }
        assertThat(species.totalW(20)).isEqualTo(1000);
        assertThat(species.sensibleW(55)).isZero();
    }

    @ParameterizedTest
    @CsvFileSource(resources = "/reference/ridethrough/measured-heat.csv", useHeadersInDisplayName = true)
    void liesAsFarFromWhatOthersMeasuredAsTheSourceSays(String what, double measured, double allowedPercent) {
        double layerTotal = new Animal.Layer(1.5, 0.05, true).totalW() / 1.5;
        Map<String, DoubleSupplier> computed = Map.of(
                "broiler 1 kg", () -> new Animal.Broiler(1).totalW(),
                "broiler 2.5 kg", () -> new Animal.Broiler(2.5).totalW(),
                "broiler 3 kg", () -> new Animal.Broiler(3).totalW(),
                "layer total W/kg", () -> layerTotal * Species.LAYERS.totalW(25) / 1000,
                "layer sensible W/kg", () -> layerTotal * Species.LAYERS.sensibleW(25) / 1000,
                "pig 100 kg with uplift", () -> new Animal.FatteningPig(100, 2.6).totalW() * LivestockHouse.PIG_UPLIFT,
                "pig 115 kg with uplift", () -> new Animal.FatteningPig(115, 2.6).totalW() * LivestockHouse.PIG_UPLIFT);
        double value = computed.get(what).getAsDouble();
        assertThat(100 * Math.abs(value - measured) / measured).isLessThanOrEqualTo(allowedPercent);
    }

    /** A bird that can lose no heat: 3.35 kJ/(kg K), 0.121 K a minute at 30 degC, 41 min from 41.5 to 46.5 degC. */
    @Test
    void aBirdThatLosesNothingWarmsAsFastAsTheExampleSays() {
        double watt = new Animal.Broiler(2.5).totalW() * Species.BROILERS.totalW(30) / 1000;
        double kelvinPerMinute = 60 * watt / (2.5 * 3350);
        assertThat(kelvinPerMinute).isCloseTo(0.121, within(0.0005));
        assertThat(5 / kelvinPerMinute).isCloseTo(41, within(0.5));
    }

    @Test
    void massesHaveLimits() {
        assertThatThrownBy(() -> new Animal.Broiler(0.01)).isInstanceOf(Range.OutOfRange.class);
        assertThatThrownBy(() -> new Animal.Piglet(21, 3)).hasMessageContaining("mass of a piglet");
        assertThatThrownBy(() -> new Animal.Cow(650, 90, 0)).hasMessageContaining("milk");
    }
}
