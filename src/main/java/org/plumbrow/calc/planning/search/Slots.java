package org.plumbrow.calc.planning.search;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;
import org.plumbrow.calc.calendar.HalfDay;
import org.plumbrow.calc.calendar.WorkingAxis;
import org.plumbrow.calc.calendar.WorkingCalendar;
import org.plumbrow.calc.planning.PlanningProblem;
import org.plumbrow.calc.planning.Predecessor;
import org.plumbrow.calc.planning.Work;

/** The working half-days of a plan by number, and tables of what a wait or a lag does from each of them. */
public final class Slots {

    /** Shares of a half-day are counted in whole parts, so that their sum is the same wherever it begins. */
    private static final long WHOLE = 1L << 40;

    /** A billionth, as the planner rounds. */
    private static final long ALMOST = WHOLE / 1_000_000_000;

    public final WorkingAxis axis;
    public final int today;
    public final int size;
    /** Share of an outdoor half-day that weather leaves, by slot; all 1 in fair weather. */
    final long[] workedShare;

    private final long[] workedBefore;

    final boolean fairWeather;
    private final long[] days;
    private final Map<WorkingCalendar, WorkingAxis> axes = new HashMap<>();
    private final Map<Object, Table> tables = new HashMap<>();

    /** From each slot on: where it leads. */
    private record WaitKey(int days, WorkingCalendar counting) {}

    /**
     * What an activity of one kind ends with, by the slot it is asked from.
     *
     * @param finish the last working slot not after its end
     * @param day the date it ends on, as epoch day
     */
    record Table(int[] finish, long[] day, HalfDay[] end) {}

    Slots(PlanningProblem problem) {
        axis = new WorkingAxis(problem.calendar(), firstDay(problem), problem.lastDay());
        size = axis.size();
        today = axis.atOrAfter(problem.today());
        axes.put(problem.calendar(), axis);
        fairWeather = problem.weather().lostShare().isEmpty();
        workedShare = new long[size];
        workedBefore = new long[size + 1];
        days = new long[size];
        for (int slot = 0; slot < size; slot++) {
            LocalDate date = axis.at(slot).date();
            days[slot] = date.toEpochDay();
            workedShare[slot] =
                    fairWeather ? WHOLE : Math.round(WHOLE * problem.weather().workedShare(date.getMonth()));
            workedBefore[slot + 1] = workedBefore[slot] + workedShare[slot];
        }
    }

    private static LocalDate firstDay(PlanningProblem problem) {
        int longestLag = problem.activities().stream()
                .flatMap(activity -> activity.predecessors().stream())
                .mapToInt(Predecessor::lagHalfDays)
                .max()
                .orElse(0);
        return problem.calendar().before(problem.today().date(), (longestLag + 1) / 2);
    }

    /** What so many half-days of work need, in the parts that shares are counted in; rounding never asks for one more. */
    static long enoughFor(int halfDays) {
        return halfDays * WHOLE - ALMOST;
    }

    /** The last slot of a work by somebody who is always there; the number of slots, or more, when they do not suffice. */
    int end(int slot, int halfDays, boolean inTheWeather) {
        int end = slot + halfDays - 1;
        if (inTheWeather && end < size) {
            long goal = workedBefore[slot] + enoughFor(halfDays);
            while (end < size && workedBefore[end + 1] < goal) {
                end++;
            }
        }
        return end;
    }

    public long day(int slot) {
        return days[slot];
    }

    /** The last slot of a day, or of the last working day before it. */
    public int due(LocalDate date) {
        return axis.atOrBefore(HalfDay.afternoon(date));
    }

    int readyAfter(HalfDay finish, Predecessor link) {
        HalfDay cured = link.lagCalendarDays() == 0
                ? finish
                : new HalfDay(finish.date().plusDays(link.lagCalendarDays()), finish.half());
        return axis.after(cured) + link.lagHalfDays();
    }

    Table wait(Work.Waiting wait) {
        return tables.computeIfAbsent(new WaitKey(wait.days(), wait.counting()), key -> waitTable(wait));
    }

    private Table waitTable(Work.Waiting wait) {
        WorkingAxis counting =
                axes.computeIfAbsent(wait.counting(), calendar -> new WorkingAxis(calendar, axis.first(), axis.last()));
        HalfDay[] end = new HalfDay[size];
        for (int slot = 0; slot < size; slot++) {
            HalfDay start = axis.at(slot);
            end[slot] = wait.days() == 0 ? start : HalfDay.afternoon(counting.dayAfter(start.date(), wait.days()));
        }
        int[] finish = Arrays.stream(end).mapToInt(axis::atOrBefore).toArray();
        long[] day = Arrays.stream(end).mapToLong(at -> at.date().toEpochDay()).toArray();
        return new Table(finish, day, end);
    }

    /** The first slot ready after a task, by the slot in which a wait starts or a work ends. */
    int[] readyAfterWait(Work.Waiting wait, Predecessor link) {
        return Arrays.stream(wait(wait).end())
                .mapToInt(end -> Math.min(size, readyAfter(end, link)))
                .toArray();
    }

    int[] readyAfterWork(Predecessor link) {
        int[] ready = new int[size];
        for (int slot = 0; slot < size; slot++) {
            ready[slot] = Math.min(size, readyAfter(axis.at(slot), link));
        }
        return ready;
    }
}
