package org.plumbrow.calc.planning.relax;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.UnaryOperator;
import org.plumbrow.calc.calendar.HalfDay;
import org.plumbrow.calc.calendar.WorkingCalendar;
import org.plumbrow.calc.planning.Absence;
import org.plumbrow.calc.planning.Activity;
import org.plumbrow.calc.planning.Crew;
import org.plumbrow.calc.planning.Equipment;
import org.plumbrow.calc.planning.Fix;
import org.plumbrow.calc.planning.PlanningProblem;
import org.plumbrow.calc.planning.Work;

/** A problem with one condition relaxed. */
final class Relaxed {

    private static final String SECOND = "second ";

    private Relaxed() {}

    static PlanningProblem of(PlanningProblem problem, Relaxation relaxation) {
        if (relaxation instanceof Relaxation.CrewLike more) {
            return withSecond(problem, more);
        }
        if (relaxation instanceof Relaxation.CrewStays stays) {
            return withCrews(
                    problem,
                    problem.crews().stream()
                            .map(crew -> crew.id().equals(stays.crewId()) ? present(crew, stays.absence()) : crew)
                            .toList());
        }
        if (relaxation instanceof Relaxation.OneMore more) {
            return withEquipment(problem, more.equipmentId());
        }
        if (relaxation instanceof Relaxation.Saturdays saturdays) {
            return onSaturdays(problem, saturdays.until());
        }
        if (relaxation instanceof Relaxation.AnsweredSooner sooner) {
            return withActivity(problem, sooner.activityId(), wait -> sooner(problem, wait, sooner.days()));
        }
        if (relaxation instanceof Relaxation.NotSettled free) {
            return withActivity(problem, free.activityId(), activity -> activity.fixed(Fix.FREE));
        }
        return problem;
    }

    private static Crew present(Crew crew, Absence absence) {
        return new Crew(
                crew.id(),
                crew.name(),
                crew.skills(),
                crew.absences().stream().filter(other -> !other.equals(absence)).toList());
    }

    /** The second crew may do what the first may, as fast; it is away before and after its days. */
    private static PlanningProblem withSecond(PlanningProblem problem, Relaxation.CrewLike more) {
        Crew first = problem.crews().stream()
                .filter(crew -> crew.id().equals(more.crewId()))
                .findFirst()
                .orElseThrow();
        String id = SECOND + first.id();
        List<Absence> away = new ArrayList<>();
        if (more.from().isAfter(problem.today().date())) {
            away.add(new Absence(problem.today(), HalfDay.afternoon(more.from().minusDays(1)), SECOND));
        }
        LocalDate last = problem.calendar().after(more.from().minusDays(1), more.workingDays());
        away.add(new Absence(HalfDay.morning(last.plusDays(1)), HalfDay.afternoon(problem.lastDay()), SECOND));
        List<Crew> crews = new ArrayList<>(problem.crews());
        crews.add(new Crew(id, SECOND + first.name(), first.skills(), away));
        return copy(
                problem,
                problem.calendar(),
                problem.activities().stream()
                        .map(activity -> alsoBy(activity, first.id(), id))
                        .toList(),
                crews,
                problem.equipment());
    }

    private static Activity alsoBy(Activity activity, String first, String second) {
        if (activity.work() instanceof Work.ByCrew work && work.halfDaysByCrew().containsKey(first)) {
            Map<String, Integer> halfDays = new HashMap<>(work.halfDaysByCrew());
            halfDays.put(second, halfDays.get(first));
            return withWork(activity, new Work.ByCrew(work.skills(), halfDays));
        }
        return activity;
    }

    private static PlanningProblem withEquipment(PlanningProblem problem, String id) {
        return copy(
                problem,
                problem.calendar(),
                problem.activities(),
                problem.crews(),
                problem.equipment().stream()
                        .map(kind -> kind.id().equals(id)
                                ? new Equipment(id, kind.name(), kind.count() + 1, kind.away())
                                : kind)
                        .toList());
    }

    /** Holidays stay days off; a Saturday after the given day too. */
    private static PlanningProblem onSaturdays(PlanningProblem problem, LocalDate until) {
        WorkingCalendar now = problem.calendar();
        Set<DayOfWeek> weekdays = EnumSet.copyOf(now.workingWeekdays());
        weekdays.add(DayOfWeek.SATURDAY);
        Map<LocalDate, String> closed = new TreeMap<>(now.closedDays());
        for (LocalDate day = until.plusDays(1); !day.isAfter(problem.lastDay()); day = day.plusDays(1)) {
            if (day.getDayOfWeek() == DayOfWeek.SATURDAY && !now.alsoWorked().contains(day)) {
                closed.putIfAbsent(day, "Saturday");
            }
        }
        return copy(
                problem,
                new WorkingCalendar(weekdays, closed, now.alsoWorked()),
                problem.activities(),
                problem.crews(),
                problem.equipment());
    }

    private static Activity sooner(PlanningProblem problem, Activity wait, int days) {
        if (wait.fix() instanceof Fix.Expected expected) {
            HalfDay answer = new HalfDay(
                    expected.answer().date().minusDays(days), expected.answer().half());
            return wait.fixed(new Fix.Expected(expected.start(), latest(answer, problem.today(), expected.start())));
        }
        return wait.work() instanceof Work.Waiting waiting
                ? withWork(
                        wait,
                        new Work.Waiting(Math.max(0, waiting.days() - days), waiting.counting(), waiting.justInTime()))
                : wait;
    }

    private static HalfDay latest(HalfDay first, HalfDay second, HalfDay third) {
        HalfDay later = first.isBefore(second) ? second : first;
        return later.isBefore(third) ? third : later;
    }

    private static Activity withWork(Activity activity, Work work) {
        return new Activity(
                activity.id(),
                activity.projectId(),
                activity.words(),
                work,
                activity.release(),
                activity.predecessors(),
                activity.equipment(),
                activity.continuityGroup(),
                activity.outdoor(),
                activity.fix());
    }

    private static PlanningProblem withActivity(PlanningProblem problem, String id, UnaryOperator<Activity> change) {
        return problem.withActivities(activity -> activity.id().equals(id) ? change.apply(activity) : activity);
    }

    private static PlanningProblem withCrews(PlanningProblem problem, List<Crew> crews) {
        return copy(problem, problem.calendar(), problem.activities(), crews, problem.equipment());
    }

    private static PlanningProblem copy(
            PlanningProblem problem,
            WorkingCalendar calendar,
            List<Activity> activities,
            List<Crew> crews,
            List<Equipment> equipment) {
        return new PlanningProblem(
                calendar,
                problem.today(),
                problem.lastDay(),
                problem.projects(),
                activities,
                crews,
                equipment,
                problem.promises(),
                problem.weather());
    }
}
