package org.plumbrow.calc.outage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.LocalDateTime;
import org.junit.jupiter.api.Test;
import org.plumbrow.calc.Range;

/** Hand-worked: a dairy that milks at 12:30, and a barn that holds out less than the way back takes. */
class LatestReversalTest {

    private static final LocalDateTime START = LocalDateTime.parse("2027-03-26T09:00");

    @Test
    void aDairyThatMilksAtHalfPastTwelveDecidesByQuarterToTwelve() {
        var reversal = new LatestReversal(LocalDateTime.parse("2027-03-26T12:30"), 20, 15, 10);
        assertThat(reversal.decideBy()).isEqualTo("2027-03-26T11:45");
        assertThat(reversal.isPossibleFrom(START)).isTrue();
    }

    @Test
    void aBarnThatHoldsOutThirteenMinutesCannotBeReversedInTime() {
        var reversal = new LatestReversal(LocalDateTime.parse("2027-03-26T09:13"), 20, 15, 10);
        assertThat(reversal.isPossibleFrom(START)).isFalse();
    }

    @Test
    void theLatestReversalMayEqualTheStartNotPrecedeIt() {
        assertThat(new LatestReversal(START.plusMinutes(45), 20, 15, 10).isPossibleFrom(START))
                .isTrue();
        assertThat(new LatestReversal(START.plusMinutes(44), 20, 15, 10).isPossibleFrom(START))
                .isFalse();
    }

    @Test
    void minutesHaveLimits() {
        assertThatThrownBy(() -> new LatestReversal(START, -1, 15, 10)).isInstanceOf(Range.OutOfRange.class);
        assertThatThrownBy(() -> new LatestReversal(START, 20, 241, 10)).isInstanceOf(Range.OutOfRange.class);
    }
}
