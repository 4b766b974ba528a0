package org.plumbrow.permit;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.plumbrow.project.gate.AnswerKind;
import org.plumbrow.project.gate.Finding;

/** An item of a gate on either side of what it waits for. */
class WaitFindingsTest {

    private static final LocalDate MARCH = LocalDate.of(2027, 3, 1);

    private static Finding inspection(WaitSample... waits) {
        return WaitFindings.paper(
                AwaitedKind.INSPECTION,
                List.of(waits).stream().map(WaitSample::get).toList());
    }

    private static WaitSample one() {
        return WaitSample.of(AwaitedKind.INSPECTION);
    }

    @Test
    void whatCameWithItsPaperAnswersBothAndWithoutItOnlyTheDay() {
        assertThat(inspection(one().came(MARCH, WaitResult.PASSED).withPaper()))
                .isInstanceOfSatisfying(
                        Finding.Recorded.class,
                        found -> assertThat(found.holds())
                                .containsExactlyInAnyOrder(AnswerKind.DATE, AnswerKind.DOCUMENT));
        assertThat(inspection(one().came(MARCH, WaitResult.PASSED)))
                .isInstanceOfSatisfying(
                        Finding.Recorded.class,
                        found -> assertThat(found.holds()).containsExactly(AnswerKind.DATE));
    }

    @Test
    void aCorrectionStopsUntilItIsLookedAtAgain() {
        WaitSample failed = one().came(MARCH, WaitResult.CORRECTION);
        assertThat(inspection(failed)).isInstanceOf(Finding.Broken.class);
        assertThat(inspection(failed, one().sent(MARCH.plusDays(2)).promised(MARCH.plusDays(9))))
                .isInstanceOf(Finding.CannotTell.class)
                .extracting(Finding::sentence)
                .isEqualTo("Electrical inspection: asked for Wed, Mar 3, 2027, promised for Wed, Mar 10, 2027.");
        assertThat(inspection(failed, one().sent(MARCH.plusDays(2)).came(MARCH.plusDays(9), WaitResult.PASSED)))
                .isInstanceOf(Finding.Recorded.class);
    }

    @Test
    void ofSeveralThingsEachHasToCome() {
        WaitSample house = one().about("house 1").came(MARCH, WaitResult.PASSED);
        assertThat(inspection(house, one().about("house 2").sent(MARCH))).isInstanceOf(Finding.CannotTell.class);
        assertThat(inspection(house, one().about("house 2").came(MARCH, WaitResult.CORRECTION)))
                .isInstanceOf(Finding.Broken.class);
    }

    private static Finding serviceSide(boolean homeOnly, WaitSample... waits) {
        return WaitFindings.serviceSide(
                homeOnly, List.of(waits).stream().map(WaitSample::get).toList());
    }

    /** The inspection of the array says nothing of the service side, except at a home, which has one for both. */
    @Test
    void theServiceSideHasItsOwnInspection() {
        WaitSample service = WaitSample.of(AwaitedKind.SERVICE_INSPECTION);
        assertThat(serviceSide(false, one().came(MARCH, WaitResult.PASSED).withPaper()))
                .isInstanceOf(Finding.CannotTell.class);
        assertThat(serviceSide(false, service.came(MARCH, WaitResult.PASSED).withPaper()))
                .isInstanceOfSatisfying(
                        Finding.Recorded.class,
                        found -> assertThat(found.holds()).contains(AnswerKind.DOCUMENT));
        WaitSample wrong = WaitSample.of(AwaitedKind.SERVICE_INSPECTION).came(MARCH, WaitResult.CORRECTION);
        assertThat(serviceSide(false, wrong)).isInstanceOf(Finding.Broken.class);
        assertThat(serviceSide(
                        false,
                        wrong,
                        WaitSample.of(AwaitedKind.SERVICE_INSPECTION)
                                .sent(MARCH.plusDays(1))
                                .came(MARCH.plusDays(1), WaitResult.PASSED)))
                .isInstanceOf(Finding.Recorded.class);
        assertThat(serviceSide(true, one().came(MARCH, WaitResult.PASSED))).isInstanceOf(Finding.Recorded.class);
        assertThat(serviceSide(true, one().came(MARCH, WaitResult.PASSED), wrong))
                .isInstanceOf(Finding.Broken.class);
        assertThat(serviceSide(true)).isInstanceOf(Finding.CannotTell.class);
    }

    @Test
    void whatNobodyWroteDownIsNotKnown() {
        assertThat(inspection()).isInstanceOf(Finding.CannotTell.class);
    }
}
