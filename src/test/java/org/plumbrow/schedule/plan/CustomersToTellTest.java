package org.plumbrow.schedule.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.plumbrow.calc.calendar.HalfDay;
import org.plumbrow.calc.duration.ActivityCode;

/** Of which dates that move a customer hears, by distance and by what they were told of. */
class CustomersToTellTest {

    private static final LocalDate TODAY = LocalDate.of(2027, 3, 1);
    private static final UUID PROJECT = new UUID(0, 1);
    private static final UUID ACTIVITY = new UUID(0, 2);

    @Test
    void aDayWithinFourWeeksIsTold() {
        assertThat(told(row(28, false), row(30, false), 0)).containsExactly(PROJECT);
        assertThat(told(row(40, false), row(28, false), 0)).containsExactly(PROJECT);
    }

    @Test
    void aDayFarAheadIsNotUnlessItWasSettledOrThePromiseBreaks() {
        assertThat(told(row(60, false), row(65, false), 0)).isEmpty();
        assertThat(told(row(60, true), row(65, false), 0)).containsExactly(PROJECT);
        assertThat(told(row(60, false), row(65, false), 4)).containsExactly(PROJECT);
    }

    @Test
    void aPromiseThatBreaksByNoMoreThanBeforeIsNoNews() {
        PlanChanges.Snapshot before = new PlanChanges.Snapshot(List.of(row(60, false)), List.of(promise(4)));
        PlanChanges.Snapshot after = new PlanChanges.Snapshot(List.of(row(61, false)), List.of(promise(4)));
        HalfDay today = HalfDay.morning(TODAY);
        assertThat(PlanChanges.between(before, after, today).customersToTell(today))
                .isEmpty();
    }

    private static java.util.Set<UUID> told(PlannedRow was, PlannedRow now, int halfDaysLate) {
        HalfDay today = HalfDay.morning(TODAY);
        return PlanChanges.between(
                        new PlanChanges.Snapshot(List.of(was), List.of(promise(0))),
                        new PlanChanges.Snapshot(List.of(now), List.of(promise(halfDaysLate))),
                        today)
                .customersToTell(today);
    }

    private static PlannedRow row(int inDays, boolean settled) {
        HalfDay start = HalfDay.morning(TODAY.plusDays(inDays));
        return new PlannedRow(
                ACTIVITY,
                PROJECT,
                "cutover",
                ActivityCode.CUTOVER,
                "cutover",
                1,
                "",
                false,
                settled,
                start,
                start,
                Optional.empty(),
                "",
                Optional.empty(),
                "");
    }

    private static PlannedPromise promise(int halfDaysLate) {
        return new PlannedPromise(
                PROJECT,
                "system on",
                TODAY.plusDays(60),
                Optional.of(HalfDay.morning(TODAY.plusDays(60))),
                halfDaysLate,
                0,
                Optional.empty(),
                Optional.empty());
    }
}
