package org.plumbrow.calc.leadtime;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Collections;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.plumbrow.calc.duration.Spread;
import org.plumbrow.calc.duration.WaitTime;

/** Against the closed form of its docstring, worked by hand, and its limits. */
class LeadTimeLearningTest {

    /** m0 = ln 10, s0 = ln 4 / 2.5631 = 0.540865. */
    private static final WaitTime MEASURED = new WaitTime(
            "measured", "review", WaitTime.DayKind.WORKING, new Spread(5, 10, 20), 11, WaitTime.Shape.LOG_NORMAL, "");

    private static final WaitTime GUESSED = new WaitTime(
            "guessed", "permit", WaitTime.DayKind.WORKING, new Spread(5, 15, 45), 18.3, WaitTime.Shape.PERT, "");

    @Test
    void withoutAnswersAMeasuredRowGivesItsOwnPoints() {
        LearnedLeadTime known = LeadTimeLearning.of(MEASURED, List.of());
        assertThat(known.tenth()).isCloseTo(5, within(1e-9));
        assertThat(known.even()).isCloseTo(10, within(1e-9));
        // 10 x exp(0.841621 x 0.540865) = 10 x 1.576481
        assertThat(known.eighty()).isCloseTo(15.765, within(0.005));
        assertThat(known.isLearned()).isFalse();
        assertThat(known.shareOfTable()).isEqualTo(1);
    }

    /** Mean (5 + 60 + 45) / 6 = 18.3333, variance 13.3333 x 26.6667 / 7 = 50.7937. */
    @Test
    void withoutAnswersAGuessedRowKeepsMeanAndVarianceOfItsBeta() {
        LearnedLeadTime known = LeadTimeLearning.of(GUESSED, List.of());
        double m = Math.log(known.even());
        double s = Math.log(known.eighty() / known.even()) / 0.8416212335729143;
        double mean = Math.exp(m + s * s / 2);
        assertThat(mean).isCloseTo(18.3333, within(1e-3));
        assertThat((Math.exp(s * s) - 1) * mean * mean).isCloseTo(50.7937, within(1e-2));
    }

    /** Five answers of 40 days: m = ln 20, s^2 = (5 x 0.292535 + 2.5 x 1.921812) / 10 = 0.626721. */
    @Test
    void fiveAnswersWeighAsMuchAsTheTable() {
        LearnedLeadTime known = LeadTimeLearning.of(MEASURED, Collections.nCopies(5, 40.0));
        assertThat(known.even()).isCloseTo(20, within(1e-9));
        assertThat(known.shareOfTable()).isEqualTo(0.5);
        // 20 x exp(0.841621 x 0.791657) = 20 x 1.946982
        assertThat(known.eighty()).isCloseTo(38.94, within(0.05));
        // 20 x exp(1.281552 x 0.791657) = 20 x 2.758105, and 20 / 2.758105
        assertThat(known.row().days().high()).isCloseTo(55.16, within(0.05));
        assertThat(known.row().days().typical()).isCloseTo(20, within(1e-9));
        assertThat(known.row().days().low()).isCloseTo(7.25, within(0.02));
    }

    @Test
    void withoutAnswersTheRowIsTheTables() {
        assertThat(LeadTimeLearning.of(MEASURED, List.of()).row()).isSameAs(MEASURED);
    }

    /** 1,000 answers at the quantiles of a log-normal with median 30 and s = 0.4: P80 = 30 exp(0.336649) = 42.01. */
    @Test
    void manyAnswersLeaveNothingOfTheTable() {
        var normal = org.apache.commons.statistics.distribution.NormalDistribution.of(Math.log(30), 0.4);
        List<Double> days = IntStream.range(0, 1000)
                .mapToObj(at -> Math.exp(normal.inverseCumulativeProbability((at + 0.5) / 1000)))
                .toList();
        LearnedLeadTime known = LeadTimeLearning.of(MEASURED, days);
        assertThat(known.even()).isCloseTo(30, within(0.3));
        assertThat(known.eighty()).isCloseTo(42.01, within(0.6));
        assertThat(known.shareOfTable()).isLessThan(0.005);
    }

    @Test
    void theSameDayCountsAsHalfADayAndNothingIsShorterThanNothing() {
        assertThat(LeadTimeLearning.of(MEASURED, List.of(0.0)).even())
                .isEqualTo(LeadTimeLearning.of(MEASURED, List.of(0.5)).even());
        assertThatThrownBy(() -> LeadTimeLearning.of(MEASURED, List.of(-1.0)))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void pointsAreInOrderAndDaysAreWhole() {
        LearnedLeadTime known = LeadTimeLearning.of(GUESSED, List.of(3.0, 40.0));
        assertThat(known.tenth()).isLessThan(known.even());
        assertThat(known.even()).isLessThan(known.eighty());
        assertThat(known.evenDays()).isLessThanOrEqualTo(known.eightyDays());
        assertThat(known.least()).isEqualTo(3);
        assertThat(known.most()).isEqualTo(40);
        assertThat(known.answers()).isEqualTo(2);
    }
}
