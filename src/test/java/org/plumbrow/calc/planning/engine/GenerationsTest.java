package org.plumbrow.calc.planning.engine;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.plumbrow.calc.planning.LargeBranch;
import org.plumbrow.calc.planning.PlanningProblem;
import org.plumbrow.calc.planning.SerialPlanner;
import org.plumbrow.calc.planning.search.BranchModel;
import org.plumbrow.calc.planning.search.Dates;
import org.plumbrow.calc.planning.search.Decoder;
import org.plumbrow.calc.planning.search.Order;
import org.plumbrow.calc.planning.search.ShiftSearch;

class GenerationsTest {

    private static BranchModel model(int projects, long seed) {
        PlanningProblem problem = LargeBranch.of(projects, seed);
        return BranchModel.of(problem, SerialPlanner.plan(problem), Optional.empty());
    }

    private static Order searched(BranchModel model, int threads, int decodings) {
        Order urgent = Order.urgent(model);
        return new Generations(model, 1, threads, () -> false).best(List.of(urgent, urgent), decodings);
    }

    private static long late(BranchModel model, Order order) {
        Decoder decoder = new Decoder(model);
        Dates dates = decoder.emptyDates();
        decoder.decode(order, dates);
        return dates.lateness();
    }

    @Test
    void manyShortSearchesFindLessLatePlansThanOneLongOne() {
        int orders = 28_000;
        long together = 0;
        long alone = 0;
        for (long seed = 1; seed <= 2; seed++) {
            BranchModel model = model(75, seed);
            together += late(model, searched(model, 2, orders));
            ShiftSearch search = new ShiftSearch(model, Order.urgent(model), 1);
            search.run(orders, () -> false);
            alone += search.dates().lateness();
        }
        assertThat(together).isLessThan(alone);
    }

    @Test
    void theOrderIsTheSameOnAnyNumberOfThreads() {
        BranchModel model = model(60, 2);
        assertThat(searched(model, 4, 28_000).key())
                .isEqualTo(searched(model, 1, 28_000).key());
    }

    @Test
    void withFewerOrdersThanStartsTheBestStartIsTheAnswer() {
        BranchModel model = model(60, 2);
        Order poor = Order.urgent(model);
        for (int number = 0; number < model.size(); number++) {
            poor.key()[number] = -poor.key()[number];
        }
        Order urgent = Order.urgent(model);
        Order best = new Generations(model, 1, 2, () -> false).best(List.of(poor, urgent), 1);
        assertThat(late(model, best)).isEqualTo(late(model, urgent)).isLessThan(late(model, poor));
    }

    @Test
    void whoStopsKeepsTheBestSoFar() {
        BranchModel model = model(60, 2);
        Order best = new Generations(model, 1, 2, () -> true).best(List.of(Order.urgent(model)), 1_000_000);
        assertThat(best.key()).isEqualTo(Order.urgent(model).key());
    }
}
