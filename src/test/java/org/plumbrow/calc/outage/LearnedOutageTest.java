package org.plumbrow.calc.outage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.plumbrow.calc.outage.LearnedOutage.Finished;

/** Against the closed form of the mean that is drawn towards one, and its ends. */
class LearnedOutageTest {

    @Test
    void nothingFinishedChangesNothing() {
        LearnedOutage learned = LearnedOutage.of(List.of());
        assertThat(learned).isEqualTo(new LearnedOutage(0, 1));
        assertThat(learned.minutes(75)).isEqualTo(75);
    }

    @Test
    void oneOutageGoesAQuarterOfTheWayAndNineThreeQuarters() {
        Finished half = new Finished(60, 90);
        assertThat(LearnedOutage.of(List.of(half)).factor()).isEqualTo(1.125, within(1e-12));
        LearnedOutage nine = LearnedOutage.of(Collections.nCopies(9, half));
        assertThat(nine.factor()).isEqualTo(1.375, within(1e-12));
        assertThat(nine.minutes(60)).isEqualTo(83);
    }

    @Test
    void itComesToTheTrueRatioWithManyAndNeverLeavesWhatWasSeen() {
        Finished faster = new Finished(100, 80);
        assertThat(LearnedOutage.of(Collections.nCopies(3_000, faster)).factor())
                .isEqualTo(0.8, within(1e-3));
        assertThat(LearnedOutage.of(List.of(faster)).factor()).isBetween(0.8, 1.0);
    }

    @Test
    void oneBadDayCountsAsFourTimesAtMost() {
        assertThat(LearnedOutage.of(List.of(new Finished(60, 6_000))).factor()).isEqualTo(7.0 / 4, within(1e-12));
        assertThat(LearnedOutage.of(List.of(new Finished(60, 0))).factor()).isEqualTo(3.25 / 4, within(1e-12));
    }

    @Test
    void plannedMinutesFollowWhatWasLearnedUpToTheNextQuarter() {
        OutageMinutes tap = OutageMinutes.of(OutageWork.tapOnly());
        assertThat(tap.planned(LearnedOutage.of(List.of()))).isEqualTo(tap.planned());
        assertThat(tap.planned(new LearnedOutage(1, 1.125))).isEqualTo(105);
        assertThat(tap.planned(new LearnedOutage(9, 20))).isEqualTo(720);
    }

    @Test
    void minutesThatCannotBeAreRefused() {
        assertThatThrownBy(() -> new Finished(0, 10)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Finished(10, -1)).isInstanceOf(IllegalArgumentException.class);
    }
}
