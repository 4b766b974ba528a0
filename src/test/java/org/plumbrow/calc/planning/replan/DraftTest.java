package org.plumbrow.calc.planning.replan;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.plumbrow.calc.calendar.HalfDay;
import org.plumbrow.calc.planning.LargeBranch;
import org.plumbrow.calc.planning.Plan;
import org.plumbrow.calc.planning.PlanCheck;
import org.plumbrow.calc.planning.PlanningProblem;
import org.plumbrow.calc.planning.Published;
import org.plumbrow.calc.planning.SerialPlanner;
import org.plumbrow.calc.planning.SmallBranch;
import org.plumbrow.calc.planning.engine.Effort;
import org.plumbrow.calc.planning.engine.Planned;
import org.plumbrow.calc.planning.engine.Planner;
import org.plumbrow.calc.planning.engine.Watch;
import org.plumbrow.calc.planning.search.PlanSearch;

class DraftTest {

    private static final int PROJECTS = 60;

    private static final int OVERLOADED = 150;

    private static Effort effort(int threads) {
        return new Effort(1, 2_000, 1, 30, 0, threads);
    }

    private static Published known(PlanningProblem problem) {
        return known(problem, PlanSearch.plan(problem, Optional.empty(), PlanSearch.Effort.USUAL, () -> false));
    }

    private static Published known(PlanningProblem problem, Plan plan) {
        return new Published(plan, HalfDay.afternoon(problem.today().date().plusWeeks(8)));
    }

    private static Planned draft(PlanningProblem problem, Published known, int threads) {
        return Draft.of(problem, Optional.of(known), effort(threads), Watch.NOBODY);
    }

    @Test
    void onAnOverloadedBranchALostWeekLeavesLessLateThanTheLeastChangeAndMostOfTheNextWeeksStand() {
        PlanningProblem problem = LargeBranch.of(100, 1);
        Effort effort = new Effort(1, 4_000, 1, 100, 0, 2);
        Published known = known(
                problem,
                Planner.plan(problem, Optional.empty(), effort, Watch.NOBODY).plan());
        PlanningProblem lost = LostWeek.of(problem, 0, 2);
        Planned draft = Draft.of(lost, Optional.of(known), effort, Watch.NOBODY);
        assertThat(PlanCheck.breaches(lost, draft.plan())).isEmpty();
        assertThat(draft.plan().weightedHalfDaysLate())
                .isLessThan(LeastChange.plan(lost, known).weightedHalfDaysLate())
                .isGreaterThanOrEqualTo(draft.lowerBound());
        long countedOn = draft.plan().placements().keySet().stream()
                .filter(id -> known.known(id).isPresent())
                .count();
        assertThat(movedOfCountedOn(known, draft.plan())).isLessThanOrEqualTo(countedOn / 5);
    }

    @Test
    void whereThePublishedPlanIsPoorOneMadeAnewTakesItsPlace() {
        PlanningProblem problem = LargeBranch.of(OVERLOADED, 2);
        Published poor = known(problem, SerialPlanner.plan(problem));
        Plan anew =
                Planner.plan(problem, Optional.empty(), effort(2), Watch.NOBODY).plan();
        assertThat(poor.plan().weightedHalfDaysLate()).isGreaterThan(2 * anew.weightedHalfDaysLate());
        assertThat(draft(problem, poor, 2).plan().weightedHalfDaysLate())
                .isLessThanOrEqualTo((long) (1.1 * anew.weightedHalfDaysLate()));
    }

    @Test
    void theDraftIsTheSameOnAnyNumberOfThreads() {
        PlanningProblem problem = LargeBranch.of(PROJECTS, 2);
        Published known = known(problem);
        PlanningProblem lost = LostWeek.of(problem, 0, 2);
        Planned alone = draft(lost, known, 1);
        assertThat(draft(lost, known, 2)).isEqualTo(alone);
        assertThat(draft(lost, known, 4)).isEqualTo(alone);
    }

    @Test
    void whereNothingIsLateAndNothingChangesThePublishedPlanStands() {
        PlanningProblem problem = LargeBranch.of(20, 1);
        Published known = known(problem);
        assertThat(known.plan().weightedHalfDaysLate()).isZero();
        assertThat(draft(problem, known, 2).plan().placements().values())
                .allSatisfy(place -> assertThat(known.plan().of(place.activityId()))
                        .hasValueSatisfying(was -> assertThat(place.start()).isEqualTo(was.start())));
    }

    @Test
    void whereAllOfALateBranchLiesInTheNextWeeksItStands() {
        SmallBranch branch = SmallBranch.ofRoofers();
        PlanningProblem problem = branch.activity(branch.work("mount", "farm", "mount", "ROOF", 4))
                .activity(branch.work("fit", "barn", "fit", "ROOF", 4))
                .promise("farm", "mount", 1)
                .promise("barn", "fit", 1)
                .problem();
        Published known = known(problem, SerialPlanner.plan(problem));
        Planned draft = draft(problem, known, 2);
        assertThat(draft.plan().placements()).isEqualTo(known.plan().placements());
        assertThat(draft.lowerBound())
                .isPositive()
                .isLessThanOrEqualTo(draft.plan().weightedHalfDaysLate());
    }

    @Test
    void stoppedAtOnceItIsTheLeastChange() {
        PlanningProblem problem = LargeBranch.of(PROJECTS, 2);
        Published known = known(problem);
        PlanningProblem lost = LostWeek.of(problem, 0, 2);
        Planned draft = Draft.of(lost, Optional.of(known), effort(2), new Watch() {
            @Override
            public boolean isStopped() {
                return true;
            }

            @Override
            public void progress(String stage, int done, int of, long lateness) {}
        });
        assertThat(draft.plan().weightedHalfDaysLate())
                .isLessThanOrEqualTo(LeastChange.plan(lost, known).weightedHalfDaysLate());
    }

    private static long movedOfCountedOn(Published known, Plan plan) {
        return plan.placements().values().stream()
                .filter(now -> known.known(now.activityId())
                        .filter(was -> !was.start().equals(now.start())
                                || !was.crewId().equals(now.crewId()))
                        .isPresent())
                .count();
    }
}
