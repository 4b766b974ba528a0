package org.plumbrow.calc.ridethrough;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.plumbrow.calc.Range;
import org.plumbrow.calc.ridethrough.Generator.Rotation;
import org.plumbrow.calc.ridethrough.Generator.Transfer;
import org.plumbrow.calc.ridethrough.GeneratorCover.Asked;
import org.plumbrow.calc.ridethrough.GeneratorCover.Check;
import org.plumbrow.calc.ridethrough.GeneratorCover.FarmLoad;

/** Hand-worked: fans of 20 kW in all, a well pump of 4 kW that starts with five times its load. */
class GeneratorCoverTest {

    private static final List<FarmLoad> LOADS =
            List.of(new FarmLoad("well", 4, 5), new FarmLoad("fans", 18, 1), new FarmLoad("controls", 2, 1));

    private double ratedKw = 45;
    private Transfer transfer = Transfer.DOUBLE_THROW;
    private double heightM = 200;
    private double airC = 20;
    private double fuelGal = 20;
    private OptionalInt daysSinceRun = OptionalInt.of(3);
    private Rotation rotation = Rotation.SAME;

    private GeneratorCover cover(double outageMinutes) {
        Generator generator =
                new Generator(ratedKw, transfer, heightM, airC, fuelGal, 0.08, daysSinceRun, rotation, 15);
        return GeneratorCover.of(generator, LOADS, outageMinutes);
    }

    private Check check(Asked asked) {
        return cover(90).checks().stream()
                .filter(one -> one.asked() == asked)
                .findFirst()
                .orElseThrow();
    }

    @Test
    void whatIsMetIsProvenAndCarriesItsCautionsAllTheSame() {
        assertThat(cover(90).isProven()).isTrue();
        assertThat(cover(90).cautions())
                .contains(Caution.PLANNING_AID, Caution.GENERATOR, Caution.GENERATOR_MAY_FAIL, Caution.RESTART);
    }

    /** 24 kW running need 30 kW; 20 kW running and the pump's 20 kVA need 40. */
    @Test
    void theHardestStartComesLastAndDecides() {
        assertThat(cover(90).startingPeakKva()).isEqualTo(40);
        assertThat(cover(90).runningKw()).isEqualTo(24);
        ratedKw = 40;
        assertThat(check(Asked.STARTING_LOAD).met()).isTrue();
        ratedKw = 39.9;
        assertThat(check(Asked.STARTING_LOAD).met()).isFalse();
        assertThat(check(Asked.RUNNING_LOAD).met()).isTrue();
        ratedKw = 30;
        assertThat(check(Asked.RUNNING_LOAD).met()).isTrue();
        ratedKw = 29.9;
        assertThat(check(Asked.RUNNING_LOAD).met()).isFalse();
    }

    /** 24 kW use 1.92 gal an hour: 8.64 gal last 270 min, three times 90. */
    @Test
    void fuelLastsThreeTimesTheOutage() {
        fuelGal = 8.64;
        assertThat(cover(90).fuelMinutes()).isCloseTo(270, within(1e-9));
        assertThat(check(Asked.FUEL).met()).isTrue();
        fuelGal = 8.63;
        assertThat(check(Asked.FUEL).met()).isFalse();
    }

    @Test
    void itRanUnderTheFarmsLoadWithinSevenDays() {
        daysSinceRun = OptionalInt.of(7);
        assertThat(check(Asked.RUN_UNDER_LOAD).met()).isTrue();
        daysSinceRun = OptionalInt.of(8);
        assertThat(check(Asked.RUN_UNDER_LOAD).met()).isFalse();
        daysSinceRun = OptionalInt.empty();
        assertThat(check(Asked.RUN_UNDER_LOAD).met()).isFalse();
        assertThat(cover(90).isProven()).isFalse();
    }

    @Test
    void withoutTransferSwitchOrWithPhasesTheOtherWayNothingIsProven() {
        transfer = Transfer.NONE;
        assertThat(cover(90).isProven()).isFalse();
        transfer = Transfer.AUTOMATIC;
        assertThat(cover(90).isProven()).isTrue();
        for (Rotation wrong : List.of(Rotation.OPPOSITE, Rotation.NOT_CHECKED)) {
            rotation = wrong;
            assertThat(cover(90).isProven()).isFalse();
        }
        rotation = Rotation.SINGLE_PHASE;
        assertThat(cover(90).isProven()).isTrue();
    }

    /** 900 m: 7 % less; 36 degC: 2 % less. 45 kW give 45 x 0.93 x 0.98 = 41.013 kW. */
    @Test
    void heightAndHeatTakeTheirShare() {
        heightM = 900;
        airC = 36;
        Generator generator = new Generator(45, transfer, heightM, airC, 20, 0.08, daysSinceRun, rotation, 15);
        assertThat(generator.usableKw()).isCloseTo(41.013, within(1e-9));
        assertThat(check(Asked.STARTING_LOAD).limit()).isCloseTo(41.013, within(1e-9));
        assertThat(Generator.ratedKwOfTractor(100)).isEqualTo(50);
    }

    @Test
    void itIsShownWhatHappensWhenItStops() {
        GeneratorCover.Stopped bound = GeneratorCover.ifItStops(30, 90, 8.6);
        assertThat(bound.stillOffMinutes()).isEqualTo(60);
        assertThat(bound.shortByMinutes()).isCloseTo(51.4, within(1e-9));
        assertThat(GeneratorCover.ifItStops(30, 90, 60).shortByMinutes()).isZero();
        assertThat(GeneratorCover.ifItStops(120, 90, 8.6).stillOffMinutes()).isZero();
    }

    @Test
    void figuresHaveLimits() {
        assertThatThrownBy(() -> new FarmLoad("fans", 18, 0.5)).isInstanceOf(Range.OutOfRange.class);
        assertThatThrownBy(() -> new Generator(0, transfer, 0, 20, 10, 0.08, daysSinceRun, rotation, 15))
                .hasMessageContaining("rated power");
    }
}
