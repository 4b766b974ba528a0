package org.plumbrow.calc.planning.search;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Month;
import java.util.Arrays;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.stream.Collectors;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.plumbrow.calc.planning.LargeBranch;
import org.plumbrow.calc.planning.Placement;
import org.plumbrow.calc.planning.Plan;
import org.plumbrow.calc.planning.PlanCheck;
import org.plumbrow.calc.planning.PlanningProblem;
import org.plumbrow.calc.planning.RandomBranch;
import org.plumbrow.calc.planning.SerialPlanner;
import org.plumbrow.calc.planning.WeatherAllowance;

/** The fast decoder against the planner that makes every plan: the same order gives the same dates. */
class DecoderTest {

    @Test
    void anyOrderGivesTheDatesOfThePlanner() {
        LongStream.range(0, 3_000).forEach(seed -> {
            PlanningProblem problem = RandomBranch.of(seed, seed % 2 == 1);
            Plan first = SerialPlanner.plan(problem);
            BranchModel model = BranchModel.of(problem, first, Optional.empty());
            Order order = Order.urgent(model);
            Random random = new Random(seed);
            for (int number = 0; number < model.size(); number++) {
                order.key()[number] += random.nextInt(40) - 20;
                order.crew()[number] = random.nextBoolean() ? Order.ANY : Order.THRIFTY;
                order.notBefore()[number] =
                        random.nextInt(10) == 0 ? random.nextInt(Math.min(30, model.slots.size)) : 0;
            }
            same(seed, problem, model, order);
        });
    }

    @Test
    void aWholeBranchIsDecodedAlike() {
        PlanningProblem problem = LargeBranch.of(75, 3);
        BranchModel model = BranchModel.of(problem, SerialPlanner.plan(problem), Optional.empty());
        same(3, problem, model, Order.urgent(model));
        same(3, problem, model, Order.urgent(model).thrifty());
    }

    @Test
    void moreCrewsThanAWordHasBitsAreDecodedAlikeInAnyWeather() {
        PlanningProblem fair = LargeBranch.of(1_650, 5);
        assertThat(fair.crews()).hasSizeGreaterThan(64);
        Map<Month, Double> lost = Arrays.stream(Month.values())
                .collect(Collectors.toMap(month -> month, month -> month.getValue() / 40.0));
        PlanningProblem problem = new PlanningProblem(
                fair.calendar(),
                fair.today(),
                fair.lastDay(),
                fair.projects(),
                fair.activities(),
                fair.crews(),
                fair.equipment(),
                fair.promises(),
                new WeatherAllowance(lost));
        BranchModel model = BranchModel.of(problem, SerialPlanner.plan(problem), Optional.empty());
        same(5, problem, model, Order.urgent(model));
        same(5, problem, model, Order.urgent(model).thrifty());
    }

    private static void same(long seed, PlanningProblem problem, BranchModel model, Order order) {
        Decoder decoder = new Decoder(model);
        Dates dates = decoder.emptyDates();
        decoder.decode(order, dates);
        Plan plan = SerialPlanner.plan(problem, Guiding.guidance(model, order, dates));
        if (dates.unplaced() > 0) {
            return;
        }
        for (int number = 0; number < model.size(); number++) {
            Task task = model.tasks[number];
            boolean moves = task.kind == Task.Kind.WAIT;
            Placement placed = plan.of(task.activity.id()).orElseThrow();
            if (!moves) {
                assertThat(model.slots.axis.atOrAfter(placed.start()))
                        .as("seed %d, %s", seed, placed)
                        .isEqualTo(dates.start[number]);
                assertThat(model.slots.axis.atOrBefore(placed.finish()))
                        .as("seed %d, %s", seed, placed)
                        .isEqualTo(dates.finish[number]);
                assertThat(placed.crewId())
                        .isEqualTo(
                                dates.crew[number] < 0
                                        ? Optional.empty()
                                        : Optional.of(problem.crews()
                                                .get(dates.crew[number])
                                                .id()));
            }
        }
        assertThat(plan.weightedHalfDaysLate()).as("seed " + seed).isEqualTo(dates.lateness());
        if (plan.findings().isEmpty()) {
            assertThat(PlanCheck.breaches(problem, plan)).as("seed " + seed).isEmpty();
        }
    }
}
