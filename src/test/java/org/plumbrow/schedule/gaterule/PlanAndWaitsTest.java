package org.plumbrow.schedule.gaterule;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.plumbrow.calc.duration.ActivityCode;
import org.plumbrow.permit.Awaited;
import org.plumbrow.permit.AwaitedKind;
import org.plumbrow.permit.WaitSample;
import org.plumbrow.project.gate.Finding;
import org.plumbrow.schedule.PlannedDates;

/** Each item that holds waits against the plan, on either side of its edge: the day itself, and the day after. */
class PlanAndWaitsTest {

    private static final LocalDate FIRST = LocalDate.of(2027, 3, 8);
    private static final LocalDate LAST = LocalDate.of(2027, 3, 19);

    private static List<PlannedDates> plan() {
        return List.of(
                PlannedSample.of(ActivityCode.FOUNDATION, FIRST, FIRST.plusDays(2)),
                PlannedSample.of(ActivityCode.MODULES, FIRST.plusDays(3), FIRST.plusDays(4)),
                PlannedSample.of(ActivityCode.TRENCH, LAST.minusDays(1), LAST));
    }

    private static Awaited permit(LocalDate lastDay) {
        return WaitSample.of(AwaitedKind.PERMIT)
                .came(FIRST.minusDays(30))
                .until(lastDay)
                .get();
    }

    @Test
    void aPermitCountsToTheLastDayOfThePlan() {
        assertThat(PlanAndWaits.permitsOutlastTheWork(plan(), List.of(permit(LAST))))
                .isInstanceOf(Finding.Satisfied.class);
        assertThat(PlanAndWaits.permitsOutlastTheWork(plan(), List.of(permit(LAST.minusDays(1)))))
                .isInstanceOf(Finding.Broken.class);
        Awaited building = WaitSample.of(AwaitedKind.BUILDING_PERMIT)
                .came(FIRST.minusDays(9))
                .until(LAST.minusDays(1))
                .get();
        assertThat(PlanAndWaits.permitsOutlastTheWork(plan(), List.of(permit(LAST), building)))
                .isInstanceOf(Finding.Broken.class);
    }

    @Test
    void withoutAPermitItsLastDayOrAPlanNobodyCanTell() {
        Awaited without = WaitSample.of(AwaitedKind.PERMIT).came(FIRST).get();
        assertThat(PlanAndWaits.permitsOutlastTheWork(plan(), List.of(without))).isInstanceOf(Finding.CannotTell.class);
        assertThat(PlanAndWaits.permitsOutlastTheWork(plan(), List.of())).isInstanceOf(Finding.CannotTell.class);
        assertThat(PlanAndWaits.permitsOutlastTheWork(List.of(), List.of(permit(LAST))))
                .isInstanceOf(Finding.CannotTell.class);
    }

    private static WaitSample modules() {
        return WaitSample.of(AwaitedKind.MODULES_DELIVERY).sent(FIRST.minusDays(40));
    }

    private static Finding deliveries(Awaited... waits) {
        return PlanAndWaits.deliveriesComeBeforeUse(plan(), List.of(waits));
    }

    @Test
    void modulesAreNeededOnTheDayOfTheirFirstUse() {
        LocalDate use = FIRST.plusDays(3);
        assertThat(deliveries(modules().due(use).get())).isInstanceOf(Finding.Satisfied.class);
        assertThat(deliveries(modules().due(use.plusDays(1)).get())).isInstanceOf(Finding.Broken.class);
        assertThat(deliveries(modules().due(use).promised(use.plusDays(1)).get()))
                .isInstanceOf(Finding.Broken.class);
        assertThat(deliveries(
                        modules().due(use).promised(use.plusDays(1)).came(use).get()))
                .isInstanceOf(Finding.Satisfied.class);
    }

    @Test
    void whatIsNotOrderedOrHasNoDayIsSaid() {
        Awaited notOrdered =
                WaitSample.of(AwaitedKind.MODULES_DELIVERY).due(FIRST).get();
        assertThat(deliveries(notOrdered))
                .isInstanceOf(Finding.Broken.class)
                .extracting(Finding::sentence)
                .isEqualTo("Delivery of modules is not ordered.");
        assertThat(deliveries(modules().get())).isInstanceOf(Finding.CannotTell.class);
        assertThat(deliveries()).isInstanceOf(Finding.CannotTell.class);
    }

    private static Finding locate(WaitSample... tickets) {
        return PlanAndWaits.locateIsPlanned(
                plan(), List.of(tickets).stream().map(WaitSample::get).toList());
    }

    private static WaitSample ticket() {
        return WaitSample.of(AwaitedKind.LOCATE);
    }

    @Test
    void aTicketIsPlannedFromTheFirstToTheLastDayOfDigging() {
        assertThat(locate(ticket().due(FIRST))).isInstanceOf(Finding.Satisfied.class);
        assertThat(locate(ticket().due(FIRST.plusDays(1)))).isInstanceOf(Finding.Broken.class);
        assertThat(locate(ticket().due(FIRST).until(LAST))).isInstanceOf(Finding.Satisfied.class);
        assertThat(locate(ticket().due(FIRST).until(LAST.minusDays(1)))).isInstanceOf(Finding.Broken.class);
        assertThat(locate(
                        ticket().due(FIRST).until(LAST.minusDays(1)),
                        ticket().due(LAST.minusDays(1)).until(LAST.plusDays(20))))
                .isInstanceOf(Finding.Satisfied.class);
        assertThat(locate()).isInstanceOf(Finding.CannotTell.class);
    }
}
