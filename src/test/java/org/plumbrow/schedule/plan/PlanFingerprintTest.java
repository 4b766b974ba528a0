package org.plumbrow.schedule.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.Month;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;
import org.plumbrow.calc.calendar.ClosedDay;
import org.plumbrow.calc.calendar.WorkingCalendar;
import org.plumbrow.calc.planning.Absence;
import org.plumbrow.calc.planning.Activity;
import org.plumbrow.calc.planning.Fix;
import org.plumbrow.calc.planning.PlanningProblem;
import org.plumbrow.calc.planning.SmallBranch;
import org.plumbrow.calc.planning.WeatherAllowance;
import org.plumbrow.calc.planning.Work;

class PlanFingerprintTest {

    private static final LocalDate FRIDAY = LocalDate.of(2027, 3, 5);
    private static final Activity RACKING =
            Activity.of("b", "p", "racking", new Work.ByCrew(Set.of("racking", "posts"), Map.of("1", 3, "2", 4)));

    private static PlanningProblem with(UnaryOperator<SmallBranch> change) {
        return change.apply(waits(new SmallBranch(), WorkingCalendar.MONDAY_TO_FRIDAY)
                        .activity(RACKING)
                        .promise("p", "b", 12))
                .problem();
    }

    private static SmallBranch waits(SmallBranch branch, WorkingCalendar counting) {
        return branch.project("p", "Sedge Hollow Dairy")
                .crew("1", "Crew 1", Set.of("posts", "racking"))
                .crew("2", "Crew 2", Set.of("racking", "posts"))
                .activity(Activity.of("a", "p", "permit", new Work.Waiting(10, counting, false)));
    }

    private static PlanningProblem counting(WorkingCalendar counting) {
        return waits(new SmallBranch(), counting).problem();
    }

    private static String of(PlanningProblem problem) {
        return PlanFingerprint.of(problem);
    }

    @Test
    void theSameBranchHasTheSameInWhateverOrderItsSetsWereWritten() {
        Activity turned =
                Activity.of("b", "p", "racking", new Work.ByCrew(Set.of("posts", "racking"), Map.of("2", 4, "1", 3)));
        PlanningProblem again = waits(
                        new SmallBranch(),
                        new WorkingCalendar(
                                Set.of(
                                        DayOfWeek.FRIDAY,
                                        DayOfWeek.THURSDAY,
                                        DayOfWeek.WEDNESDAY,
                                        DayOfWeek.TUESDAY,
                                        DayOfWeek.MONDAY),
                                Map.of()))
                .activity(turned)
                .promise("p", "b", 12)
                .problem();
        assertThat(of(again)).isEqualTo(of(with(same -> same)));
    }

    @Test
    void whateverElseAPlanIsMadeFromChangesIt() {
        List<UnaryOperator<SmallBranch>> changes = List.of(
                one -> one,
                one -> one.promise("p", "a", 12),
                one -> one.crew("3", "Crew 3", Set.of()),
                one -> one.crew(
                        "3",
                        "Crew 3",
                        Set.of(),
                        new Absence(SmallBranch.morning(3), SmallBranch.afternoon(3), "course")),
                one -> one.equipment("rig", 1),
                one -> one.equipment("rig", 2),
                one -> one.closed(5, "county fair"),
                one -> one.closed(8, "county fair"),
                one -> one.today(SmallBranch.afternoon(1)),
                one -> one.weather(new WeatherAllowance(Map.of(Month.MARCH, 0.1))),
                one -> one.activity(SmallBranch.waiting("c", "p", "notice", 3)),
                one -> one.activity(SmallBranch.waiting("c", "p", "notice", 4)),
                one -> one.activity(SmallBranch.waiting("c", "p", "notice", 4).notBefore(SmallBranch.morning(2))),
                one -> one.activity(new Activity(
                        "c",
                        "p",
                        "notice",
                        new Work.AtDesk(1),
                        Optional.empty(),
                        List.of(),
                        List.of(),
                        Optional.empty(),
                        false,
                        Fix.Pinned.at(SmallBranch.morning(2)))));
        assertThat(changes.stream().map(change -> of(with(change)))).doesNotHaveDuplicates();
    }

    /** Each wait has a calendar of its own, and only that differs. */
    @Test
    void aHolidayOfWhoeverIsWaitedForChangesIt() {
        WorkingCalendar office = WorkingCalendar.MONDAY_TO_FRIDAY.closedAlsoOn(List.of());
        assertThat(List.of(
                        of(counting(office)),
                        of(counting(WorkingCalendar.EVERY_DAY)),
                        of(counting(office.closedAlsoOn(List.of(new ClosedDay(FRIDAY, "founders' day"))))),
                        of(counting(office.workedAlsoOn(List.of(FRIDAY.plusDays(1)))))))
                .doesNotHaveDuplicates();
    }
}
