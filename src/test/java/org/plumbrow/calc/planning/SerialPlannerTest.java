package org.plumbrow.calc.planning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;
import static org.plumbrow.calc.planning.SmallBranch.afternoon;
import static org.plumbrow.calc.planning.SmallBranch.morning;
import static org.plumbrow.calc.planning.SmallBranch.waiting;

import java.time.Month;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.plumbrow.calc.calendar.HalfDay;
import org.plumbrow.calc.calendar.WorkingCalendar;

class SerialPlannerTest {

    private SmallBranch branch;

    @BeforeEach
    void oneCrewAndTwoJobs() {
        branch = new SmallBranch()
                .project("s", "Sedge Hollow Dairy")
                .project("h", "Hatch Ridge Broilers")
                .crew("c1", "Crew 1", Set.of("array"));
    }

    private Plan plan() {
        PlanningProblem problem = branch.problem();
        return SerialPlanner.plan(problem);
    }

    private String why(String activity) {
        return new PlanWords(branch.problem())
                .bound(plan().of(activity).orElseThrow().bound());
    }

    private void isPlaced(String activity, HalfDay start, HalfDay finish) {
        Placement placement = plan().of(activity).orElseThrow();
        assertThat(placement.start()).as(activity + " starts").isEqualTo(start);
        assertThat(placement.finish()).as(activity + " ends").isEqualTo(finish);
    }

    private void finds(Finding.Kind kind, String sentence) {
        assertThat(plan().findings()).contains(new Finding(kind, "r", sentence));
    }

    @Test
    void workSpansTheWeekendAndSaysWhatComesFirst() {
        branch.activity(branch.work("p", "s", "posts", "array", 7))
                .activity(branch.work("r", "s", "racking", "array", 4).after(Predecessor.of("p")));
        isPlaced("p", morning(1), morning(4));
        isPlaced("r", afternoon(4), morning(8));
        assertThat(why("p")).isEqualTo("It can start at once.");
        assertThat(why("r")).isEqualTo("Follows Sedge Hollow Dairy, posts, done at noon on Thu, Mar 4.");
    }

    @Test
    void theJobWithTheEarlierPromiseIsServedFirstAndTheOtherNamesIt() {
        branch.activity(branch.work("r", "s", "racking", "array", 4))
                .activity(branch.work("m", "h", "modules", "array", 4))
                .promise("s", "r", 19)
                .promise("h", "m", 3);
        isPlaced("m", morning(1), afternoon(2));
        isPlaced("r", morning(3), afternoon(4));
        assertThat(why("r")).isEqualTo("Crew 1 works on Hatch Ridge Broilers, modules until Tue, Mar 2.");
    }

    @Test
    void latenessCountsWorkingHalfDaysAtThePromisedMilestone() {
        branch.activity(branch.work("r", "s", "racking", "array", 12))
                .activity(branch.work("m", "h", "modules", "array", 2))
                .promise("s", "r", 5)
                .promise("h", "m", 13);
        assertThat(plan().promises())
                .extracting(PromiseOutcome::halfDaysLate, PromiseOutcome::halfDaysSpare, PromiseOutcome::finish)
                .containsExactly(tuple(2, 0, Optional.of(afternoon(8))), tuple(0, 6, Optional.of(afternoon(9))));
        assertThat(plan().weightedHalfDaysLate()).isEqualTo(2);
    }

    @Test
    void aWaitCountsItsOwnDaysAndNotTheDayItBegins() {
        branch.closed(5, "Town fair")
                .activity(waiting("l", "s", "locate", 2).notBefore(morning(2)))
                .activity(branch.work("r", "s", "racking", "array", 1).after(Predecessor.of("l")))
                .activity(Activity.of("z", "s", "zoning", new Work.Waiting(12, WorkingCalendar.EVERY_DAY, false)));
        isPlaced("l", morning(2), afternoon(4));
        isPlaced("r", morning(8), morning(8));
        isPlaced("z", morning(1), afternoon(13));
        assertThat(why("l")).isEqualTo("It may not start before Tue, Mar 2.");
    }

