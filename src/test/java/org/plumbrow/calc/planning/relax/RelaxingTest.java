package org.plumbrow.calc.planning.relax;

import static org.assertj.core.api.Assertions.assertThat;
import static org.plumbrow.calc.planning.SmallBranch.afternoon;
import static org.plumbrow.calc.planning.SmallBranch.morning;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.plumbrow.calc.calendar.HalfDay;
import org.plumbrow.calc.planning.Absence;
import org.plumbrow.calc.planning.Bound;
import org.plumbrow.calc.planning.EquipmentNeed;
import org.plumbrow.calc.planning.Fix;
import org.plumbrow.calc.planning.Placement;
import org.plumbrow.calc.planning.Plan;
import org.plumbrow.calc.planning.PlanningProblem;
import org.plumbrow.calc.planning.Predecessor;
import org.plumbrow.calc.planning.SmallBranch;

/** Branches small enough for every date to be worked out with a pencil; today is Monday, March 1. */
class RelaxingTest {

    private static final Plan FIRST_A_THEN_B = known(Map.of("a", morning(1), "b", morning(8)));

    private static final Plan NOTHING = known(Map.of());

    /** A plan of which only the starts are known. */
    private static Plan known(Map<String, HalfDay> starts) {
        Map<String, Placement> placements = new HashMap<>();
        starts.forEach((id, start) ->
                placements.put(id, new Placement(id, start, start, Optional.empty(), new Bound.Today())));
        return new Plan(placements, List.of(), List.of());
    }

    /** One crew; a and b take a week each; a is promised for its week. */
    private static PlanningProblem twoWeeksOfOneCrew() {
        SmallBranch branch =
                new SmallBranch().project("A", "Alder").project("B", "Birch").crew("c", "Crew 1", Set.of("build"));
        return branch.activity(branch.work("a", "A", "racking", "build", 10))
                .activity(branch.work("b", "B", "racking", "build", 10))
                .promise("A", "a", 5)
                .promise("B", "b", 5)
                .problem();
    }

