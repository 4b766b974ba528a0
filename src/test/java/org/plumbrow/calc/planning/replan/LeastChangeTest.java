package org.plumbrow.calc.planning.replan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.plumbrow.calc.planning.SmallBranch.afternoon;
import static org.plumbrow.calc.planning.SmallBranch.morning;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.plumbrow.calc.calendar.HalfDay;
import org.plumbrow.calc.planning.Absence;
import org.plumbrow.calc.planning.Activity;
import org.plumbrow.calc.planning.Crew;
import org.plumbrow.calc.planning.Fix;
import org.plumbrow.calc.planning.LargeBranch;
import org.plumbrow.calc.planning.Placement;
import org.plumbrow.calc.planning.Plan;
import org.plumbrow.calc.planning.PlanCheck;
import org.plumbrow.calc.planning.PlanningProblem;
import org.plumbrow.calc.planning.Published;
import org.plumbrow.calc.planning.SerialPlanner;
import org.plumbrow.calc.planning.SmallBranch;

class LeastChangeTest {

    private static final HalfDay FAR = HalfDay.afternoon(LocalDate.of(2027, 5, 1));

    /** Three days of work for one crew: A on Monday, B on Tuesday, C on Wednesday. */
    private static SmallBranch threeDays(int promiseOfA, Absence... away) {
        SmallBranch branch = new SmallBranch().crew("crew", "Crew 1", Set.of("roof"), away);
        for (String one : List.of("A", "B", "C")) {
            branch.project(one, "Job " + one).activity(branch.work(one, one, "roof array", "roof", 2));
        }
        return branch.promise("A", "A", promiseOfA).promise("B", "B", 12).promise("C", "C", 12);
    }

    private static Published known(PlanningProblem problem) {
        return new Published(SerialPlanner.plan(problem), FAR);
    }

    private static HalfDay start(Plan plan, String activity) {
        return plan.of(activity).map(Placement::start).orElseThrow();
    }

    @Test
    void whatIsInTheWayOfNobodyStandsWhenACrewIsAwayForADay() {
        Published known = known(threeDays(9).problem());
        Plan plan = LeastChange.plan(
                threeDays(9, new Absence(morning(1), afternoon(1), "ill")).problem(), known);
        assertThat(start(plan, "A")).as("goes behind the others").isEqualTo(morning(4));
        assertThat(start(plan, "B")).isEqualTo(morning(2));
        assertThat(start(plan, "C")).isEqualTo(morning(3));
    }

    @Test
    void aPromiseIsKeptBeforeADateStandsAndTheRestStandsAllTheSame() {
        Published known = known(threeDays(2).problem());
        Plan plan = LeastChange.plan(
                threeDays(2, new Absence(morning(1), afternoon(1), "ill")).problem(), known);
        assertThat(plan.weightedHalfDaysLate()).isZero();
        assertThat(start(plan, "A")).isEqualTo(morning(2));
        assertThat(start(plan, "B")).isEqualTo(morning(4));
        assertThat(start(plan, "C")).isEqualTo(morning(3));
    }

