package org.plumbrow.calc.outage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/** Anchors of common practice: what a tap, a panel, a meter base and a transformer usually take. */
class OutageMinutesTest {

    @ParameterizedTest
    @CsvFileSource(resources = "/reference/outage/usual-minutes.csv", useHeadersInDisplayName = true)
    void comesOutAtTheUsualMinutes(
            boolean tap, boolean panel, boolean meterBase, boolean transformer, int low, int high) {
        OutageMinutes minutes =
                OutageMinutes.of(new OutageWork(tap, panel, meterBase, transformer, false, 1, false, false, false));
        assertThat(minutes.low()).isEqualTo(low);
        assertThat(minutes.high()).isEqualTo(high);
        assertThat(minutes.typical()).isBetween(low, high);
    }

    @Test
    void theTypicalTapTakesAnHourAndAQuarterAndIsPlannedWithItsHighEnd() {
        OutageMinutes minutes = OutageMinutes.of(OutageWork.tapOnly());
        assertThat(minutes.typical()).isEqualTo(75);
        assertThat(minutes.planned()).isEqualTo(90);
    }

    @Test
    void plannedMinutesGoUpToTheNextQuarter() {
        OutageMinutes minutes =
                OutageMinutes.of(new OutageWork(true, false, false, false, false, 1, true, false, false));
        assertThat(minutes.high()).isEqualTo(100);
        assertThat(minutes.planned()).isEqualTo(105);
    }

    @Test
    void eachThingThatTakesLongerIsAPartOfItsOwn() {
        OutageMinutes minutes = OutageMinutes.of(new OutageWork(true, true, true, true, true, 3, true, true, true));
        assertThat(minutes.parts())
                .extracting(OutageMinutes.Part::words)
                .contains(
                        "new main panel",
                        "new meter base beside the panel",
                        "utility changes the transformer",
                        "current transformer cabinet",
                        "2 more meters",
                        "generator path locked and checked",
                        "three phases: more lugs, rotation",
                        "old gear");
        assertThat(minutes.low())
                .isEqualTo(minutes.parts().stream()
                        .mapToInt(OutageMinutes.Part::low)
                        .sum());
    }

    @Test
    void moreWorkNeverMeansLessTime() {
        OutageMinutes tap = OutageMinutes.of(OutageWork.tapOnly());
        for (OutageWork more : List.of(
                new OutageWork(true, true, false, false, false, 1, false, false, false),
                new OutageWork(true, false, false, false, true, 1, false, false, false),
                new OutageWork(true, false, false, false, false, 2, false, false, false),
                new OutageWork(true, false, false, false, false, 1, false, false, true))) {
            OutageMinutes longer = OutageMinutes.of(more);
            assertThat(longer.low()).isGreaterThanOrEqualTo(tap.low());
            assertThat(longer.typical()).isGreaterThan(tap.typical());
            assertThat(longer.high()).isGreaterThan(tap.high());
        }
    }

    @Test
    void aServiceHasOneToTwelveMeters() {
        assertThatThrownBy(() -> new OutageWork(true, false, false, false, false, 0, false, false, false))
                .hasMessage("meters: 0 is outside 1 to 12");
        assertThatThrownBy(() -> new OutageWork(true, false, false, false, false, 13, false, false, false))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