    @Test
    void aLocateIsCalledJustInTimeForTheDayThatNeedsIt() {
        branch.activity(Activity.of("l", "s", "locate", new Work.Waiting(2, WorkingCalendar.MONDAY_TO_FRIDAY, true)))
                .activity(branch.work("r", "s", "racking", "array", 2)
                        .after(Predecessor.of("l"))
                        .notBefore(morning(19)));
        isPlaced("l", afternoon(16), afternoon(18));
        assertThat(why("l")).isEqualTo("It is begun in time for Sedge Hollow Dairy, racking on Fri, Mar 19.");
    }

    @Test
    void workIsInterruptedByTheCrewsAbsenceAndByNothingElse() {
        branch = new SmallBranch()
                .project("s", "Sedge Hollow Dairy")
                .crew("c1", "Crew 1", Set.of("array"), new Absence(morning(2), afternoon(3), "training"));
        branch.activity(branch.work("r", "s", "racking", "array", 4))
                .activity(branch.work("m", "s", "modules", "array", 1).notBefore(morning(3)));
        isPlaced("r", morning(1), afternoon(4));
        isPlaced("m", morning(5), morning(5));
    }

    @Test
    void aCrewThatIsAwaySaysSo() {
        branch = new SmallBranch()
                .project("s", "Sedge Hollow Dairy")
                .crew("c1", "Crew 1", Set.of("array"), new Absence(morning(1), afternoon(3), "training"));
        branch.activity(branch.work("r", "s", "racking", "array", 4));
        isPlaced("r", morning(4), afternoon(5));
        assertThat(why("r")).isEqualTo("Crew 1 is away until Wed, Mar 3 (training).");
    }

    @Test
    void sharedEquipmentIsAtOnePlaceUntilItComesFree() {
        branch.crew("c2", "Crew 2", Set.of("array")).equipment("post driver", 1);
        branch.activity(branch.work("r", "s", "posts", "array", 3).with(new EquipmentNeed("post driver", 1)))
                .activity(branch.work("m", "h", "posts", "array", 3).with(new EquipmentNeed("post driver", 1)));
        isPlaced("r", morning(1), morning(2));
        isPlaced("m", afternoon(2), afternoon(3));
        assertThat(why("m")).isEqualTo("The post driver is at Sedge Hollow Dairy, posts until noon on Tue, Mar 2.");
    }

    @Test
    void equipmentThatIsLentOutSaysSo() {
        branch.equipment(
                "post driver",
                1,
                new Equipment.Away(1, new Absence(morning(1), afternoon(4), "lent to another branch")));
        branch.activity(branch.work("r", "s", "posts", "array", 3).with(new EquipmentNeed("post driver", 1)));
        isPlaced("r", morning(5), morning(8));
        assertThat(why("r")).isEqualTo("The post driver is away until Thu, Mar 4 (lent to another branch).");
    }

    @Test
    void aSaturdayNeedsNoReason() {
        branch.activity(branch.work("r", "s", "racking", "array", 1).notBefore(morning(6)));
        isPlaced("r", morning(8), morning(8));
        assertThat(why("r")).isEqualTo("Nobody works on Sat, Mar 6.");
    }

    @Test
    void aDayOffOnWhichItMightHaveBegunIsNamed() {
        branch.closed(8, "Town fair")
                .activity(branch.work("r", "s", "racking", "array", 1).notBefore(morning(8)));
        isPlaced("r", morning(9), morning(9));
        assertThat(why("r")).isEqualTo("Nobody works on Mon, Mar 8 (Town fair).");
    }

    @Test
    void theFasterOfTwoFreeCrewsDoesIt() {
        branch.crew("c2", "Crew 2", Set.of("array"))
                .activity(Activity.of("r", "s", "racking", new Work.ByCrew(Set.of("array"), Map.of("c1", 6, "c2", 4))));
        assertThat(plan().of("r").orElseThrow().crewId()).hasValue("c2");
    }

