package org.plumbrow.calc.planning.search;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.plumbrow.calc.planning.Activity;
import org.plumbrow.calc.planning.PlanningProblem;
import org.plumbrow.calc.planning.SerialPlanner;
import org.plumbrow.calc.planning.SmallBranch;
import org.plumbrow.calc.planning.Work;

/** Two crews, one twice as fast at what takes long; figures worked by hand. */
class TollsTest {

    private static final int SWIFT = 0;
    private static final int SLOW = 1;

    private final SmallBranch branch = new SmallBranch()
            .project("farm", "Farm")
            .crew("swift", "Swift", Set.of("ROOF"))
            .crew("slow", "Slow", Set.of("ROOF", "TILES"));

    private static Activity work(String id, String skill, int swift, int slow) {
        return Activity.of(id, "farm", id, new Work.ByCrew(Set.of(skill), Map.of("swift", swift, "slow", slow)));
    }

    private static BranchModel model(PlanningProblem problem) {
        return BranchModel.of(problem, SerialPlanner.plan(problem), Optional.empty());
    }

    private static int[] tolls(BranchModel model, String id) {
        return new Tolls(model.tasks, model.groups, model.crews.length).of(model.tasks[model.number(id)]);
    }

    @Test
    void aCrewsTimeIsWorthWhatItsPaceIs() {
        BranchModel model = model(branch.activity(work("lay", "ROOF", 10, 20))
                .activity(work("fit", "ROOF", 1, 1))
                .problem());
        // The slow crew needs 21 half-days for what takes 11: a pace of 0.5. A half-day of pace 1 is worth 10, in
        // sixteenths.
        assertThat(tolls(model, "lay")).containsExactly(1_600, 1_600);
        assertThat(tolls(model, "fit")).containsExactly(160, 80);
    }

    @Test
    void whatOneCrewDoesCountsAsAWhole() {
        BranchModel model = model(branch.activity(work("lay", "ROOF", 10, 20).inGroup("roof"))
                .activity(work("fit", "ROOF", 1, 1).inGroup("roof"))
                .problem());
        assertThat(tolls(model, "lay")).containsExactly(1_760, 1_680);
        assertThat(tolls(model, "fit")).containsExactly(1_760, 1_680);
    }

    /** The slow crew has tiles to lay first, which no other can: that makes its pace 0.6, so that less than four half-days are worth waiting for it. */
    @ParameterizedTest
    @CsvSource({"3, 1, 3", "4, 0, 0"})
    void aShortWorkWaitsForTheSlowCrewAsLongAsThatIsWorth(int tiles, int crew, int start) {
        BranchModel model = model(branch.activity(work("lay", "ROOF", 10, 20))
                .activity(work("fit", "ROOF", 1, 1))
                .activity(work("tile", "TILES", 1, tiles))
                .problem());
        Order order = Order.urgent(model).thrifty();
        order.key()[model.number("tile")] = -2_000;
        order.key()[model.number("fit")] = -1_000;
        Dates dates = decoded(model, order);
        int fit = model.number("fit");
        assertThat(dates.crew[model.number("tile")]).isEqualTo(SLOW);
        assertThat(dates.crew[fit]).isEqualTo(crew);
        assertThat(dates.start[fit]).isEqualTo(start);
    }

    @Test
    void withoutThriftTheFirstOfThoseIsTakenWhoFinishFirst() {
        BranchModel model = model(branch.activity(work("lay", "ROOF", 10, 20))
                .activity(work("fit", "ROOF", 1, 1))
                .problem());
        Order order = Order.urgent(model);
        order.key()[model.number("fit")] = -1_000;
        int fit = model.number("fit");
        assertThat(decoded(model, order).crew[fit]).isEqualTo(SWIFT);
        assertThat(decoded(model, order.thrifty()).crew[fit]).isEqualTo(SLOW);
    }

    private static Dates decoded(BranchModel model, Order order) {
        Decoder decoder = new Decoder(model);
        Dates dates = decoder.emptyDates();
        decoder.decode(order, dates);
        return dates;
    }
}
