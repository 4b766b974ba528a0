package org.plumbrow.calc.ridethrough.house;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;
import org.plumbrow.calc.ridethrough.Limit;
import org.plumbrow.calc.ridethrough.Limit.Kind;

/** The stepped balance against closed solutions, against an integral made another way, and against its own laws. */
class HouseBalanceTest {

    private static final LivestockHouse BROILERS =
            LivestockHouse.closed("house 1", new Animal.Broiler(2.5), 24_000, 5990, 1200, 0.5);
    private static final Limit HEAT = new Limit(Kind.HEAT, 36.1, "test");

    private static OptionalDouble minutes(HouseBalance balance, Limit limit, double startC, double stepS) {
        return balance.minutesTo(limit, HouseAir.of(startC, 60), 1440, stepS);
    }

    /** One turkey poult in a large house gives next to nothing: the air follows To + (Ti - To) exp(-G t / C). */
    @Test
    void aHouseWithoutHeatFollowsTheExponential() {
        LivestockHouse empty = LivestockHouse.closed("empty", new Animal.Broiler(0.03), 1, 5990, 1200, 0.5);
        HouseBalance balance = HouseBalance.of(empty, Outdoors.shaded(0, 60));
        double perMinute = 60 * balance.lossWPerK() / (2 * HouseBalance.AIR_J_PER_M3_K * 5990);
        List<HouseAir> curve = balance.curve(HouseAir.of(30, 40), 120);
        for (int minute = 0; minute <= 120; minute += 10) {
            assertThat(curve.get(minute).airC()).isCloseTo(30 * Math.exp(-perMinute * minute), within(0.001));
        }
    }

    /** Sun alone, so strong that the animals do not matter: To + q/G (1 - exp(-G t / C)). */
    @Test
    void aConstantSourceFollowsItsClosedSolution() {
        LivestockHouse empty = LivestockHouse.closed("empty", new Animal.Broiler(0.03), 1, 5990, 1200, 0.5);
        HouseBalance balance = HouseBalance.of(empty, new Outdoors(20, 60, 30_000));
        double perMinute = 60 * balance.lossWPerK() / (2 * HouseBalance.AIR_J_PER_M3_K * 5990);
        double settles = 20 + 30_000 / balance.lossWPerK();
        double expected = Math.log((settles - 20) / (settles - 26)) / perMinute;
        assertThat(minutes(balance, new Limit(Kind.HEAT, 26, "test"), 20, 20).orElseThrow())
                .isCloseTo(expected, within(0.001));
        assertThat(balance.settlesAtC().orElseThrow()).isCloseTo(settles, within(0.001));
    }

    /** Without envelope and exchange and with heat that does not change: a straight line. Carbon dioxide always is one. */
    @Test
    void aTightHouseWithSunAloneWarmsInAStraightLine() {
        LivestockHouse tight = LivestockHouse.closed("tight", new Animal.Broiler(0.03), 1, 5990, 0, 0);
        HouseBalance balance = HouseBalance.of(tight, new Outdoors(20, 60, 30_000));
        double perMinute = 60 * 30_000 / (2 * HouseBalance.AIR_J_PER_M3_K * 5990);
        assertThat(balance.curve(HouseAir.of(20, 40), 30).get(30).airC()).isCloseTo(20 + 30 * perMinute, within(0.001));
        assertThat(balance.settlesAtC()).isEmpty();
    }

    /** The moisture of a house that keeps its temperature: To ratio + m/(rho V a) (1 - exp(-a t)). */
    @Test
    void moistureFollowsItsClosedSolution() {
        LivestockHouse house = LivestockHouse.closed("house", new Animal.Broiler(2.5), 200, 5990, 1200, 4);
        HouseBalance balance = HouseBalance.of(house, Outdoors.shaded(20, 50));
        double settles = balance.settlesAtC().orElseThrow();
        double outdoors = MoistAir.humidityRatio(20, 50);
        double kgPerHour = house.hpu() * Species.BROILERS.latentW(settles) / 680;
        HouseAir start = new HouseAir(settles, outdoors, 0.3);
        HouseAir after = balance.curve(start, 30).get(30);
        double expected = outdoors + kgPerHour / (1.2 * 5990 * 4) * (1 - Math.exp(-4 * 0.5));
        assertThat(after.humidityRatio()).isCloseTo(expected, within(1e-7));
    }

