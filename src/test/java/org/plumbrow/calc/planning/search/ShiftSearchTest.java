package org.plumbrow.calc.planning.search;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.plumbrow.calc.planning.LargeBranch;
import org.plumbrow.calc.planning.Plan;
import org.plumbrow.calc.planning.PlanCheck;
import org.plumbrow.calc.planning.PlanningProblem;
import org.plumbrow.calc.planning.SerialPlanner;

class ShiftSearchTest {

    private static final PlanningProblem BRANCH = LargeBranch.of(75, 2);

    private static ShiftSearch searched(long seed) {
        BranchModel model = BranchModel.of(BRANCH, SerialPlanner.plan(BRANCH), Optional.empty());
        ShiftSearch search = new ShiftSearch(model, Order.urgent(model), seed);
        search.run(1_500, () -> false);
        return search;
    }

    @Test
    void itFindsAPlanThatIsLessLateAndKeepsEveryRule() {
        ShiftSearch search = searched(1);
        BranchModel model = BranchModel.of(BRANCH, SerialPlanner.plan(BRANCH), Optional.empty());
        Plan plan = SerialPlanner.plan(BRANCH, Guiding.guidance(model, search.best(), search.dates()));
        assertThat(plan.weightedHalfDaysLate())
                .isEqualTo(search.dates().lateness())
                .isLessThan(SerialPlanner.plan(BRANCH).weightedHalfDaysLate() * 3 / 4);
        assertThat(PlanCheck.breaches(BRANCH, plan)).isEmpty();
    }

    /** A search over sequences alone gives short works to fast crews, and cannot see that it does. */
    @ParameterizedTest
    @ValueSource(longs = {3, 5, 7})
    void crewsThatAreSpentThriftilyLeaveLessLate(long seed) {
        PlanningProblem problem = LargeBranch.of(150, seed);
        BranchModel model = BranchModel.of(problem, SerialPlanner.plan(problem), Optional.empty());
        assertThat(late(model, Order.urgent(model).thrifty(), 1_500))
                .isLessThan(late(model, Order.urgent(model), 1_500));
    }

    private static long late(BranchModel model, Order start, int orders) {
        ShiftSearch search = new ShiftSearch(model, start, 1);
        search.run(orders, () -> false);
        return search.dates().lateness();
    }

    @Test
    void theSameSeedFindsTheSame() {
        assertThat(searched(7).dates().start).isEqualTo(searched(7).dates().start);
    }

    @Test
    void whoStopsKeepsTheBestSoFar() {
        BranchModel model = BranchModel.of(BRANCH, SerialPlanner.plan(BRANCH), Optional.empty());
        ShiftSearch search = new ShiftSearch(model, Order.urgent(model), 1);
        long before = search.dates().lateness();
        search.run(1_000_000, () -> true);
        assertThat(search.dates().lateness()).isEqualTo(before);
    }
}
