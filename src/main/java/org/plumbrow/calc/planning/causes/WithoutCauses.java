package org.plumbrow.calc.planning.causes;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.plumbrow.calc.calendar.WorkingCalendar;
import org.plumbrow.calc.planning.Activity;
import org.plumbrow.calc.planning.Crew;
import org.plumbrow.calc.planning.Equipment;
import org.plumbrow.calc.planning.Fix;
import org.plumbrow.calc.planning.PlanningProblem;
import org.plumbrow.calc.planning.Work;

/** A branch in which some conditions hold no longer. */
final class WithoutCauses {

    /** More than any number of activities needs at once. */
    private static final int PLENTY = 1_000;

    private final PlanningProblem problem;
    private final Set<Cause> gone;

    private WithoutCauses(PlanningProblem problem, Set<Cause> gone) {
        this.problem = problem;
        this.gone = gone;
    }

    static PlanningProblem of(PlanningProblem problem, Set<Cause> gone) {
        return new WithoutCauses(problem, gone).problem();
    }

    private PlanningProblem problem() {
        return new PlanningProblem(
                calendar(),
                problem.today(),
                problem.lastDay(),
                problem.projects(),
                problem.activities().stream().map(this::activity).toList(),
                problem.crews().stream().map(this::crew).toList(),
                problem.equipment().stream().map(this::equipment).toList(),
                problem.promises(),
                problem.weather());
    }

    private WorkingCalendar calendar() {
        Set<DayOfWeek> weekdays = EnumSet.copyOf(problem.calendar().workingWeekdays());
        Map<LocalDate, String> closed = new TreeMap<>(problem.calendar().closedDays());
        for (Cause cause : gone) {
            if (cause instanceof Cause.DayOff off) {
                closed.remove(off.date());
                weekdays.add(off.date().getDayOfWeek());
            }
        }
        return new WorkingCalendar(weekdays, closed, problem.calendar().alsoWorked());
    }

    private Crew crew(Crew crew) {
        return new Crew(
                crew.id(),
                crew.name(),
                crew.skills(),
                crew.absences().stream()
                        .filter(absence -> !gone.contains(new Cause.CrewAway(crew.id(), absence)))
                        .toList());
    }

    private Equipment equipment(Equipment kind) {
        return new Equipment(
                kind.id(),
                kind.name(),
                gone.contains(new Cause.Pieces(kind.id(), kind.count())) ? PLENTY : kind.count(),
                kind.away().stream()
                        .filter(away -> !gone.contains(new Cause.PiecesAway(kind.id(), away.count(), away.when())))
                        .toList());
    }

    private Activity activity(Activity activity) {
        Optional<String> group = activity.continuityGroup()
                .filter(name -> !gone.contains(new Cause.OneCrew(activity.projectId(), name)));
        return new Activity(
                activity.id(),
                activity.projectId(),
                activity.words(),
                work(activity),
                activity.release(),
                activity.predecessors(),
                activity.equipment(),
                group,
                activity.outdoor(),
                fix(activity));
    }

    private Work work(Activity activity) {
        if (!(activity.work() instanceof Work.ByCrew work) || !gone.contains(new Cause.OnlySomeCrews(activity.id()))) {
            return activity.work();
        }
        int shortest = work.halfDaysByCrew().values().stream()
                .mapToInt(Integer::intValue)
                .min()
                .orElse(1);
        Map<String, Integer> all = new HashMap<>();
        problem.crews().forEach(crew -> all.put(crew.id(), shortest));
        return new Work.ByCrew(Set.of(), all);
    }

    private Fix fix(Activity activity) {
        if (activity.fix() instanceof Fix.Pinned pin) {
            return gone.contains(new Cause.Settled(activity.id(), pin.start()))
                    ? Fix.FREE
                    : new Fix.Pinned(
                            pin.start(),
                            pin.crewId().filter(crew -> !gone.contains(new Cause.SettledCrew(activity.id(), crew))));
        }
        if (activity.fix() instanceof Fix.Expected expected
                && gone.contains(new Cause.AnswerOn(activity.id(), expected.answer()))) {
            return new Fix.Expected(expected.start(), expected.start());
        }
        return activity.fix();
    }
}
