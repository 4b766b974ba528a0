package org.plumbrow.cutover;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.plumbrow.calc.outage.ranking.HourQuestion.StopsCounting;
import org.plumbrow.permit.AwaitedKind;
import org.plumbrow.permit.WaitResult;
import org.plumbrow.permit.WaitSample;

/** What of the waits stops a connection, and from which day. */
class PermitsOfOutageTest {

    private static final LocalDate TODAY = LocalDate.of(2027, 3, 1);

    private static List<StopsCounting> of(WaitSample... waits) {
        return PermitsOfOutage.of(List.of(waits).stream().map(WaitSample::get).toList(), TODAY);
    }

    private static WaitSample permit() {
        return WaitSample.of(AwaitedKind.PERMIT);
    }

    private static WaitSample inspection() {
        return WaitSample.of(AwaitedKind.SERVICE_INSPECTION);
    }

    @Test
    void aPermitStopsCountingAfterItsLastDayUntilItIsRenewed() {
        WaitSample old = permit().came(TODAY.minusDays(90)).until(TODAY.plusDays(9));
        assertThat(of(old))
                .containsExactly(
                        new StopsCounting(TODAY.plusDays(9), "Electrical permit counts only until Wed, Mar 10, 2027"));
        assertThat(of(old, permit().sent(TODAY.minusDays(9)))).hasSize(1);
        assertThat(of(old, permit().came(TODAY.minusDays(2)).until(TODAY.plusDays(90))))
                .extracting(StopsCounting::lastDay)
                .containsExactly(TODAY.plusDays(90));
        assertThat(of(permit().came(TODAY))).isEmpty();
    }

    @Test
    void aCorrectionStopsEveryDayUntilItIsAskedForAgain() {
        WaitSample failed = inspection().came(TODAY.minusDays(3), WaitResult.CORRECTION);
        assertThat(of(failed)).extracting(StopsCounting::lastDay).containsExactly(TODAY.minusDays(1));
        assertThat(of(failed, inspection().sent(TODAY.minusDays(1)))).isEmpty();
        assertThat(of(inspection().came(TODAY, WaitResult.PASSED))).isEmpty();
    }
}
