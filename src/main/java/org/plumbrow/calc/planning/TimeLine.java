package org.plumbrow.calc.planning;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.Map;
import org.plumbrow.calc.calendar.HalfDay;
import org.plumbrow.calc.calendar.WorkingAxis;
import org.plumbrow.calc.calendar.WorkingCalendar;

/** The working half-days of one plan, numbered ("slots"), and how waits, lags and weather stretch over them. */
final class TimeLine {

    /** Rounding of sums of shares; far below the smallest share a half-day can count for. */
    private static final double ALMOST = 1e-9;

    final WorkingAxis axis;
    final int today;
    private final double[] workedShare;
    private final boolean fairWeather;
    private final Map<WorkingCalendar, WorkingAxis> axes = new HashMap<>();
    /** The same by identity: comparing a calendar looks at all of its holidays. */
    private final Map<WorkingCalendar, WorkingAxis> axisOfSame = new IdentityHashMap<>();

    TimeLine(PlanningProblem problem) {
        axis = new WorkingAxis(problem.calendar(), firstDay(problem), problem.lastDay());
        today = axis.atOrAfter(problem.today());
        axes.put(problem.calendar(), axis);
        fairWeather = problem.weather().lostShare().isEmpty();
        workedShare = new double[fairWeather ? 0 : axis.size()];
        for (int slot = 0; slot < workedShare.length; slot++) {
            workedShare[slot] =
                    problem.weather().workedShare(axis.at(slot).date().getMonth());
        }
    }

    /** Early enough that the longest lag after something finished before it is over by today. */
    private static LocalDate firstDay(PlanningProblem problem) {
        int longestLag = 0;
        for (Activity activity : problem.activities()) {
            for (Predecessor link : activity.predecessors()) {
                longestLag = Math.max(longestLag, link.lagHalfDays());
            }
        }
        return problem.calendar().before(problem.today().date(), (longestLag + 1) / 2);
    }

    int size() {
        return axis.size();
    }

    HalfDay at(int slot) {
        return axis.at(slot);
    }

    /** The first slot in which a successor may start. */
    int readyAfter(HalfDay finish, Predecessor link) {
        HalfDay cured = link.lagCalendarDays() == 0
                ? finish
                : new HalfDay(finish.date().plusDays(link.lagCalendarDays()), finish.half());
        return axis.after(cured) + link.lagHalfDays();
    }

    /** The half-day with which a wait begun then ends. */
    HalfDay answered(HalfDay start, Work.Waiting wait) {
        return wait.days() == 0 ? start : HalfDay.afternoon(axisOf(wait).dayAfter(start.date(), wait.days()));
    }

    /** The last date on which a wait may begin that must have ended with an earlier date than that one. */
    LocalDate lastDayToBegin(Work.Waiting wait, LocalDate neededOn) {
        LocalDate firstCounted = wait.counting().before(neededOn, wait.days());
        return firstCounted.minusDays(1);
    }

    private WorkingAxis axisOf(Work.Waiting wait) {
        return axisOfSame.computeIfAbsent(
                wait.counting(),
                same -> axes.computeIfAbsent(same, calendar -> new WorkingAxis(calendar, axis.first(), axis.last())));
    }

    /**
     * How many of the given slots, from one on, an amount of work takes.
     *
     * @param slots in time order, as a crew is present
     * @return -1 when they do not suffice
     */
    int lengthFrom(int[] slots, int from, int halfDays, boolean outdoor) {
        if (fairWeather || !outdoor) {
            return from + halfDays <= slots.length ? halfDays : -1;
        }
        double done = 0;
        for (int index = from; index < slots.length; index++) {
            done += workedShare[slots[index]];
            if (done >= halfDays - ALMOST) {
                return index - from + 1;
            }
        }
        return -1;
    }
}
