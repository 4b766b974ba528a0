package org.plumbrow.calc.planning.replan;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.plumbrow.calc.calendar.HalfDay;
import org.plumbrow.calc.planning.LargeBranch;
import org.plumbrow.calc.planning.PlanningProblem;
import org.plumbrow.calc.planning.Published;
import org.plumbrow.calc.planning.SerialPlanner;
import org.plumbrow.calc.planning.search.BranchModel;
import org.plumbrow.calc.planning.search.Dates;
import org.plumbrow.calc.planning.search.Decoder;
import org.plumbrow.calc.planning.search.Order;

class BentOrdersTest {

    private static KnownPlaces known(PlanningProblem changed, PlanningProblem before) {
        Published published = new Published(
                SerialPlanner.plan(before),
                HalfDay.afternoon(before.today().date().plusWeeks(8)));
        BranchModel model = BranchModel.of(changed, SerialPlanner.plan(changed), Optional.of(published));
        return new KnownPlaces(model, published.plan());
    }

    private static Dates dates(BranchModel model, Order order) {
        Decoder decoder = new Decoder(model);
        Dates dates = decoder.emptyDates();
        decoder.decode(order, dates);
        return dates;
    }

    @ParameterizedTest
    @ValueSource(booleans = {true, false})
    void whereNothingHasChangedAllThatPeopleCountOnStands(boolean farStands) {
        PlanningProblem problem = LargeBranch.of(60, 2);
        KnownPlaces known = known(problem, problem);
        for (Order order : new BentOrders(known).all(farStands)) {
            Dates dates = dates(known.model, order);
            assertThat(known.movedOfCountedOn(dates)).isZero();
            assertThat(known.disturbance(dates) == 0 || !farStands).isTrue();
        }
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2})
    void afterALostWeekTheBestMovesLessThanHalfOfWhatPushingEverythingLaterDoes(long seed) {
        PlanningProblem problem = LargeBranch.of(150, seed);
        KnownPlaces known = known(LostWeek.of(problem, 0, 2), problem);
        int pushed = known.movedOfCountedOn(dates(known.model, known.kept()));
        int least = new BentOrders(known)
                .all(true).stream()
                        .mapToInt(order -> known.movedOfCountedOn(dates(known.model, order)))
                        .min()
                        .orElseThrow();
        assertThat(least).isPositive().isLessThan(pushed / 2);
    }
}
