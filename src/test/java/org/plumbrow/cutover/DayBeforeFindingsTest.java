package org.plumbrow.cutover;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.time.LocalDateTime;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.plumbrow.calc.outage.ranking.AnimalDays.FlockEvent;
import org.plumbrow.calc.outage.ranking.Factor;
import org.plumbrow.calc.outage.ranking.FactorKind;
import org.plumbrow.calc.outage.ranking.Verdict;
import org.plumbrow.cutover.ReadyRows.Said;
import org.plumbrow.cutover.ReadyRows.State;
import org.plumbrow.project.gate.AnswerKind;
import org.plumbrow.project.gate.Finding;

/** Each of the gate's rules of the day before, on both sides of it. */
class DayBeforeFindingsTest {

    private static final LocalDateTime NINE = LocalDateTime.of(2027, 3, 26, 9, 0);

    private static Factor least(FactorKind kind, double value, double limit) {
        double lacks = Math.max(0, limit - value);
        return new Factor(kind, value, limit, lacks, kind.unit(), "barn", lacks > 0 ? Verdict.BROKEN : Verdict.MET);
    }

    private static Factor most(FactorKind kind, double value, double limit) {
        double lacks = Math.max(0, value - limit);
        return new Factor(kind, value, limit, lacks, kind.unit(), "", lacks > 0 ? Verdict.BROKEN : Verdict.MET);
    }

    private static Factor as(Factor factor, Verdict verdict) {
        return new Factor(
                factor.kind(), factor.value(), factor.limit(), factor.lacks(), factor.unit(), factor.detail(), verdict);
    }

    private static DayBefore day(Factor... factors) {
        return new DayBefore(true, true, Arrays.asList(factors), Map.of(), false, null);
    }

    private static DayBefore saying(DayBefore day, ReadyItem item, State state) {
        return new DayBefore(
                true,
                true,
                day.factors(),
                Map.of(item, new Said(state, "a storm comes", "Jory", Instant.EPOCH, 0)),
                day.runAhead(),
                day.nextFlock());
    }

    private static DayBefore next(DayBefore day, boolean runAhead, @Nullable FlockEvent event) {
        return new DayBefore(true, true, day.factors(), day.said(), runAhead, event);
    }

    @Test
    void crewPeopleEquipmentAndParts() {
        Factor crew = least(FactorKind.CREW, 1, 1);
        Factor two = least(FactorKind.PEOPLE, 2, 2);
        DayBefore ready = saying(day(crew, two), ReadyItem.PARTS, State.READY);
        assertThat(DayBeforeFindings.crew(ready)).isInstanceOf(Finding.Satisfied.class);
        assertThat(DayBeforeFindings.crew(day(crew, two))).isInstanceOf(Finding.CannotTell.class);
        assertThat(DayBeforeFindings.crew(saying(day(crew, two), ReadyItem.PARTS, State.WRONG)))
                .isInstanceOf(Finding.Broken.class);
        assertThat(DayBeforeFindings.crew(
                        saying(day(crew, least(FactorKind.PEOPLE, 1, 2)), ReadyItem.PARTS, State.READY)))
                .isInstanceOf(Finding.Broken.class);
        assertThat(DayBeforeFindings.crew(saying(day(crew, as(two, Verdict.OPEN)), ReadyItem.PARTS, State.READY)))
                .isInstanceOf(Finding.CannotTell.class);
        assertThat(DayBeforeFindings.crew(
                        saying(day(crew, two, least(FactorKind.MACHINE, 0, 1)), ReadyItem.PARTS, State.READY)))
                .isInstanceOf(Finding.Broken.class);
        assertThat(DayBeforeFindings.crew(DayBefore.NOTHING)).isInstanceOf(Finding.CannotTell.class);
    }

    private static final Factor FIT = most(FactorKind.GENERATOR_FIT, 0, 0);
    private static final Factor FUEL = least(FactorKind.GENERATOR_FUEL, 270, 270);
    private static final Factor RUN = most(FactorKind.GENERATOR_RUN, 7, 7);

    @Test
    void loadsHoldOutTwiceTheMinutesOrAreCovered() {
        assertThat(DayBeforeFindings.loads(day(least(FactorKind.RIDE_THROUGH, 180, 180))))
                .isInstanceOf(Finding.Satisfied.class);
        Finding broken = DayBeforeFindings.loads(day(least(FactorKind.RIDE_THROUGH, 179, 180)));
        assertThat(broken).isInstanceOf(Finding.Broken.class);
        assertThat(broken.sentence()).contains("2 h 59 min at the short end").contains("3 h 00 min needed");
        Factor needs = as(least(FactorKind.RIDE_THROUGH, 20, 180), Verdict.CAUTION);
        assertThat(DayBeforeFindings.loads(day(needs, FIT, FUEL, RUN)))
                .isInstanceOf(Finding.Satisfied.class)
                .extracting(Finding::sentence)
                .asString()
                .contains("The generator covers it");
        assertThat(DayBeforeFindings.loads(day(needs, FIT, least(FactorKind.GENERATOR_FUEL, 269, 270), RUN)))
                .isInstanceOf(Finding.Broken.class);
    }

