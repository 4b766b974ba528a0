package org.plumbrow.calc.forecast;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class TallyTest {

    private static Tally reachedOn(int... days) {
        Tally tally = new Tally(1, 10);
        for (int day : days) {
            tally.reached(0, day);
        }
        return tally;
    }

    @Test
    void everyRunIsCountedOnceHoweverOftenATallyIsEmptied() {
        Tally all = new Tally(1, 10);
        Tally one = reachedOn(2, 3, 3);
        one.moveTo(all);
        one.reached(0, 7);
        one.moveTo(all);
        assertThat(one.runs(0)).isZero();
        assertThat(all.runs(0)).isEqualTo(4);
        assertThat(all.shareBy(0, 3)).isEqualTo(0.75);
    }

    @Test
    void theFirstDayOnWhichAShareIsReachedIsSaid() {
        Tally tally = reachedOn(1, 2, 2, 5, 9);
        assertThat(tally.dayOf(0, 0.2)).isEqualTo(1);
        assertThat(tally.dayOf(0, 0.5)).isEqualTo(2);
        assertThat(tally.dayOf(0, 0.8)).isEqualTo(5);
        assertThat(tally.dayOf(0, 0.95)).isEqualTo(9);
    }

    @Test
    void whatIsReachedOutsideTheDaysCountsOnTheNearestOne() {
        Tally tally = reachedOn(-4, 12);
        assertThat(tally.shareBy(0, 0)).isEqualTo(0.5);
        assertThat(tally.dayOf(0, 1)).isEqualTo(9);
    }
}
