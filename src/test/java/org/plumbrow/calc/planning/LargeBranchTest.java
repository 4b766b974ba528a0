package org.plumbrow.calc.planning;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The way from mounting and quantities to a plan of a whole branch. */
class LargeBranchTest {

    @ParameterizedTest
    @ValueSource(ints = {20, 300})
    void aBranchMadeFromDurationsIsPlannedWholeAndKeepsEveryRule(int projects) {
        PlanningProblem problem = LargeBranch.of(projects, 1);
        Plan plan = SerialPlanner.plan(problem);
        assertThat(plan.findings()).isEmpty();
        assertThat(plan.placements()).hasSameSizeAs(problem.activities());
        assertThat(PlanCheck.breaches(problem, plan)).isEmpty();
        assertThat(plan.promises())
                .hasSize(projects)
                .allMatch(outcome -> outcome.finish().isPresent());
        Map<Class<?>, Long> bounds = plan.placements().values().stream()
                .collect(Collectors.groupingBy(placement -> placement.bound().getClass(), Collectors.counting()));
        assertThat(bounds).containsKeys(Bound.After.class, Bound.CrewBusy.class, Bound.JustInTime.class);
    }
}
