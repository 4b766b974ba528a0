package org.plumbrow.calc.planning.engine;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.plumbrow.calc.planning.TightBranch;
import org.plumbrow.calc.planning.search.Dates;
import org.plumbrow.calc.planning.search.Decoder;
import org.plumbrow.calc.planning.search.Order;

/** The solver's bound against the best of all plans, beginning with a bad one. */
class WholeBranchTest {

    private static final int BRANCHES = 500;

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
                whole.solve(0.2, seed);
                assertThat(whole.bound()).as("seed " + seed).isLessThanOrEqualTo(branch.least());
                tried++;
                reached += whole.bound() == branch.least() ? 1 : 0;
            }
        }
        assertThat(tried).isGreaterThan(250);
        assertThat(reached).as("of %d", tried).isGreaterThan(tried * 9 / 10);
    }
}