    private static Moved of(PlanningProblem problem, Plan known, String id, Class<?> kind) {
        return Relaxing.of(problem, known, id).orElseThrow().moved().stream()
                .filter(moved -> kind.isInstance(moved.relaxation()))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void aSecondCrewForTheWeekOfTheOtherJobBringsBothIntoIt() {
        PlanningProblem problem = twoWeeksOfOneCrew();
        assertThat(Relaxing.of(problem, FIRST_A_THEN_B, "b").orElseThrow().finish())
                .isEqualTo(afternoon(12));
        Moved help = of(problem, FIRST_A_THEN_B, "b", Relaxation.CrewLike.class);
        assertThat(help.relaxation()).isEqualTo(new Relaxation.CrewLike("c", SmallBranch.MONDAY, 5));
        assertThat(help.finish()).isEqualTo(afternoon(5));
        assertThat(help.daysGained()).isEqualTo(5);
        assertThat(help.promisesSaved()).isEqualTo(1);
        assertThat(help.promisesBroken()).isZero();
        assertThat(help.latenessChange()).isEqualTo(-10);
    }

    @Test
    void servedBeforeTheOtherGainsTheWeekAndCostsTheOtherItsPromise() {
        Moved swap = of(twoWeeksOfOneCrew(), FIRST_A_THEN_B, "b", Relaxation.ServedBefore.class);
        assertThat(swap.finish()).isEqualTo(afternoon(5));
        assertThat(swap.daysGained()).isEqualTo(5);
        assertThat(swap.promisesBroken()).isEqualTo(1);
        assertThat(swap.latenessChange()).isZero();
    }

    @Test
    void aSaturdayBetweenIsOneDayForTheSecondWeek() {
        // ten half-days from Monday, then ten from Saturday, the 6th: Saturday and Monday to Thursday
        Moved saturdays = of(twoWeeksOfOneCrew(), FIRST_A_THEN_B, "b", Relaxation.Saturdays.class);
        assertThat(saturdays.finish()).isEqualTo(afternoon(11));
        assertThat(saturdays.daysGained()).isEqualTo(1);
    }

    @Test
    void ofEqualGainsTheOneThatCostsOthersLeastComesFirst() {
        assertThat(Relaxing.of(twoWeeksOfOneCrew(), FIRST_A_THEN_B, "b")
                        .orElseThrow()
                        .moved())
                .extracting(moved -> (Object) moved.relaxation().getClass())
                .containsExactly(Relaxation.CrewLike.class, Relaxation.ServedBefore.class, Relaxation.Saturdays.class);
    }

    @Test
    void anAnswerFiveDaysSoonerIsFiveDays() {
        SmallBranch branch = new SmallBranch().project("A", "Alder").crew("c", "Crew 1", Set.of("build"));
        PlanningProblem problem = branch.activity(SmallBranch.waiting("permit", "A", "permit", 8))
                .activity(branch.work("a", "A", "racking", "build", 2).after(Predecessor.of("permit")))
                .problem();
        // asked on Monday, the 1st, answered on the 8th working day after, Thursday, the 11th; built on the 12th
        assertThat(Relaxing.of(problem, NOTHING, "a").orElseThrow().finish()).isEqualTo(afternoon(12));
        Moved sooner = of(problem, NOTHING, "a", Relaxation.AnsweredSooner.class);
        assertThat(sooner.finish()).isEqualTo(afternoon(5));
        assertThat(sooner.daysGained()).isEqualTo(5);
    }

    @Test
    void aPromisedAnswerIsNotMovedBeforeToday() {
        SmallBranch branch = new SmallBranch().project("A", "Alder").crew("c", "Crew 1", Set.of("build"));
        PlanningProblem problem = branch.activity(SmallBranch.waiting("permit", "A", "permit", 8)
                        .fixed(new Fix.Expected(morning(1), afternoon(3))))
                .activity(branch.work("a", "A", "racking", "build", 2).after(Predecessor.of("permit")))
                .problem();
        Moved sooner = of(problem, NOTHING, "a", Relaxation.AnsweredSooner.class);
        assertThat(sooner.finish()).isBetween(afternoon(1), morning(2));
    }

    @Test
    void aCrewThatStaysBeginsAtOnce() {
        Absence away = new Absence(morning(1), afternoon(3), "training");
        SmallBranch branch = new SmallBranch().project("A", "Alder").crew("c", "Crew 1", Set.of("build"), away);
        PlanningProblem problem =
                branch.activity(branch.work("a", "A", "racking", "build", 2)).problem();
        Moved stays = of(problem, NOTHING, "a", Relaxation.CrewStays.class);
        assertThat(stays.relaxation()).isEqualTo(new Relaxation.CrewStays("c", away));
        assertThat(stays.finish()).isEqualTo(afternoon(1));
        assertThat(stays.daysGained()).isEqualTo(3);
    }

    @Test
    void oneMachineMoreLetsTwoCrewsDriveAtOnce() {
        SmallBranch branch = new SmallBranch()
                .project("A", "Alder")
                .project("B", "Birch")
                .crew("c", "Crew 1", Set.of("build"))
                .crew("d", "Crew 2", Set.of("build"))
                .equipment("driver", 1);
        PlanningProblem problem = branch.activity(
                        branch.work("a", "A", "posts", "build", 4).with(new EquipmentNeed("driver", 1)))
                .activity(branch.work("b", "B", "posts", "build", 4).with(new EquipmentNeed("driver", 1)))
                .problem();
        Moved more = of(problem, known(Map.of("a", morning(1), "b", morning(3))), "b", Relaxation.OneMore.class);
        assertThat(more.finish()).isEqualTo(afternoon(2));
        assertThat(more.daysGained()).isEqualTo(2);
    }

    @Test
    void aSettledStartThatMayMoveComesForward() {
        SmallBranch branch = new SmallBranch().project("A", "Alder").crew("c", "Crew 1", Set.of("build"));
        PlanningProblem problem = branch.activity(
                        branch.work("a", "A", "racking", "build", 2).fixed(Fix.Pinned.at(morning(10))))
                .problem();
        Moved free = of(problem, NOTHING, "a", Relaxation.NotSettled.class);
        assertThat(free.finish()).isEqualTo(afternoon(1));
        assertThat(free.daysGained()).isEqualTo(7);
    }
}
