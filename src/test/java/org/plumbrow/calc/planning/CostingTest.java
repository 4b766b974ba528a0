package org.plumbrow.calc.planning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.plumbrow.calc.planning.SmallBranch.afternoon;
import static org.plumbrow.calc.planning.SmallBranch.morning;

import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;

class CostingTest {

    private static PlanningProblem twoJobs() {
        SmallBranch branch = new SmallBranch()
                .project(new Project("a", "Alder", Optional.of(new Site(44.0, -72.0))))
                .project(new Project("b", "Birch", Optional.of(new Site(44.0, -71.0))))
                .crew("c", "Crew 1", Set.of("array"));
        return branch.activity(branch.work("a1", "a", "racking", "array", 2))
                .activity(branch.work("b1", "b", "racking", "array", 2).notBefore(morning(3)))
                .promise("b", "b1", 2)
                .problem();
    }

    @Test
    void eachPartIsCountedInHalfDays() {
        PlanCost cost = new Costing(twoJobs(), Optional.empty()).of(SerialPlanner.plan(twoJobs()));
        // Monday Alder, Tuesday idle, Wednesday Birch, promised for Tuesday.
        assertThat(cost.lateness()).isEqualTo(2);
        assertThat(cost.idle()).isEqualTo(2);
        assertThat(cost.disturbance()).isZero();
        assertThat(cost.broken()).isZero();
    }

    /** One degree of longitude at 44 degrees north is 80.0 km (closed form: 6371 km · π/180 · cos 44°), by road 104 km. */
    @Test
    void theWayIsTheGreatCircleWithADetour() {
        assertThat(new Site(44, -72).roadKmTo(new Site(44, -71))).isCloseTo(1.3 * 79.99, within(0.1));
        PlanCost cost = new Costing(twoJobs(), Optional.empty()).of(SerialPlanner.plan(twoJobs()));
        assertThat(cost.travelMinutes()).isEqualTo(104);
        assertThat(cost.travelHalfDays()).isCloseTo(0.433, within(0.001));
    }

    @Test
    void aKnownDateThatMovesAndAKnownCrewThatChangesDisturb() {
        PlanningProblem problem = twoJobs();
        Plan known = SerialPlanner.plan(problem);
        Costing costing = new Costing(problem, Optional.of(new Published(known, afternoon(31))));
        assertThat(costing.of(known).disturbance()).isZero();
        Guidance held = new Guidance(Map.of("b1", new Guidance.Guide(0, Optional.empty(), Optional.of(morning(8)))));
        Plan moved = SerialPlanner.plan(problem, held);
        assertThat(moved.of("b1").orElseThrow().bound()).isEqualTo(new Bound.Kept(morning(8)));
        assertThat(new PlanWords(problem).bound(new Bound.Kept(morning(8))))
                .isEqualTo("It stays on Mon, Mar 8, the date that people know.");
        // Wednesday to Monday is six working half-days.
        assertThat(costing.of(moved).disturbance()).isEqualTo(6);
    }

    @Test
    void aStartThatIsHeldWhereItsCrewHasNoRoomEarlierIsBoundByTheCrew() {
        SmallBranch branch = SmallBranch.ofRoofers();
        PlanningProblem problem = branch.activity(branch.work("mount", "farm", "mount", "ROOF", 2))
                .activity(branch.work("fit", "barn", "fit", "ROOF", 2))
                .problem();
        assertThat(fitHeldUntil(problem, 2).bound()).isEqualTo(new Bound.CrewBusy("roofers", "mount", afternoon(1)));
        assertThat(fitHeldUntil(problem, 3).bound()).isEqualTo(new Bound.Kept(morning(3)));
    }

    @Test
    void ofTwoThatEndAlikeTheOneBindsThatIsNotJustKeptOnItsDate() {
        SmallBranch branch = new SmallBranch().project("farm", "Farm").crew("roofers", "Roofers", Set.of("ROOF"));
        PlanningProblem problem = branch.activity(SmallBranch.waiting("agreement", "farm", "agreement", 1))
                .activity(branch.work("mount", "farm", "mount", "ROOF", 6))
                .activity(branch.work("fit", "farm", "fit", "ROOF", 2)
                        .after(new Predecessor("agreement", 0, 0), new Predecessor("mount", 0, 0)))
                .problem();
        Guidance held =
                new Guidance(Map.of("agreement", new Guidance.Guide(0, Optional.empty(), Optional.of(morning(2)))));
        Plan plan = SerialPlanner.plan(problem, held);
        assertThat(plan.of("agreement").orElseThrow().bound()).isEqualTo(new Bound.Kept(morning(2)));
        assertThat(plan.of("agreement").orElseThrow().finish())
                .isEqualTo(plan.of("mount").orElseThrow().finish());
        assertThat(plan.of("fit").orElseThrow().bound()).isEqualTo(new Bound.After("mount", afternoon(3)));
    }

    private static Placement fitHeldUntil(PlanningProblem problem, int dayOfMarch) {
        Guidance held = new Guidance(Map.of(
                "mount", new Guidance.Guide(0, Optional.of("roofers"), Optional.empty()),
                "fit", new Guidance.Guide(1, Optional.of("roofers"), Optional.of(morning(dayOfMarch)))));
        Placement fit = SerialPlanner.plan(problem, held).of("fit").orElseThrow();
        assertThat(fit.start()).isEqualTo(morning(dayOfMarch));
        return fit;
    }

    @Test
    void anEarlierPartDecides() {
        PlanCost late = new PlanCost(0, 2, 0, 0, 0);
        assertThat(new PlanCost(0, 1, 99, 99, 99).isBetterThan(late)).isTrue();
        assertThat(new PlanCost(1, 0, 0, 0, 0).isBetterThan(late)).isFalse();
    }
}
