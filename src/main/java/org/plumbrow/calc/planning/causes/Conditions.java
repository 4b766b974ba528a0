package org.plumbrow.calc.planning.causes;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.plumbrow.calc.planning.Activity;
import org.plumbrow.calc.planning.Fix;
import org.plumbrow.calc.planning.PlanningProblem;
import org.plumbrow.calc.planning.Work;

/** The conditions of a branch. What people can change least easily is tried last, so that it is named only where it must be. */
final class Conditions {

    private final PlanningProblem problem;
    private final LocalDate until;
    private final Set<Cause> found = new LinkedHashSet<>();

    /** @param until days off after that day do not matter */
    Conditions(PlanningProblem problem, LocalDate until) {
        this.problem = problem;
        this.until = until;
    }

    List<Cause> all() {
        problem.activities().forEach(this::ofCrews);
        daysOff();
        problem.equipment().forEach(kind -> {
            found.add(new Cause.Pieces(kind.id(), kind.count()));
            kind.away().forEach(away -> found.add(new Cause.PiecesAway(kind.id(), away.count(), away.when())));
        });
        problem.crews()
                .forEach(crew -> crew.absences().forEach(absence -> found.add(new Cause.CrewAway(crew.id(), absence))));
        problem.activities().forEach(this::settled);
        return new ArrayList<>(found);
    }

    private void ofCrews(Activity activity) {
        activity.continuityGroup().ifPresent(group -> found.add(new Cause.OneCrew(activity.projectId(), group)));
        if (activity.work() instanceof Work.ByCrew) {
            found.add(new Cause.OnlySomeCrews(activity.id()));
        }
    }

    private void daysOff() {
        LocalDate today = problem.today().date();
        problem.calendar().closedDays().forEach((date, reason) -> {
            if (!date.isBefore(today) && !date.isAfter(until)) {
                found.add(new Cause.DayOff(date, reason));
            }
        });
        for (Activity activity : problem.activities()) {
            if (activity.fix() instanceof Fix.Pinned pin) {
                LocalDate day = pin.start().date();
                problem.calendar().whyClosed(day).ifPresent(reason -> found.add(new Cause.DayOff(day, reason)));
            }
        }
    }

    private void settled(Activity activity) {
        if (activity.fix() instanceof Fix.Pinned pin) {
            pin.crewId().ifPresent(crew -> found.add(new Cause.SettledCrew(activity.id(), crew)));
            found.add(new Cause.Settled(activity.id(), pin.start()));
        } else if (activity.fix() instanceof Fix.Expected expected) {
            found.add(new Cause.AnswerOn(activity.id(), expected.answer()));
        }
    }
}
