package org.plumbrow.calc.planning.search;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.plumbrow.calc.calendar.HalfDay;
import org.plumbrow.calc.planning.Costing;
import org.plumbrow.calc.planning.LargeBranch;
import org.plumbrow.calc.planning.Plan;
import org.plumbrow.calc.planning.PlanCheck;
import org.plumbrow.calc.planning.PlanningProblem;
import org.plumbrow.calc.planning.Published;
import org.plumbrow.calc.planning.SerialPlanner;

/** Plans are judged by {@link PlanCheck}, which shares nothing with planner and search, and by {@link Costing}. */
class PlanSearchTest {

    private static final PlanSearch.Effort SMALL = new PlanSearch.Effort(400, 1);

    private static Plan planned(PlanningProblem problem, Optional<Published> published, PlanSearch.Effort effort) {
        return PlanSearch.plan(problem, published, effort, () -> false);
    }

    private static Published known(PlanningProblem problem, Plan plan) {
        return new Published(plan, HalfDay.afternoon(problem.today().date().plusWeeks(8)));
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4})
    void neverWorseThanByUrgencyAndBreaksNoRule(long seed) {
        PlanningProblem problem = LargeBranch.of(40, seed);
        Costing costing = new Costing(problem, Optional.empty());
        Plan searched = planned(problem, Optional.empty(), SMALL);
        assertThat(costing.of(searched)).isLessThanOrEqualTo(costing.of(SerialPlanner.plan(problem)));
        assertThat(PlanCheck.breaches(problem, searched)).isEmpty();
        assertThat(planned(problem, Optional.empty(), SMALL).placements()).isEqualTo(searched.placements());
    }

    /** Nothing has changed, so nothing that people count on moves. */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4})
    void planningAgainWithoutAChangeMovesNothingUnlessLessIsLate(long seed) {
        PlanningProblem problem = LargeBranch.of(40, seed);
        Plan first = planned(problem, Optional.empty(), SMALL);
        Published known = known(problem, first);
        Plan again = planned(problem, Optional.of(known), PlanSearch.Effort.NO_SEARCH);
        Costing costing = new Costing(problem, Optional.of(known));
        assertThat(again.weightedHalfDaysLate()).isLessThanOrEqualTo(first.weightedHalfDaysLate());
        if (again.weightedHalfDaysLate() == first.weightedHalfDaysLate()) {
            assertThat(costing.of(again).disturbance()).isZero();
        }
        assertThat(PlanCheck.breaches(problem, again)).isEmpty();
    }

    @Test
    void whatIsKnownIsKeptEvenWhereAnotherOrderWouldBeAsGood() {
        PlanningProblem problem = LargeBranch.of(12, 5);
        Plan first = planned(problem, Optional.empty(), new PlanSearch.Effort(200, 9));
        Published known = known(problem, first);
        Plan again = planned(problem, Optional.of(known), PlanSearch.Effort.USUAL);
        Costing costing = new Costing(problem, Optional.of(known));
        assertThat(costing.of(again)).isLessThanOrEqualTo(costing.of(SerialPlanner.plan(problem)));
        assertThat(costing.of(again)).isLessThanOrEqualTo(costing.of(first));
    }

    @Test
    void whoStopsAtOnceGetsAPlanThatHolds() {
        PlanningProblem problem = LargeBranch.of(40, 2);
        Plan plan = PlanSearch.plan(problem, Optional.empty(), PlanSearch.Effort.USUAL, () -> true);
        assertThat(PlanCheck.breaches(problem, plan)).isEmpty();
        assertThat(plan.placements().keySet())
                .isEqualTo(SerialPlanner.plan(problem).placements().keySet());
    }
}