    /** Fourth order: half the step, a sixteenth of the error. Against the integral of C dT / (heat - loss). */
    @Test
    void theErrorFallsWithTheFourthPowerOfTheStep() {
        HouseBalance balance = HouseBalance.of(BROILERS.withMassFactor(1), Outdoors.shaded(20, 60));
        double exact = byQuadrature(balance, 24, 36.1);
        double coarse = Math.abs(minutes(balance, HEAT, 24, 600).orElseThrow() - exact);
        double half = Math.abs(minutes(balance, HEAT, 24, 300).orElseThrow() - exact);
        double quarter = Math.abs(minutes(balance, HEAT, 24, 150).orElseThrow() - exact);
        assertThat(Math.log(coarse / half) / Math.log(2)).isBetween(3.5, 5.0);
        assertThat(Math.log(half / quarter) / Math.log(2)).isBetween(3.5, 5.0);
        assertThat(minutes(balance, HEAT, 24, HouseBalance.STEP_S).orElseThrow())
                .isCloseTo(exact, within(1e-5));
    }

    /** As one node has one temperature, the time to a limit is an integral: no step of time in it at all. */
    @Test
    void everyTimeIsTheIntegralOfTheWayOverTheRise() {
        Random chance = new Random(7);
        int reached = 0;
        for (int i = 0; i < 200; i++) {
            LivestockHouse house = LivestockHouse.closed(
                            "house",
                            new Animal.Broiler(1 + 2 * chance.nextDouble()),
                            5000 + chance.nextInt(25_000),
                            3000 + 5000 * chance.nextDouble(),
                            500 + 2000 * chance.nextDouble(),
                            2 * chance.nextDouble())
                    .withMassFactor(1 + 4 * chance.nextDouble());
            HouseBalance balance = HouseBalance.of(house, Outdoors.shaded(5 + 35 * chance.nextDouble(), 60));
            double startC = 20 + 10 * chance.nextDouble();
            OptionalDouble stepped = minutes(balance, HEAT, startC, HouseBalance.STEP_S);
            if (stepped.isPresent()) {
                reached++;
                assertThat(stepped.getAsDouble())
                        .isCloseTo(byQuadrature(balance, startC, 36.1), within(1e-4 * stepped.getAsDouble()));
            } else {
                assertThat(balance.settlesAtC().orElseThrow()).isLessThan(36.2);
            }
        }
        assertThat(reached).isBetween(60, 195);
    }

    /** Simpson's rule over the temperature, minutes. */
    private static double byQuadrature(HouseBalance balance, double fromC, double toC) {
        int parts = 4000;
        double width = (toC - fromC) / parts;
        double sum = 0;
        for (int i = 0; i <= parts; i++) {
            double weight = i == 0 || i == parts ? 1 : i % 2 == 1 ? 4 : 2;
            sum += weight / balance.riseKPerS(fromC + i * width);
        }
        return sum * width / 3 / 60;
    }

    private static double minutesOf(LivestockHouse house, double outdoorC, double startC) {
        return minutes(HouseBalance.of(house, Outdoors.shaded(outdoorC, 60)), HEAT, startC, 20)
                .orElse(Double.POSITIVE_INFINITY);
    }

    @Test
    void moreBirdsHeavierBirdsWarmerOutdoorsWarmerStartAreShorter() {
        double usual = minutesOf(BROILERS, 20, 24);
        UnaryOperator<LivestockHouse> more =
                house -> LivestockHouse.closed("h", new Animal.Broiler(2.5), 26_000, 5990, 1200, 0.5);
        UnaryOperator<LivestockHouse> heavier =
                house -> LivestockHouse.closed("h", new Animal.Broiler(3), 24_000, 5990, 1200, 0.5);
        assertThat(minutesOf(more.apply(BROILERS), 20, 24)).isLessThan(usual);
        assertThat(minutesOf(heavier.apply(BROILERS), 20, 24)).isLessThan(usual);
        assertThat(minutesOf(BROILERS.withUplift(1.2), 20, 24)).isLessThan(usual);
        assertThat(minutesOf(BROILERS, 25, 24)).isLessThan(usual);
        assertThat(minutesOf(BROILERS, 20, 26)).isLessThan(usual);
        assertThat(minutesOf(BROILERS, 10, 24)).isGreaterThan(usual);
        assertThat(minutesOf(BROILERS.withMassFactor(5), 20, 24)).isGreaterThan(usual);
        assertThat(minutesOf(BROILERS.opened(3), 20, 24)).isGreaterThan(usual);
    }

