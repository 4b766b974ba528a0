package org.plumbrow.permit;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** The days on which somebody is reminded, at their edges. */
class WaitReminderTest {

    private static final LocalDate DAY = LocalDate.of(2027, 3, 10);

    private static Optional<WaitReminder.Reason> reason(WaitSample wait, LocalDate today) {
        return WaitReminder.of(wait.get(), today).map(WaitReminder::reason);
    }

    @Test
    void twoDaysBeforeItsDayAndWhenTheDayHasPassed() {
        WaitSample permit =
                WaitSample.of(AwaitedKind.PERMIT).sent(DAY.minusDays(30)).due(DAY);
        assertThat(reason(permit, DAY.minusDays(3))).isEmpty();
        assertThat(reason(permit, DAY.minusDays(2))).contains(WaitReminder.Reason.DUE_SOON);
        assertThat(reason(permit, DAY)).contains(WaitReminder.Reason.DUE_SOON);
        assertThat(reason(permit, DAY.plusDays(1))).contains(WaitReminder.Reason.OVERDUE);
        assertThat(reason(permit.promised(DAY.plusDays(9)), DAY.plusDays(1))).isEmpty();
        assertThat(reason(permit.came(DAY), DAY.plusDays(10))).isEmpty();
    }

    @Test
    void fourDaysBeforeAClearTicketEnds() {
        WaitSample ticket = WaitSample.of(AwaitedKind.LOCATE)
                .came(DAY.minusDays(20), WaitResult.CLEAR)
                .until(DAY);
        assertThat(reason(ticket, DAY.minusDays(5))).isEmpty();
        assertThat(reason(ticket, DAY.minusDays(4))).contains(WaitReminder.Reason.ENDS);
        assertThat(reason(ticket, DAY)).contains(WaitReminder.Reason.ENDS);
        assertThat(reason(ticket, DAY.plusDays(1))).isEmpty();
    }

    @Test
    void theySayWhatFromWhomAndWhen() {
        Awaited permit = WaitSample.of(AwaitedKind.PERMIT).sent(DAY).due(DAY).get();
        assertThat(WaitReminder.of(permit, DAY.plusDays(1)).orElseThrow().words(permit))
                .isEqualTo("Electrical permit from " + permit.who() + " should have been here by Wed, Mar 10, 2027.");
    }
}