    @Test
    void withoutWrittenLoadsNobodyCanTell() {
        assertThat(DayBeforeFindings.loads(new DayBefore(true, false, List.of(), Map.of(), false, null)))
                .isInstanceOf(Finding.CannotTell.class);
        assertThat(DayBeforeFindings.loads(DayBefore.NOTHING)).isInstanceOf(Finding.CannotTell.class);
        assertThat(DayBeforeFindings.loads(
                        day(new Factor(FactorKind.RIDE_THROUGH, Double.NaN, 180, 0, "min", "", Verdict.OPEN))))
                .isInstanceOf(Finding.CannotTell.class);
    }

    @Test
    void theGeneratorRanSevenDaysAgoAtMostAndHasFuelForThreeOutages() {
        assertThat(DayBeforeFindings.generatorRan(day(FIT, FUEL, RUN)))
                .isInstanceOfSatisfying(
                        Finding.Recorded.class,
                        found -> assertThat(found.holds()).isEqualTo(Set.of(AnswerKind.READING)));
        assertThat(DayBeforeFindings.generatorRan(day(FIT, FUEL, most(FactorKind.GENERATOR_RUN, 8, 7))))
                .isInstanceOf(Finding.Broken.class);
        assertThat(DayBeforeFindings.generatorRan(
                        day(FIT, as(least(FactorKind.GENERATOR_FUEL, 269, 270), Verdict.CAUTION), RUN)))
                .as("fuel is asked also where the loads hold out by themselves")
                .isInstanceOf(Finding.Broken.class);
        assertThat(DayBeforeFindings.generatorRan(next(day(FIT, FUEL, RUN), true, null)))
                .as("a run that is only planned")
                .isInstanceOf(Finding.CannotTell.class);
        assertThat(DayBeforeFindings.generatorRan(saying(day(FIT, FUEL, RUN), ReadyItem.FUEL, State.WRONG)))
                .isInstanceOf(Finding.Broken.class);
        assertThat(DayBeforeFindings.generatorRan(day())).isInstanceOf(Finding.CannotTell.class);
    }

    @Test
    void noCatchWithinADayAfterIt() {
        FlockEvent catching = new FlockEvent(NINE.plusDays(4), "catch of house 1");
        Finding free = DayBeforeFindings.flock(next(day(least(FactorKind.FLOCK, 1440, 1440)), false, catching));
        assertThat(free)
                .isInstanceOfSatisfying(
                        Finding.Recorded.class,
                        found -> assertThat(found.holds()).isEqualTo(Set.of(AnswerKind.CONFIRMATION)));
        assertThat(free.sentence()).contains("Next: catch of house 1, Tue, Mar 30");
        assertThat(DayBeforeFindings.flock(next(day(least(FactorKind.FLOCK, 1439, 1440)), false, catching)))
                .isInstanceOf(Finding.Broken.class);
        assertThat(DayBeforeFindings.flock(day(least(FactorKind.FLOCK, 9999, 1440))))
                .as("all events that are written have gone by: the grower is asked")
                .isInstanceOf(Finding.CannotTell.class);
    }

    @Test
    void betweenMilkingsWithAColdTank() {
        Factor after = least(FactorKind.AFTER_MILKING, 120, 120);
        Factor before = least(FactorKind.BEFORE_MILKING, 120, 120);
        Factor tank = most(FactorKind.TANK, 4.4, 4.4);
        assertThat(DayBeforeFindings.milk(day(after, before, tank))).isInstanceOf(Finding.Satisfied.class);
        assertThat(DayBeforeFindings.milk(day(least(FactorKind.AFTER_MILKING, 119, 120), before, tank)))
                .isInstanceOf(Finding.Broken.class);
        assertThat(DayBeforeFindings.milk(day(after, least(FactorKind.BEFORE_MILKING, 119, 120), tank)))
                .isInstanceOf(Finding.Broken.class);
        assertThat(DayBeforeFindings.milk(day(after, before, most(FactorKind.TANK, 4.5, 4.4))))
                .isInstanceOf(Finding.Broken.class);
        assertThat(DayBeforeFindings.milk(day())).isInstanceOf(Finding.CannotTell.class);
    }

    @Test
    void weatherIsKnownOrLookedAt() {
        Factor wind = most(FactorKind.WIND, 8, 10);
        Factor unknown =
                new Factor(FactorKind.LIGHTNING, Double.NaN, 10, 0, "% chance", "a typical year", Verdict.OPEN);
        assertThat(DayBeforeFindings.weather(day(wind))).isInstanceOf(Finding.Satisfied.class);
        assertThat(DayBeforeFindings.weather(day(wind, unknown))).isInstanceOf(Finding.CannotTell.class);
        assertThat(DayBeforeFindings.weather(saying(day(wind, unknown), ReadyItem.FORECAST, State.READY)))
                .isInstanceOf(Finding.Satisfied.class);
        assertThat(DayBeforeFindings.weather(saying(day(wind), ReadyItem.FORECAST, State.WRONG)))
                .isInstanceOf(Finding.Broken.class);
        assertThat(DayBeforeFindings.weather(
                        saying(day(most(FactorKind.WIND, 12, 10)), ReadyItem.FORECAST, State.READY)))
                .as("nobody talks the wind down")
                .isInstanceOf(Finding.Broken.class);
    }
}
