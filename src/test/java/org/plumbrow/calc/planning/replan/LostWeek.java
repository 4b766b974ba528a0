package org.plumbrow.calc.planning.replan;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.plumbrow.calc.calendar.HalfDay;
import org.plumbrow.calc.planning.Absence;
import org.plumbrow.calc.planning.Crew;
import org.plumbrow.calc.planning.PlanningProblem;

/** A branch that loses a crew for a week that begins so many weeks after its first day, which is a Monday. */
final class LostWeek {

    private LostWeek() {}

    static PlanningProblem of(PlanningProblem problem, int crew, int weeksAhead) {
        LocalDate monday = problem.today().date().plusWeeks(weeksAhead);
        List<Crew> crews = new ArrayList<>(problem.crews());
        Crew lost = crews.get(crew);
        List<Absence> away = new ArrayList<>(lost.absences());
        away.add(new Absence(HalfDay.morning(monday), HalfDay.afternoon(monday.plusDays(4)), "lost for a week"));
        crews.set(crew, new Crew(lost.id(), lost.name(), lost.skills(), away));
        return new PlanningProblem(
                problem.calendar(),
                problem.today(),
                problem.lastDay(),
                problem.projects(),
                problem.activities(),
                crews,
                problem.equipment(),
                problem.promises(),
                problem.weather());
    }
}
