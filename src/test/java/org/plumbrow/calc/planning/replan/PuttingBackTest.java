package org.plumbrow.calc.planning.replan;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.plumbrow.calc.planning.LargeBranch;
import org.plumbrow.calc.planning.PlanningProblem;
import org.plumbrow.calc.planning.Published;
import org.plumbrow.calc.planning.SerialPlanner;
import org.plumbrow.calc.planning.SmallBranch;
import org.plumbrow.calc.planning.search.BranchModel;
import org.plumbrow.calc.planning.search.Chance;
import org.plumbrow.calc.planning.search.Dates;
import org.plumbrow.calc.planning.search.Decoder;
import org.plumbrow.calc.planning.search.Order;
import org.plumbrow.calc.planning.search.PlanSearch;

class PuttingBackTest {

    private static final int ENOUGH = 20_000;

    /** Nobody counts on any date yet: what lies far ahead is put back like the rest. */
    private static KnownPlaces known(PlanningProblem changed, PlanningProblem before) {
        Published published = new Published(SerialPlanner.plan(before), before.today());
        BranchModel model = BranchModel.of(changed, SerialPlanner.plan(changed), Optional.of(published));
        return new KnownPlaces(model, published.plan());
    }

    private static Dates dates(BranchModel model, Order order) {
        Decoder decoder = new Decoder(model);
        Dates dates = decoder.emptyDates();
        decoder.decode(order, dates);
        return dates;
    }

    private static Order drawn(KnownPlaces known, long seed) {
        Chance chance = new Chance(seed);
        Order order = known.kept();
        for (int number = 0; number < known.model.size(); number++) {
            order.key()[number] += chance.below(60);
            order.crew()[number] = chance.below(2) == 0 ? Order.ANY : order.crew()[number];
            order.notBefore()[number] = chance.below(2) == 0 ? 0 : order.notBefore()[number];
        }
        return order;
    }

    @Test
    void whereNothingHasChangedEverythingGoesBack() {
        PlanningProblem problem = LargeBranch.of(20, 1);
        KnownPlaces known = known(problem, problem);
        assertThat(known.disturbance(dates(known.model, drawn(known, 1)))).isPositive();
        Order back = new PuttingBack(known, drawn(known, 1)).run(ENOUGH, () -> false);
        assertThat(known.disturbance(dates(known.model, back))).isZero();
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3})
    void whatStillMovesCannotGoBackAloneWithoutMoreLateness(long seed) {
        PlanningProblem problem = LargeBranch.of(30, seed);
        KnownPlaces known = known(LostWeek.of(problem, 0, 2), problem);
        Order start = drawn(known, seed);
        Dates before = dates(known.model, start);
        Order back = new PuttingBack(known, start).run(ENOUGH, () -> false);
        Dates after = dates(known.model, back);
        assertThat(after.lateness()).isLessThanOrEqualTo(before.lateness());
        assertThat(known.disturbance(after)).isLessThan(known.disturbance(before));
        for (int number = 0; number < known.model.size(); number++) {
            if (known.isKnown(number) && !known.stands(number, after)) {
                Order one = back.copy();
                known.keep(one, number);
                Dates tried = dates(known.model, one);
                assertThat(tried.lateness() > after.lateness()
                                || tried.unplaced() > after.unplaced()
                                || known.disturbance(tried) >= known.disturbance(after))
                        .as(known.model.tasks[number].activity.id())
                        .isTrue();
            }
        }
    }

    @Test
    void aPlanThatIsLessLateThanTheKnownOneStaysAsLittleLate() {
        PlanningProblem problem = LargeBranch.of(60, 2);
        KnownPlaces known = known(problem, problem);
        Order less = PlanSearch.found(problem, Optional.empty(), PlanSearch.Effort.USUAL, () -> false)
                .order();
        long late = dates(known.model, less).lateness();
        assertThat(late).isLessThan(dates(known.model, known.kept()).lateness());
        Order back = new PuttingBack(known, less).run(ENOUGH, () -> false);
        assertThat(dates(known.model, back).lateness()).isLessThanOrEqualTo(late);
    }

    @Test
    void twoThatTookEachOthersPlaceGoBackTogether() {
        SmallBranch branch = SmallBranch.ofRoofers();
        PlanningProblem problem = branch.activity(branch.work("mount", "farm", "mount", "ROOF", 2))
                .activity(branch.work("fit", "barn", "fit", "ROOF", 2))
                .promise("farm", "mount", 1)
                .promise("barn", "fit", 2)
                .problem();
        KnownPlaces known = known(problem, problem);
        int mount = known.model.number("mount");
        int fit = known.model.number("fit");
        assertThat(known.start[mount]).isZero();
        assertThat(known.start[fit]).isEqualTo(2);
        // Each is served so early that the other cannot take its place back alone.
        Order swapped = new Order(new int[] {-5, -5}, new int[] {Order.ANY, Order.ANY}, new int[2]);
        swapped.notBefore()[mount] = 2;
        Order back = new PuttingBack(known, swapped).run(ENOUGH, () -> false);
        Dates dates = dates(known.model, back);
        assertThat(known.stands(mount, dates)).isTrue();
        assertThat(known.stands(fit, dates)).isTrue();
    }

    @Test
    void noMoreOrdersAreTriedThanAllowed() {
        PlanningProblem problem = LargeBranch.of(20, 1);
        KnownPlaces known = known(problem, problem);
        Order start = drawn(known, 1);
        Order back = new PuttingBack(known, start).run(0, () -> false);
        assertThat(Arrays.equals(back.key(), start.key())).isTrue();
    }

    @Test
    void whoStopsKeepsWhatIsPutBackByThen() {
        PlanningProblem problem = LargeBranch.of(20, 1);
        KnownPlaces known = known(problem, problem);
        Order start = drawn(known, 1);
        AtomicInteger asked = new AtomicInteger();
        Order back = new PuttingBack(known, start).run(ENOUGH, () -> asked.incrementAndGet() > 5);
        assertThat(known.disturbance(dates(known.model, back)))
                .isPositive()
                .isLessThan(known.disturbance(dates(known.model, start)));
        assertThat(asked).hasValueLessThan(10);
    }
}
