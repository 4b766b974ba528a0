package org.plumbrow.calc.planning.engine;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.Arrays;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import org.junit.jupiter.api.Test;
import org.plumbrow.calc.planning.LargeBranch;
import org.plumbrow.calc.planning.PlanningProblem;
import org.plumbrow.calc.planning.SerialPlanner;
import org.plumbrow.calc.planning.TightBranch;
import org.plumbrow.calc.planning.bounds.LowerBound;
import org.plumbrow.calc.planning.search.BranchModel;
import org.plumbrow.calc.planning.search.Dates;
import org.plumbrow.calc.planning.search.Decoder;
import org.plumbrow.calc.planning.search.Order;

/** The solver's bound against the best of all plans, beginning with a bad one. */
class WholeBranchTest {

    private static final int BRANCHES = 500;
    private static final int HELD_BACK = 40;

    @Test
    void neverAboveTheBestOfAllPlansAndAlmostAlwaysThere() {
        int tried = 0;
        int reached = 0;
        for (long seed = 0; seed < BRANCHES; seed++) {
            TightBranch branch = TightBranch.of(seed);
            if (!branch.solve()) {
                continue;
            }
            Decoder decoder = new Decoder(branch.model);
            Dates dates = decoder.emptyDates();
            decoder.decode(Order.urgent(branch.model), dates);
            if (dates.unplaced() == 0 && dates.lateness() > 0) {
                WholeBranch whole = new WholeBranch(branch.model, dates);
                whole.solve(0.2, seed, () -> false);
                assertThat(whole.bound()).as("seed " + seed).isLessThanOrEqualTo(branch.least());
                tried++;
                reached += whole.bound() == branch.least() ? 1 : 0;
            }
        }
        assertThat(tried).isGreaterThan(250);
        assertThat(reached).as("of %d", tried).isGreaterThan(tried * 9 / 10);
    }

    /** A plan so bad that no bound is cut down to it. */
    private static Dates everythingHeldBack(TightBranch branch) {
        Order order = Order.urgent(branch.model);
        Arrays.fill(order.notBefore(), HELD_BACK);
        Decoder decoder = new Decoder(branch.model);
        Dates dates = decoder.emptyDates();
        decoder.decode(order, dates);
        return dates;
    }

    /** The others alone, and the most urgent without the others: together still no more than the best of all plans. */
    @Test
    void whatTheMostUrgentHaveLateIsNeverAboveTheBestOfAllPlans() {
        int smaller = 0;
        int saysMore = 0;
        for (long seed = 0; seed < 2 * BRANCHES; seed++) {
            TightBranch branch = TightBranch.of(seed);
            if (!branch.solve() || branch.least() == 0) {
                continue;
            }
            LowerBound alone = new LowerBound(branch.model, branch.best);
            Dates late = everythingHeldBack(branch);
            if (late.unplaced() > 0 || late.lateness() < 2 * branch.least()) {
                continue;
            }
            for (int most = 1; most <= 3; most++) {
                WholeBranch urgent = WholeBranch.mostUrgent(branch.model, late, most, alone::late);
                if (urgent.isSmall()) {
                    urgent.solve(0.1, seed, () -> false);
                    assertThat(urgent.bound()).as("seed " + seed).isLessThanOrEqualTo(branch.least());
                    smaller++;
                    saysMore += urgent.bound() > alone.value() ? 1 : 0;
                }
            }
        }
        assertThat(smaller).isGreaterThan(1_000);
        assertThat(saysMore).as("of %d more than chains", smaller).isPositive();
    }

    /** Work of minutes, broken off after a moment: the answer is there soon and still no more than any plan. */
    @Test
    void endsSoonAfterItIsToldToStop() {
        BranchModel model = model(LargeBranch.of(20, 2));
        Dates dates = new Decoder(model).emptyDates();
        new Decoder(model).decode(Order.urgent(model), dates);
        WholeBranch whole = new WholeBranch(model, dates);
        long begun = System.nanoTime();
        BooleanSupplier afterAMoment = () -> System.nanoTime() - begun > 300_000_000L;
        whole.solve(600, 1, afterAMoment);
        assertThat(Duration.ofNanos(System.nanoTime() - begun)).isLessThan(Duration.ofSeconds(20));
        assertThat(whole.bound()).isBetween(0L, dates.lateness());
    }

    private static BranchModel model(PlanningProblem problem) {
        return BranchModel.of(problem, SerialPlanner.plan(problem), Optional.empty());
    }
}