    @Test
    void oneCrewDoesAllOfAGroupEvenWhereAnotherWouldBeFreeSooner() {
        branch.crew("c2", "Crew 2", Set.of("array"));
        branch.activity(branch.work("r", "s", "racking", "array", 2).inGroup("array"))
                .activity(branch.work("b", "h", "posts", "array", 9).after(Predecessor.of("r")))
                .activity(branch.work("m", "s", "modules", "array", 2)
                        .inGroup("array")
                        .after(Predecessor.of("r"))
                        .notBefore(morning(3)))
                .promise("h", "b", 2);
        assertThat(plan().of("m").orElseThrow().crewId())
                .isEqualTo(plan().of("r").orElseThrow().crewId());
    }

    @Test
    void aWetMonthMakesWorkOutdoorsLonger() {
        branch.weather(new WeatherAllowance(Map.of(Month.MARCH, 0.25)))
                .activity(branch.work("r", "s", "racking", "array", 6).outdoors())
                .activity(branch.work("i", "s", "indoors", "array", 6).after(Predecessor.of("r")));
        isPlaced("r", morning(1), afternoon(4));
        isPlaced("i", morning(5), afternoon(9));
    }

    @Test
    void whatHasBegunGoesOnFromTodayAndWhatIsDoneStays() {
        branch.today(afternoon(3))
                .activity(branch.work("p", "s", "posts", "array", 4).fixed(new Fix.Done(morning(1), afternoon(1))))
                .activity(branch.work("r", "s", "racking", "array", 8)
                        .after(Predecessor.of("p"))
                        .fixed(new Fix.Begun(morning(2), Optional.of("c1"), 3)));
        isPlaced("p", morning(1), afternoon(1));
        isPlaced("r", afternoon(3), afternoon(4));
        assertThat(why("r")).isEqualTo("It began on Tue, Mar 2.");
        assertThat(why("p")).isEqualTo("It was finished on Mon, Mar 1.");
    }

    @Test
    void anOverdueAnswerIsCountedForToday() {
        branch.today(morning(10))
                .activity(waiting("l", "s", "permit", 3).fixed(new Fix.Begun(morning(1), Optional.empty(), 1)))
                .activity(branch.work("r", "s", "racking", "array", 1).after(Predecessor.of("l")));
        isPlaced("l", morning(1), morning(10));
        isPlaced("r", afternoon(10), afternoon(10));
    }

    @Test
    void aPinnedStartIsKeptAndFreeWorkGoesAround() {
        branch.activity(branch.work("r", "s", "cutover", "array", 2).fixed(Fix.Pinned.at(morning(3))))
                .activity(branch.work("m", "h", "modules", "array", 5));
        isPlaced("r", morning(3), afternoon(3));
        isPlaced("m", morning(4), morning(8));
        assertThat(why("r")).isEqualTo("The start is fixed on Wed, Mar 3, morning.");
    }

    @Test
    void twoPinsOnOneCrewAreBothKeptAndTheClashIsSaid() {
        branch.activity(branch.work("m", "h", "modules", "array", 2).fixed(Fix.Pinned.at(morning(3))))
                .activity(branch.work("r", "s", "racking", "array", 2).fixed(Fix.Pinned.at(morning(3))));
        isPlaced("m", morning(3), afternoon(3));
        isPlaced("r", morning(3), afternoon(3));
        finds(
                Finding.Kind.BOOKED_TWICE,
                "Crew 1 already works on Hatch Ridge Broilers, modules on Wed, Mar 3. "
                        + "Sedge Hollow Dairy, racking is fixed there too: choose another crew or day.");
    }

