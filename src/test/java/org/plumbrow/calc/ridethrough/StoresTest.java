package org.plumbrow.calc.ridethrough;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalTime;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.plumbrow.calc.ridethrough.HomeLoads.Freezer;

/** Stores, milk, greenhouse and home: closed solutions, laws, and what is said where no figure may be given. */
class StoresTest {

    /** Half the way after ln 2 time constants; 100 W on 1 MJ/K are 0.36 K/h. */
    @Test
    void theBalanceFollowsItsClosedSolutions() {
        StoreBalance exponential = new StoreBalance(3.6e6, 100, 0, 30);
        double halfLifeMinutes = Math.log(2) * 3.6e6 / 100 / 60;
        assertThat(exponential.temperatureC(10, halfLifeMinutes)).isCloseTo(20, within(1e-9));
        assertThat(exponential.minutesTo(10, 20).orElseThrow()).isCloseTo(halfLifeMinutes, within(1e-9));
        StoreBalance straight = new StoreBalance(1e6, 0, 100, 30);
        assertThat(straight.temperatureC(3, 60)).isCloseTo(3.36, within(1e-12));
        assertThat(straight.minutesTo(3, 3.36).orElseThrow()).isCloseTo(60, within(1e-9));
        assertThat(straight.kelvinPerHour(3)).isCloseTo(0.36, within(1e-12));
    }

    @Test
    void theTimeToATemperatureIsTheTimeAtWhichItIsThere() {
        StoreBalance balance = new StoreBalance(5e6, 40, 300, 22);
        for (double limit : new double[] {3, 8, 20, 29}) {
            double minutes = balance.minutesTo(2, limit).orElseThrow();
            assertThat(balance.temperatureC(2, minutes)).isCloseTo(limit, within(1e-9));
        }
        assertThat(balance.minutesTo(2, 29.5)).isEmpty();
        assertThat(balance.minutesTo(2, 1)).isEmpty();
        assertThat(balance.minutesTo(2, 2)).hasValue(0);
    }

    @Test
    void theFirstRateIsNeverLongerThanTheTruth() {
        StoreBalance balance = new StoreBalance(5e6, 40, 300, 22);
        assertThat(balance.minutesAtFirstRate(2, 8).orElseThrow())
                .isLessThan(balance.minutesTo(2, 8).orElseThrow());
        assertThat(balance.minutesAtFirstRate(2, 1)).isEmpty();
    }

    @Test
    void aFullStoreStandsLongerThanAnEmptyOneAndAColdDayLongerThanAHotOne() {
        Limit limit = new Limit(Limit.Kind.PRODUCT, 5, "test");
        RideThrough full = new ColdStore(20_000, 3600, 100, 130, 0.25, 15).rideThrough(3, 30, limit);
        RideThrough empty = new ColdStore(1000, 3600, 100, 130, 0.25, 15).rideThrough(3, 30, limit);
        RideThrough cool = new ColdStore(1000, 3600, 100, 130, 0.25, 15).rideThrough(3, 15, limit);
        assertThat(full.shortEnd().orElseThrow()).isGreaterThan(empty.shortEnd().orElseThrow());
        assertThat(cool.shortEnd().orElseThrow()).isGreaterThan(empty.shortEnd().orElseThrow());
        assertThat(full.cautions()).contains(Caution.PLANNING_AID, Caution.DOORS);
        assertThat(full.planned().orElseThrow()).isEqualTo(full.shortEnd().orElseThrow() / 2);
        assertThat(new ColdStore(1000, 3600, 100, 130, 0.25, 15)
                        .rideThrough(5, 30, limit)
                        .shortEnd())
                .hasValue(0);
        assertThatThrownBy(() -> new ColdStore(0, 3600, 0, 130, 0.25, 15)).hasMessageContaining("without product");
    }

