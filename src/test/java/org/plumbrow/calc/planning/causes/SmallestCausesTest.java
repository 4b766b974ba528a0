package org.plumbrow.calc.planning.causes;

import static org.assertj.core.api.Assertions.assertThat;
import static org.plumbrow.calc.planning.SmallBranch.afternoon;
import static org.plumbrow.calc.planning.SmallBranch.morning;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.plumbrow.calc.planning.Absence;
import org.plumbrow.calc.planning.Activity;
import org.plumbrow.calc.planning.EquipmentNeed;
import org.plumbrow.calc.planning.Fix;
import org.plumbrow.calc.planning.Predecessor;
import org.plumbrow.calc.planning.SmallBranch;

class SmallestCausesTest {

    private static final Absence LEAVE = new Absence(morning(1), afternoon(2), "leave");

    private static SmallBranch branch(Absence... away) {
        return new SmallBranch()
                .crew("one", "Crew 1", Set.of("roof"), away)
                .crew("two", "Crew 2", Set.of("wire"))
                .project("A", "Job A")
                .project("B", "Job B");
    }

    private static Activity settled(SmallBranch branch, String id, int day) {
        return branch.work(id, id.substring(0, 1), "roof array", "roof", 2).fixed(Fix.Pinned.at(morning(day)));
    }

    @Test
    void aSettledDayOnADayOffHasTwoCauses() {
        SmallBranch branch = branch();
        branch.activity(settled(branch, "A", 7)).activity(settled(branch, "B", 4));
        assertThat(SmallestCauses.of(branch.problem(), "A"))
                .containsExactlyInAnyOrder(
                        new Cause.Settled("A", morning(7)),
                        new Cause.DayOff(
                                morning(7).date(),
                                branch.problem()
                                        .calendar()
                                        .whyClosed(morning(7).date())
                                        .orElseThrow()));
    }

    @Test
    void twoWorksOfOneSkillOnOneDayHaveFourCausesAndNoneTooMany() {
        SmallBranch branch = branch(new Absence(morning(10), afternoon(12), "training"));
        branch.activity(settled(branch, "A", 4)).activity(settled(branch, "B", 4));
        assertThat(SmallestCauses.of(branch.problem(), "B"))
                .as("either could be done by Crew 2 if it had the skill, or on another day")
                .contains(new Cause.Settled("A", morning(4)), new Cause.Settled("B", morning(4)))
                .noneMatch(cause -> cause instanceof Cause.CrewAway)
                .hasSize(4);
    }

    @Test
    void twoWorksSettledOnOneCrewAndDayHaveBothDaysAndBothCrewsAsCauses() {
        SmallBranch branch = branch();
        for (String id : List.of("A", "B")) {
            branch.activity(
                    branch.work(id, id, "roof array", "roof", 2).fixed(new Fix.Pinned(morning(4), Optional.of("one"))));
        }
        List<Cause> causes = SmallestCauses.of(branch.problem(), "B");
        assertThat(causes)
                .contains(new Cause.Settled("A", morning(4)), new Cause.Settled("B", morning(4)))
                .hasSize(4);
    }

    @Test
    void aSettledDayTooSoonBehindAWorkWhoseCrewIsAwayNamesTheLeave() {
        SmallBranch branch = branch(LEAVE);
        branch.activity(branch.work("A1", "A", "mobilising", "roof", 2))
                .activity(settled(branch, "A2", 3).after(new Predecessor("A1", 0, 0)));
        assertThat(SmallestCauses.of(branch.problem(), "A2"))
                .contains(new Cause.CrewAway("one", LEAVE), new Cause.Settled("A2", morning(3)))
                .hasSize(3)
                .as("and that only Crew 1 may do it")
                .contains(new Cause.OnlySomeCrews("A1"));
    }

    @Test
    void aMachineThatTheBranchHasNoneOfIsTheOnlyCause() {
        SmallBranch branch = branch();
        branch.equipment("driver", 0)
                .activity(branch.work("A", "A", "posts", "roof", 2).with(new EquipmentNeed("driver", 1)));
        assertThat(SmallestCauses.of(branch.problem(), "A")).containsExactly(new Cause.Pieces("driver", 0));
    }

    @Test
    void aSkillThatNobodyHasIsTheOnlyCause() {
        SmallBranch branch = branch();
        branch.activity(branch.work("A", "A", "bore", "bore", 2));
        assertThat(SmallestCauses.of(branch.problem(), "A")).containsExactly(new Cause.OnlySomeCrews("A"));
    }

    @Test
    void whatHoldsHasNoCause() {
        SmallBranch branch = branch();
        branch.activity(settled(branch, "A", 4)).activity(settled(branch, "B", 5));
        assertThat(SmallestCauses.of(branch.problem(), "B")).isEmpty();
    }

    /** What is left clashes, and without any one of it nothing does. */
    @Test
    void theSetClashesAndNoPartOfItDoes() {
        SmallBranch branch = branch(LEAVE);
        branch.activity(branch.work("A1", "A", "mobilising", "roof", 2))
                .activity(settled(branch, "A2", 3).after(new Predecessor("A1", 0, 0)))
                .activity(settled(branch, "B", 3));
        List<Cause> causes = SmallestCauses.of(branch.problem(), "A2");
        for (Cause one : causes) {
            assertThat(SmallestCauses.of(WithoutCauses.of(branch.problem(), others(branch, causes, one)), "A2"))
                    .as("without " + one)
                    .isEmpty();
        }
    }

    /** Everything that is no cause, and one cause. */
    private static Set<Cause> others(SmallBranch branch, List<Cause> causes, Cause one) {
        Set<Cause> gone = new java.util.HashSet<>(
                new Conditions(branch.problem(), morning(3).date()).all());
        causes.forEach(gone::remove);
        gone.add(one);
        return gone;
    }
}
