package org.plumbrow.calc.planning.bounds;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.plumbrow.calc.planning.LargeBranch;
import org.plumbrow.calc.planning.PlanningProblem;
import org.plumbrow.calc.planning.SerialPlanner;
import org.plumbrow.calc.planning.TightBranch;
import org.plumbrow.calc.planning.search.BranchModel;
import org.plumbrow.calc.planning.search.Dates;
import org.plumbrow.calc.planning.search.Decoder;
import org.plumbrow.calc.planning.search.Due;
import org.plumbrow.calc.planning.search.Order;
import org.plumbrow.calc.planning.search.ShiftSearch;

/** A bound that is above any plan is wrong: held against the best of all plans where all can be tried. */
class LowerBoundTest {

    private static final int BRANCHES = 5_000;
    private static final int ROUNDS = 60;

    @Test
    void noBoundIsAboveTheBestOfAllPlans() {
        Tally tally = new Tally();
        for (long seed = 0; seed < BRANCHES; seed++) {
            TightBranch branch = TightBranch.of(seed);
            if (branch.solve()) {
                hold(seed, branch, tally);
            }
        }
        assertThat(tally.tried).as("branches on which everything was tried").isGreaterThan(2_000);
        assertThat(tally.late).as("of these with something late").isGreaterThan(1_500);
        assertThat(tally.byRent)
                .as("of these where rented crews say more than chains")
                .isGreaterThan(100);
        assertThat(tally.reached)
                .as("of these where the bound is the best plan")
                .isGreaterThan(3_000);
    }

    private static void hold(long seed, TightBranch branch, Tally tally) {
        LowerBound bound = new LowerBound(branch.model, branch.best);
        long chains = bound.value();
        assertThat(chains).as("chains, seed %d", seed).isLessThanOrEqualTo(branch.least());
        PriceBound prices = prices(branch.model, branch.best);
        prices.run(ROUNDS, () -> false);
        assertThat(prices.value()).as("rent, seed %d", seed).isLessThanOrEqualTo(branch.least());
        bound.rent(ROUNDS, 1 + (int) (seed % 3), () -> false);
        assertThat(bound.value()).isEqualTo(Math.max(chains, branch.least() > chains ? prices.value() : 0));
        Decoder decoder = new Decoder(branch.model);
        for (Due due : branch.model.dues) {
            assertThat(bound.late(due))
                    .as("one promise, seed %d", seed)
                    .isLessThanOrEqualTo(decoder.late(due, branch.best));
        }
        tally.add(branch.least(), chains, bound.value());
    }

    private static PriceBound prices(BranchModel model, Dates plan) {
        Places places = new Places(model);
        return new PriceBound(model, new ChainBound(model, places), places, plan, 1);
    }

    private static final class Tally {
        int tried;
        int late;
        int byRent;
        int reached;

        void add(long least, long chains, long bound) {
            tried++;
            late += least > 0 ? 1 : 0;
            byRent += bound > chains ? 1 : 0;
            reached += bound == least ? 1 : 0;
        }
    }

    @ParameterizedTest
    @CsvSource({"20, 1", "40, 2", "40, 3"})
    void ofAWholeBranchItStaysBelowTheBestPlanFound(int projects, long seed) {
        PlanningProblem problem = LargeBranch.of(projects, seed);
        BranchModel model = BranchModel.of(problem, SerialPlanner.plan(problem), Optional.empty());
        ShiftSearch search = new ShiftSearch(model, Order.urgent(model), seed);
        search.run(1_000, () -> false);
        LowerBound bound = new LowerBound(model, search.dates());
        long chains = bound.value();
        bound.rent(40, 2, () -> false);
        assertThat(bound.value()).isBetween(chains, search.dates().lateness());
    }

    /** Where three or four jobs of sixty are late prices apart are lost; the best mix of ways finds those that count. */
    @Test
    void ofAFullBranchItIsNearThePlan() {
        PlanningProblem problem = LargeBranch.of(60, 2);
        BranchModel model = BranchModel.of(problem, SerialPlanner.plan(problem), Optional.empty());
        ShiftSearch search = new ShiftSearch(model, Order.urgent(model), 1);
        search.run(4_000, () -> false);
        LowerBound alone = new LowerBound(model, search.dates());
        alone.rent(200, 1, () -> false);
        LowerBound together = new LowerBound(model, search.dates());
        together.rent(200, 2, () -> false);
        assertThat(alone.value()).isEqualTo(together.value());
        assertThat(alone.value())
                .isBetween(search.dates().lateness() * 4 / 5, search.dates().lateness());
    }
}
