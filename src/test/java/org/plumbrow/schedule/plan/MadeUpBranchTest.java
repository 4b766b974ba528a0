package org.plumbrow.schedule.plan;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.plumbrow.calc.planning.Bound;
import org.plumbrow.calc.planning.Placement;
import org.plumbrow.calc.planning.Plan;
import org.plumbrow.calc.planning.PlanCheck;
import org.plumbrow.calc.planning.PlanningProblem;
import org.plumbrow.calc.planning.SerialPlanner;

class MadeUpBranchTest {

    @ParameterizedTest
    @ValueSource(ints = {0, 1})
    void isPlannedWithAllThatAPlanMayMeet(int seed) {
        PlanningProblem problem = MadeUpBranch.of(300, seed);
        Plan plan = SerialPlanner.plan(problem);
        assertThat(plan.findings()).isEmpty();
        assertThat(PlanCheck.breaches(problem, plan)).isEmpty();
        assertThat(plan.placements()).hasSize(6_000);
        assertThat(plan.placements().values().stream().map(Placement::bound))
                .hasAtLeastOneElementOfType(Bound.After.class)
                .hasAtLeastOneElementOfType(Bound.CrewBusy.class)
                .hasAtLeastOneElementOfType(Bound.CrewAway.class)
                .hasAtLeastOneElementOfType(Bound.EquipmentBusy.class)
                .hasAtLeastOneElementOfType(Bound.JustInTime.class);
        assertThat(plan.weightedHalfDaysLate()).isPositive();
    }
}