    @Test
    void aFullColdTankStandsForMoreThanADayAndWarmMilkNotAtAll() {
        MilkTank tank = new MilkTank(7800, 4, MilkTank.uaOf(7800, 1, 24, 26));
        assertThat(tank.rideThrough(30).shortEnd()).isEmpty();
        assertThat(tank.rideThrough(30).cautions()).contains(Caution.PLANNING_AID, Caution.MILK);
        assertThat(new MilkTank(7800, 7, 13.54).rideThrough(30).shortEnd()).hasValue(0);
        MilkTank little = new MilkTank(200, 4, 13.54);
        assertThat(little.rideThrough(30).shortEnd().orElseThrow())
                .isCloseTo(200 * 3900 / 13.54 * Math.log(26 / 23.0) / 60, within(1e-6));
    }

    @Test
    void preCooledMilkMayComeInAnyAmountAndWarmMilkOnlySoMuch() {
        MilkTank tank = new MilkTank(3000, 4, 13.54);
        assertThat(tank.mostArrivingKg(9.9, MilkTank.BLEND)).isEmpty();
        double most = tank.mostArrivingKg(35, MilkTank.BLEND).orElseThrow();
        assertThat(tank.blendC(most, 35)).isCloseTo(10, within(1e-9));
        assertThat(new MilkTank(3000, 10.5, 13.54).mostArrivingKg(35, MilkTank.BLEND))
                .hasValue(0);
    }

    @Test
    void coolingStopsAtWhatTheTankIsSetTo() {
        MilkCooling cooling = new MilkCooling(LocalTime.of(8, 30), 8.5, 4);
        assertThat(cooling.afterCoolingC(30, 3.5)).isCloseTo(6.5, within(1e-12));
        assertThat(cooling.afterCoolingC(600, 3.5)).isEqualTo(3.5);
        assertThat(cooling.coldBy()).isEqualTo("10:30");
        assertThat(new MilkCooling(LocalTime.of(8, 30), 3, 4).afterCoolingC(600, 3.5))
                .isEqualTo(3);
    }

    @Test
    void aGreenhouseInItsOwnWarmthReachesNoLimit() {
        Greenhouse house = new Greenhouse(446, 4, 900, 1, 5360, 268, 0.5);
        Limit frost = new Limit(Limit.Kind.FROST, 5, "test");
        RideThrough mild = house.rideThrough(18, 10, 0, List.of(frost));
        assertThat(mild.hasFigure()).isTrue();
        assertThat(mild.shortEnd()).isEmpty();
        RideThrough cold = house.rideThrough(18, -10, 0, List.of(frost));
        RideThrough colder = house.rideThrough(18, -20, 0, List.of(frost));
        assertThat(colder.shortEnd().orElseThrow()).isLessThan(cold.shortEnd().orElseThrow());
        assertThat(cold.cautions()).contains(Caution.AIR_MASS);
    }

    @Test
    void aHomeStandsFourHoursByItsRefrigeratorAndADayOrTwoByItsFreezer() {
        assertThat(new HomeLoads(false, true, Freezer.FULL).rideThrough().shortEnd())
                .hasValue(240);
        assertThat(new HomeLoads(false, false, Freezer.FULL).rideThrough().shortEnd())
                .hasValue(2880);
        assertThat(new HomeLoads(false, false, Freezer.HALF_FULL).rideThrough().shortEnd())
                .hasValue(1440);
    }

    @Test
    void whereSomebodyDependsOnEquipmentThereIsNoFigure() {
        RideThrough home = new HomeLoads(true, true, Freezer.FULL).rideThrough();
        assertThat(home.hasFigure()).isFalse();
        assertThat(home.shortEnd()).isEmpty();
        assertThat(home.planned()).isEmpty();
        assertThat(home.cautions()).contains(Caution.MEDICAL);
    }

    @Test
    void noCautionSaysThatSomethingIsSafeAndNoAnswerGoesWithoutOne() {
        for (Caution caution : Caution.values()) {
            assertThat(caution.sentence().toLowerCase(java.util.Locale.US)).doesNotContain("safe");
        }
        assertThatThrownBy(() -> new RideThrough("tank", 60, List.of(), java.util.Set.of()))
                .hasMessageContaining("carries no caution");
    }
}
