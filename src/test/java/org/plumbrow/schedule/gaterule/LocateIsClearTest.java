package org.plumbrow.schedule.gaterule;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.plumbrow.calc.duration.ActivityCode;
import org.plumbrow.permit.Awaited;
import org.plumbrow.permit.AwaitedKind;
import org.plumbrow.permit.WaitResult;
import org.plumbrow.permit.WaitSample;
import org.plumbrow.project.gate.Finding;

/** At the edges of a ticket: the day it was cleared, its last day, the day after. */
class LocateIsClearTest {

    private static final LocalDate CLEARED = LocalDate.of(2027, 3, 4);
    private static final LocalDate LAST = LocalDate.of(2027, 4, 1);

    private static Awaited ticket(@Nullable WaitResult result, LocalDate came, LocalDate last) {
        WaitSample asked =
                WaitSample.of(AwaitedKind.LOCATE).sent(came.minusDays(3)).until(last);
        return (result == null ? asked : asked.came(came, result)).get();
    }

    private static Finding trench(LocalDate from, LocalDate to, Awaited... tickets) {
        return PlanAndWaits.locateIsClear(List.of(PlannedSample.of(ActivityCode.TRENCH, from, to)), List.of(tickets));
    }

    @Test
    void fromTheDayItWasClearToItsLastDayTheGateIsOpen() {
        assertThat(trench(CLEARED, LAST, ticket(WaitResult.CLEAR, CLEARED, LAST)))
                .isInstanceOf(Finding.Satisfied.class);
    }

    @Test
    void theDayBeforeAndTheDayAfterStopIt() {
        Awaited ticket = ticket(WaitResult.CLEAR, CLEARED, LAST);
        assertThat(trench(CLEARED.minusDays(1), LAST, ticket)).isInstanceOf(Finding.Broken.class);
        Finding after = trench(LAST, LAST.plusDays(1), ticket);
        assertThat(after).isInstanceOf(Finding.Broken.class);
        assertThat(after.sentence()).contains("trench on Fri, Apr 2, 2027");
    }

    @Test
    void aTicketWithoutAnswerOrNotClearCoversNothing() {
        assertThat(trench(CLEARED, CLEARED, ticket(null, CLEARED, LAST))).isInstanceOf(Finding.Broken.class);
        assertThat(trench(CLEARED, CLEARED, ticket(WaitResult.NOT_CLEAR, CLEARED, LAST)))
                .isInstanceOf(Finding.Broken.class);
    }

    @Test
    void renewedInTimeTwoTicketsCoverTogether() {
        assertThat(trench(
                        LAST,
                        LAST.plusDays(1),
                        ticket(WaitResult.CLEAR, CLEARED, LAST),
                        ticket(WaitResult.CLEAR, LAST, LAST.plusDays(28))))
                .isInstanceOf(Finding.Satisfied.class);
    }

    @Test
    void boringAndPostsCountAsDiggingAndNothingWrittenIsNotKnown() {
        for (ActivityCode code : List.of(ActivityCode.BORE, ActivityCode.FOUNDATION)) {
            assertThat(PlanAndWaits.locateIsClear(
                            List.of(PlannedSample.of(code, LAST.plusDays(1), LAST.plusDays(1))),
                            List.of(ticket(WaitResult.CLEAR, CLEARED, LAST))))
                    .isInstanceOf(Finding.Broken.class);
        }
        assertThat(trench(CLEARED, LAST)).isInstanceOf(Finding.CannotTell.class);
        assertThat(PlanAndWaits.locateIsClear(List.of(), List.of())).isInstanceOf(Finding.CannotTell.class);
    }
}
