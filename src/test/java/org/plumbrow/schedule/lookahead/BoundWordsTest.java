package org.plumbrow.schedule.lookahead;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.time.LocalDate;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.plumbrow.calc.calendar.HalfDay;
import org.plumbrow.schedule.plan.PlanHead;
import org.plumbrow.schedule.plan.PlannedPromise;

/** What a manager reads about all the plans that were not made. */
class BoundWordsTest {

    private static final LocalDate DAY = LocalDate.of(2027, 3, 1);

    private static PlanHead plan(long late, OptionalLong bound) {
        return new PlanHead(
                UUID.randomUUID(),
                UUID.randomUUID(),
                1,
                PlanHead.State.DRAFT,
                Instant.EPOCH,
                "Ines",
                HalfDay.morning(DAY),
                "",
                late,
                bound,
                Optional.empty(),
                "");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "767 | 614 | No plan can have fewer than 614; this plan has 767, within 20 % of the best possible.",
                "100 | 50  | No plan can have fewer than 50; this plan has 100, within 50 % of the best possible.",
                "100 | 49  | No plan can have fewer than 49; this plan has 100.",
                "15  | 15  | No plan is less late: that is proved.",
                "15  | 0   | Whether a plan can have fewer is not known."
            })
    void halfDaysFirstAndAShareOnlyWhereItSaysSomething(long late, long bound, String words) {
        assertThat(BoundWords.ofPlan(plan(late, OptionalLong.of(bound)))).isEqualTo(words);
    }

    @Test
    void nothingWhereNothingIsLateOrNothingWasProved() {
        assertThat(BoundWords.ofPlan(plan(0, OptionalLong.of(0)))).isEmpty();
        assertThat(BoundWords.ofPlan(plan(9, OptionalLong.empty()))).isEmpty();
        assertThat(BoundWords.ofBroken(late(Optional.empty()), plan(9, OptionalLong.empty())))
                .isEmpty();
    }

    @Test
    void aBrokenPromiseIsHopelessOrAMatterOfWhoComesFirst() {
        PlanHead proved = plan(9, OptionalLong.of(9));
        assertThat(BoundWords.ofBroken(late(Optional.of(4)), proved))
                .isEqualTo(
                        "No plan can keep it: with every crew free for it, its own work and waits still end 2 working"
                                + " days late.");
        assertThat(BoundWords.ofBroken(late(Optional.of(0)), proved))
                .startsWith("It can be kept only if others are at least as much later");
        assertThat(BoundWords.ofBroken(late(Optional.of(0)), plan(9, OptionalLong.of(8))))
                .startsWith("Its own work and waits would keep it");
    }

    private static PlannedPromise late(Optional<Integer> alone) {
        return new PlannedPromise(
                UUID.randomUUID(), "system on", DAY, Optional.of(HalfDay.morning(DAY)), 9, 0, Optional.empty(), alone);
    }
}