    @Test
    void aPinBeforeItsPredecessorIsSaid() {
        branch.activity(branch.work("p", "s", "posts", "array", 8))
                .activity(branch.work("r", "s", "racking", "array", 2)
                        .after(Predecessor.of("p"))
                        .fixed(Fix.Pinned.at(morning(2))));
        finds(
                Finding.Kind.PIN_BEFORE_PREDECESSOR,
                "Sedge Hollow Dairy, racking is fixed on Tue, Mar 2, but Sedge Hollow Dairy, posts, which comes first, ends on Mon, Mar 8.");
    }

    @Test
    void aPinOnADayOffMovesAndIsSaid() {
        branch.activity(branch.work("r", "s", "racking", "array", 2).fixed(Fix.Pinned.at(morning(6))));
        isPlaced("r", morning(8), afternoon(8));
        finds(
                Finding.Kind.PIN_ON_DAY_OFF,
                "Sedge Hollow Dairy, racking is fixed on Sat, Mar 6, a day off (Saturday). Choose another day.");
    }

    @Test
    void aSkillNobodyHasLeavesTheWorkWithoutADateAndTheRestIsPlanned() {
        branch.activity(branch.work("r", "s", "bore", "bore", 2))
                .activity(branch.work("n", "s", "conductors", "array", 2).after(Predecessor.of("r")))
                .activity(branch.work("m", "h", "modules", "array", 2))
                .promise("s", "n", 19);
        finds(Finding.Kind.NO_CREW, "Sedge Hollow Dairy, bore: no crew has bore.");
        assertThat(plan().findings())
                .contains(
                        new Finding(
                                Finding.Kind.BLOCKED,
                                "n",
                                "Sedge Hollow Dairy, conductors has no date because Sedge Hollow Dairy, bore, which comes first, has none."));
        isPlaced("m", morning(1), afternoon(1));
        assertThat(plan().of("n")).isEmpty();
        assertThat(plan().promises().get(0).holds()).isFalse();
        assertThat(plan().promises().get(0).bindingActivityId()).hasValue("n");
    }

    @Test
    void aGroupThatNoOneCrewMayDoIsSaid() {
        branch.crew("c2", "Crew 2", Set.of("electric"));
        branch.activity(branch.work("r", "s", "racking", "array", 2).inGroup("g"))
                .activity(branch.work("w", "s", "wiring", "electric", 2).inGroup("g"));
        finds(
                Finding.Kind.NO_CREW,
                "Sedge Hollow Dairy, racking: no one crew may do all of the work that one crew has to do here "
                        + "(racking, wiring). Give one crew all the skills.");
    }

    @Test
    void equipmentTheBranchDoesNotOwnIsSaid() {
        branch.equipment("post driver", 1);
        branch.activity(branch.work("r", "s", "posts", "array", 2).with(new EquipmentNeed("post driver", 2)));
        finds(Finding.Kind.NO_EQUIPMENT, "Sedge Hollow Dairy, posts needs 2 of post driver; the branch has 1.");
    }

    @Test
    void aCircleIsNamedAndWhatFollowsIsBlocked() {
        branch.activity(branch.work("r", "s", "racking", "array", 2).after(Predecessor.of("m")))
                .activity(branch.work("m", "s", "modules", "array", 2).after(Predecessor.of("r")))
                .activity(branch.work("n", "s", "wiring", "array", 2).after(Predecessor.of("m")))
                .activity(branch.work("o", "h", "posts", "array", 2));
        finds(
                Finding.Kind.CIRCLE,
                "Sedge Hollow Dairy, modules → Sedge Hollow Dairy, racking wait for one another in a circle: "
                        + "none can be first. Take one of these links out.");
        assertThat(plan().placements()).containsOnlyKeys("o");
        assertThat(PlanCheck.breaches(branch.problem(), plan())).isEmpty();
    }

    @Test
    void workBeyondTheLastDayIsSaid() {
        branch.activity(branch.work("r", "s", "racking", "array", 2)
                .notBefore(HalfDay.morning(SmallBranch.MONDAY.plusYears(2))));
        finds(
                Finding.Kind.NO_ROOM,
                "Sedge Hollow Dairy, racking does not end before Wed, Mar 1, 2028, where this plan ends.");
    }
}