    @Test
    void aSettledStartPushesOnlyWhatIsBookedThere() {
        PlanningProblem problem = threeDays(9).problem();
        List<Activity> settled = problem.activities().stream()
                .map(activity -> activity.id().equals("A") ? activity.fixed(Fix.Pinned.at(morning(3))) : activity)
                .toList();
        Plan plan = LeastChange.plan(with(problem, settled, problem.crews()), known(problem));
        assertThat(start(plan, "B")).isEqualTo(morning(2));
        assertThat(start(plan, "C"))
                .as("the first free day, not before its known one")
                .isEqualTo(morning(4));
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3})
    void whereNothingChangesNothingMoves(long seed) {
        PlanningProblem problem = LargeBranch.of(40, seed);
        Published known = known(problem);
        assertThat(places(LeastChange.plan(problem, known))).isEqualTo(places(known.plan()));
    }

    /** On a branch with more work than its crews can do; by single works served sooner or later alone it was 47 later. */
    @Test
    void worksChangePlacesWhereOneIsMovedByADaySoThatLittleGetsLater() {
        PlanningProblem problem = LargeBranch.of(60, 1);
        Published known = known(problem);
        Placement foundation = known.plan().of("project-49/foundation").orElseThrow();
        HalfDay next =
                HalfDay.morning(problem.calendar().after(foundation.start().date(), 1));
        PlanningProblem asked = problem.withActivities(activity -> activity.id().equals(foundation.activityId())
                ? activity.fixed(new Fix.Pinned(next, foundation.crewId()))
                : activity);
        Plan plan = LeastChange.plan(asked, known);
        assertThat(PlanCheck.breaches(asked, plan)).isEmpty();
        assertThat(plan.weightedHalfDaysLate() - known.plan().weightedHalfDaysLate())
                .isLessThanOrEqualTo(10);
    }

    /** 19 dates move; without works that change places 52, without a look at early ones first 45, without letting go 38. */
    @Test
    void oneProjectMoreMakesNothingLateAndMovesFewDates() {
        PlanningProblem with = LargeBranch.of(41, 8);
        Published known = known(without(with, with.projects().get(40).id()));
        Plan plan = LeastChange.plan(with, known);
        assertThat(PlanCheck.breaches(with, plan)).isEmpty();
        assertThat(plan.weightedHalfDaysLate()).isEqualTo(known.plan().weightedHalfDaysLate());
        assertThat(plan.placements().values())
                .filteredOn(now -> known.plan()
                        .of(now.activityId())
                        .filter(was -> !was.start().equals(now.start())
                                || !was.crewId().equals(now.crewId()))
                        .isPresent())
                .hasSizeLessThanOrEqualTo(30);
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3})
    void aLostWeekBreaksNoRuleAndIsNeverWorseThanPushingEverything(long seed) {
        PlanningProblem problem = LargeBranch.of(40, seed);
        Published known = known(problem);
        PlanningProblem lost = LostWeek.of(problem, 0, 2);
        Plan pushed = LeastChange.rightShift(lost, known);
        Plan plan = LeastChange.plan(lost, known);
        assertThat(PlanCheck.breaches(lost, pushed)).isEmpty();
        assertThat(PlanCheck.breaches(lost, plan)).isEmpty();
        assertThat(plan.weightedHalfDaysLate()).isLessThanOrEqualTo(pushed.weightedHalfDaysLate());
        assertThat(places(LeastChange.plan(lost, known))).as("the same again").isEqualTo(places(plan));
    }

    /** Planned while a crew was away; it is there after all, and a plan made anew moves much. */
    @ParameterizedTest
    @ValueSource(longs = {2, 3, 5})
    void aSearchedPlanTakesThePlaceOfTheKnownOneOnlyWhereItIsLessLate(long seed) {
        PlanningProblem problem = LargeBranch.of(40, seed);
        Published known = known(LostWeek.of(problem, 0, 2));
        Plan anew = SerialPlanner.plan(problem);
        boolean better = anew.weightedHalfDaysLate() < known.plan().weightedHalfDaysLate();
        assertThat(places(anew)).isNotEqualTo(places(known.plan()));
        assertThat(places(Draft.orSearched(known, LeastChange.plan(problem, known), anew)))
                .isEqualTo(places(better ? anew : known.plan()));
    }

    private static List<String> places(Plan plan) {
        List<String> places = new ArrayList<>();
        plan.placements()
                .values()
                .forEach(place -> places.add("%s %s %s %s"
                        .formatted(
                                place.activityId(),
                                place.start().words(),
                                place.finish().words(),
                                place.crewId())));
        return places;
    }

    private static PlanningProblem without(PlanningProblem whole, String projectId) {
        return new PlanningProblem(
                whole.calendar(),
                whole.today(),
                whole.lastDay(),
                whole.projects().stream()
                        .filter(project -> !project.id().equals(projectId))
                        .toList(),
                whole.activities().stream()
                        .filter(activity -> !activity.projectId().equals(projectId))
                        .toList(),
                whole.crews(),
                whole.equipment(),
                whole.promises().stream()
                        .filter(promise -> !promise.projectId().equals(projectId))
                        .toList(),
                whole.weather());
    }

    private static PlanningProblem with(PlanningProblem problem, List<Activity> activities, List<Crew> crews) {
        return new PlanningProblem(
                problem.calendar(),
                problem.today(),
                problem.lastDay(),
                problem.projects(),
                activities,
                crews,
                problem.equipment(),
                problem.promises(),
                problem.weather());
    }
}
