package org.plumbrow.calc.planning;

import java.time.LocalDate;
import org.plumbrow.calc.calendar.HalfDay;
import org.plumbrow.calc.calendar.WorkingCalendar;

/** Counting half-days one by one on the calendar: slow, plain, and for that reason what a check should do. */
final class HalfDayCount {

    private final PlanningProblem problem;

    HalfDayCount(PlanningProblem problem) {
        this.problem = problem;
    }

    boolean isWorking(HalfDay halfDay) {
        return problem.calendar().isWorking(halfDay.date());
    }

    static boolean isAway(Crew crew, HalfDay halfDay) {
        return crew.absences().stream().anyMatch(absence -> absence.holds(halfDay));
    }

    /** The first working half-day on which something may start that follows a finish with a lag. */
    HalfDay readyAfter(HalfDay finish, Predecessor link) {
        HalfDay at = new HalfDay(finish.date().plusDays(link.lagCalendarDays()), finish.half()).next();
        int left = link.lagHalfDays();
        while (!isWorking(at) || left > 0) {
            left -= isWorking(at) ? 1 : 0;
            at = at.next();
        }
        return at;
    }

    HalfDay answered(HalfDay start, Work.Waiting wait) {
        if (wait.days() == 0) {
            return start;
        }
        WorkingCalendar counting = wait.counting();
        LocalDate day = start.date();
        for (int left = wait.days(); left > 0; left -= counting.isWorking(day) ? 1 : 0) {
            day = day.plusDays(1);
        }
        return HalfDay.afternoon(day);
    }

    /** The last half-day of a work that begins then, by a crew or, without one, in the branch's days. */
    HalfDay finished(HalfDay start, int halfDays, Activity activity, java.util.Optional<Crew> crew) {
        HalfDay at = start;
        double done = 0;
        while (true) {
            HalfDay now = at;
            if (isWorking(now) && crew.filter(who -> isAway(who, now)).isEmpty()) {
                boolean inTheWeather = activity.outdoor() && crew.isPresent();
                done += inTheWeather ? problem.weather().workedShare(now.date().getMonth()) : 1;
            }
            if (done >= halfDays - 1e-9 || at.date().isAfter(problem.lastDay())) {
                return at;
            }
            at = at.next();
        }
    }
}