    @Test
    void theLongerTheColderTheOutdoorsUntilItNeverComes() {
        double last = 0;
        for (double outdoorC = 40; outdoorC >= -40; outdoorC -= 5) {
            double minutes = minutesOf(BROILERS.opened(2), outdoorC, 26);
            assertThat(minutes).isGreaterThanOrEqualTo(last);
            last = minutes;
        }
        assertThat(last).isInfinite();
    }

    @Test
    void whatIsPassedAtTheStartTakesNoTime() {
        HouseBalance balance = HouseBalance.of(BROILERS, Outdoors.shaded(33, 60));
        assertThat(minutes(balance, HEAT, 36.1, 20)).hasValue(0);
        assertThat(minutes(balance, new Limit(Kind.COLD, 30, "test"), 30, 20)).hasValue(0);
    }

    @Test
    void theHorizonEndsTheLook() {
        HouseBalance balance = HouseBalance.of(BROILERS, Outdoors.shaded(33, 60));
        assertThat(balance.minutesTo(HEAT, HouseAir.of(29, 60), 17.2, 20)).isEmpty();
        assertThat(balance.minutesTo(HEAT, HouseAir.of(29, 60), 17.4, 20)).isPresent();
    }

    @Test
    void carbonDioxideIsNoLimitWhileCurtainsAreOpenAndTheUpliftLeavesItAlone() {
        Limit limit = new Limit(Kind.CO2, 3, "test");
        HouseBalance closed = HouseBalance.of(BROILERS, Outdoors.shaded(10, 60));
        HouseBalance uplifted = HouseBalance.of(BROILERS.withUplift(1.2), Outdoors.shaded(10, 60));
        HouseBalance open = HouseBalance.of(BROILERS.opened(15), Outdoors.shaded(10, 60));
        assertThat(minutes(uplifted, limit, 24, 20)).isEqualTo(minutes(closed, limit, 24, 20));
        assertThat(minutes(open, limit, 24, 20)).isEmpty();
        double closedPercent = closed.curve(HouseAir.of(24, 60), 60).get(60).co2Percent();
        assertThat(closedPercent).isCloseTo(0.3 + 1.565, within(0.001));
        assertThat(open.curve(HouseAir.of(24, 60), 60).get(60).co2Percent()).isEqualTo(0.3);
    }

    /** Cows: 100 of 650 kg and 30 kg of milk in a closed barn on a warm humid day: the index rises from the start. */
    @Test
    void cattleAreWatchedByTheirIndex() {
        LivestockHouse barn = LivestockHouse.closed("barn", new Animal.Cow(650, 30, 100), 100, 6000, 4000, 5);
        HouseBalance warm = HouseBalance.of(barn, Outdoors.shaded(21, 70));
        Limit limit = new Limit(Kind.THI, 72, "test");
        double minutes = warm.minutesTo(limit, HouseAir.of(20, 70), 1440, 20).orElseThrow();
        HouseAir at = warm.curve(HouseAir.of(20, 70), (int) Math.ceil(minutes)).get((int) Math.ceil(minutes));
        assertThat(at.thi()).isCloseTo(72, within(0.3));
        assertThat(HouseBalance.of(barn, Outdoors.shaded(2, 70)).minutesTo(limit, HouseAir.of(8, 70), 1440, 20))
                .isEmpty();
    }

    @Test
    void airNeverHoldsMoreWaterThanItCan() {
        for (HouseAir air : HouseBalance.of(BROILERS, Outdoors.shaded(5, 90)).curve(HouseAir.of(24, 70), 240)) {
            assertThat(air.humidityRatio()).isLessThanOrEqualTo(MoistAir.humidityRatio(air.airC(), 100) + 1e-12);
        }
    }
}
