package org.plumbrow.calc.planning.engine;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.plumbrow.calc.planning.LargeBranch;
import org.plumbrow.calc.planning.PlanningProblem;
import org.plumbrow.calc.planning.SerialPlanner;
import org.plumbrow.calc.planning.search.BranchModel;
import org.plumbrow.calc.planning.search.Chance;
import org.plumbrow.calc.planning.search.Dates;
import org.plumbrow.calc.planning.search.Decoder;
import org.plumbrow.calc.planning.search.Order;
import org.plumbrow.calc.planning.search.ShiftSearch;

class GenerationsTest {

    private static final String STAGE = "Searching";

    private static BranchModel model(int projects, long seed) {
        PlanningProblem problem = LargeBranch.of(projects, seed);
        return BranchModel.of(problem, SerialPlanner.plan(problem), Optional.empty());
    }

    private static Generations generations(BranchModel model, int threads, Watch watch) {
        Generations.Search search = (start, seed, orders) -> {
            ShiftSearch shifts = new ShiftSearch(model, start, seed);
            shifts.run(orders, watch::isStopped);
            return new Generations.Found(
                    shifts.best(), shifts.dates().cost(), shifts.dates().lateness(), false);
        };
        return new Generations(model, search, 1, threads, watch);
    }

    private static Order searched(BranchModel model, int threads, int decodings) {
        Order urgent = Order.urgent(model);
        return generations(model, threads, Watch.NOBODY).best(STAGE, List.of(urgent, urgent), decodings);
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
        Order best = generations(model, 2, Watch.NOBODY).best(STAGE, List.of(poor, urgent), 1);
        assertThat(late(model, best)).isEqualTo(late(model, urgent)).isLessThan(late(model, poor));
    }

    @Test
    void whoStopsKeepsTheBestSoFar() {
        BranchModel model = model(60, 2);
        Told stopped = new Told(new ArrayList<>(), true);
        Order best = generations(model, 2, stopped).best(STAGE, List.of(Order.urgent(model)), 1_000_000);
        assertThat(best.key()).isEqualTo(Order.urgent(model).key());
    }

    @Test
    void oneInFourProjectsIsServedAsInTheSecondOrderAndNoneIsTornApart() {
        BranchModel model = model(150, 1);
        Order first = Order.urgent(model);
        Order second = first.copy();
        Arrays.setAll(second.key(), number -> first.key()[number] + 1_000);
        Order mixed = Generations.mixed(model, first, second, new Chance(7));
        int fromSecond = 0;
        for (int[] project : model.projects) {
            List<Integer> later = Arrays.stream(project)
                    .map(number -> mixed.key()[number] - first.key()[number])
                    .distinct()
                    .boxed()
                    .toList();
            assertThat(later).hasSize(1).isSubsetOf(0, 1_000);
            fromSecond += later.get(0) / 1_000;
        }
        // 150 draws of one in four: 37.5, within three standard deviations of a binomial distribution (5.3 each).
        assertThat(fromSecond).isBetween(22, 53);
        assertThat(first.key()).isEqualTo(Order.urgent(model).key());
    }

    @Test
    void itIsToldHowManySearchesAreDoneAndHowLateTheBestIs() {
        BranchModel model = model(60, 2);
        Told told = new Told(new ArrayList<>(), false);
        Order urgent = Order.urgent(model);
        Order best = generations(model, 2, told).best(STAGE, List.of(urgent, urgent), 40_000);
        assertThat(told.steps).extracting(Step::done).containsExactly(12, 18);
        assertThat(told.steps).allSatisfy(step -> {
            assertThat(step.stage).isEqualTo(STAGE);
            assertThat(step.of).isEqualTo(20);
            assertThat(step.lateness)
                    .isGreaterThanOrEqualTo(late(model, best))
                    .isLessThanOrEqualTo(late(model, urgent));
        });
    }

    private record Step(String stage, int done, int of, long lateness) {}

    private record Told(List<Step> steps, boolean isStopped) implements Watch {
        @Override
        public void progress(String stage, int done, int of, long lateness) {
            steps.add(new Step(stage, done, of, lateness));
        }
    }
}
