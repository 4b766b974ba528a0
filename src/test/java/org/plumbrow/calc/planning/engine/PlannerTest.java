package org.plumbrow.calc.planning.engine;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.plumbrow.calc.planning.LargeBranch;
import org.plumbrow.calc.planning.PlanCheck;
import org.plumbrow.calc.planning.PlanningProblem;
import org.plumbrow.calc.planning.RandomBranch;
import org.plumbrow.calc.planning.SerialPlanner;

/** Plans are judged by {@link PlanCheck}, which shares nothing with the engine. */
class PlannerTest {

    private static Effort effort(int threads) {
        return new Effort(1, 300, 3, 40, 0.05, threads);
    }

    private static Planned planned(PlanningProblem problem, Effort effort) {
        return Planner.plan(problem, Optional.empty(), effort, Watch.NOBODY);
    }

    @ParameterizedTest
    @ValueSource(ints = {2, 4})
    void theSamePlanOnAnyNumberOfThreads(int threads) {
        PlanningProblem problem = LargeBranch.of(60, 2);
        Planned alone = planned(problem, effort(1));
        Planned together = planned(problem, effort(threads));
        assertThat(alone.plan().weightedHalfDaysLate()).isPositive();
        assertThat(together.plan().placements()).isEqualTo(alone.plan().placements());
        assertThat(together).isEqualTo(alone);
    }

    @Test
    void neverWorseThanByUrgencyBreaksNoRuleAndIsNotBelowItsBound() {
        PlanningProblem problem = LargeBranch.of(60, 1);
        Planned planned = planned(problem, effort(2));
        assertThat(PlanCheck.breaches(problem, planned.plan())).isEmpty();
        assertThat(planned.plan().weightedHalfDaysLate())
                .isLessThanOrEqualTo(SerialPlanner.plan(problem).weightedHalfDaysLate())
                .isGreaterThanOrEqualTo(planned.lowerBound());
    }

    /** As many orders, most of them from prices, beat all of them from urgency, which is what they are for. */
    @Test
    void ordersFromPricesAreLessLateThanFromUrgencyAlone() {
        PlanningProblem problem = LargeBranch.of(150, 7);
        Planned priced = planned(problem, new Effort(1, 4_000, 0, 150, 0, 2));
        Planned urgent = planned(problem, new Effort(1, 4_000, 0, 0, 0, 2));
        assertThat(priced.plan().weightedHalfDaysLate())
                .isLessThan(urgent.plan().weightedHalfDaysLate() * 9 / 10);
    }

    @Test
    void oddBranchesTooAreWithinTheirBoundsAndBreakNoRule() {
        LongStream.range(0, 300).forEach(seed -> {
            PlanningProblem problem = RandomBranch.of(seed, false);
            Planned planned = planned(problem, new Effort(seed, 50, 1, 10, 0.05, 1));
            assertThat(PlanCheck.breaches(problem, planned.plan()))
                    .as("seed " + seed)
                    .isEmpty();
            assertThat(planned.lowerBound())
                    .as("seed " + seed)
                    .isLessThanOrEqualTo(planned.plan().weightedHalfDaysLate());
            planned.plan()
                    .promises()
                    .forEach(outcome -> assertThat(planned.lateAlone().getOrDefault(outcome.promise(), 0))
                            .as("seed %d, %s", seed, outcome)
                            .isLessThanOrEqualTo(outcome.finish().isPresent() ? outcome.halfDaysLate() : 10_000));
        });
    }

    @Test
    void tellsHowFarItIsAndStopsWhenTold() {
        PlanningProblem problem = LargeBranch.of(60, 2);
        List<String> told = new ArrayList<>();
        Planned planned = Planner.plan(problem, Optional.empty(), effort(1), new Watch() {
            @Override
            public boolean isStopped() {
                return told.size() >= 2;
            }

            @Override
            public void progress(String stage, int done, int of, long lateness) {
                told.add(stage + " " + lateness);
            }
        });
        assertThat(told).hasSizeBetween(2, 5);
        assertThat(PlanCheck.breaches(problem, planned.plan())).isEmpty();
    }
}
