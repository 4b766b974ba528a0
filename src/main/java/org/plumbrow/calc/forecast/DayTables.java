package org.plumbrow.calc.forecast;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.Map;
import org.plumbrow.calc.calendar.Half;
import org.plumbrow.calc.calendar.HalfDay;
import org.plumbrow.calc.calendar.WorkingAxis;
import org.plumbrow.calc.calendar.WorkingCalendar;
import org.plumbrow.calc.planning.Plan;
import org.plumbrow.calc.planning.PlanningProblem;
import org.plumbrow.calc.planning.Predecessor;

/**
 * Time as two numberings: working half-days of the branch ("slots") and half-days of the clock ("clock", counted from the
 * first day, Sundays too), with a table each way. Reaches a year beyond twice the plan's length, as runs end later than
 * plans.
 */
final class DayTables {

    /** Some 87 years: two bytes number its half-days. */
    private static final int MOST_DAYS = 32_000;

    final LocalDate first;
    final WorkingAxis axis;
    final int today;
    /** Of each half-day of the clock: the first slot at or after it. */
    final int[] slotFrom;
    /** Of each slot: its half-day of the clock. */
    final int[] clockOf;

    private final int days;
    private final Map<WorkingCalendar, WaitDays> waits = new HashMap<>();

    DayTables(PlanningProblem problem, Plan plan) {
        first = firstDay(problem, plan);
        axis = new WorkingAxis(problem.calendar(), first, earlier(lastDay(problem, plan), first.plusDays(MOST_DAYS)));
        today = axis.atOrAfter(problem.today());
        days = Math.toIntExact(ChronoUnit.DAYS.between(first, axis.last())) + 1;
        slotFrom = new int[2 * days];
        for (int clock = 0; clock < slotFrom.length; clock++) {
            slotFrom[clock] = Math.min(axis.size() - 1, axis.atOrAfter(halfDay(clock)));
        }
        clockOf = new int[axis.size()];
        for (int slot = 0; slot < clockOf.length; slot++) {
            clockOf[slot] = clock(axis.at(slot));
        }
    }

    private static LocalDate earlier(LocalDate one, LocalDate other) {
        return one.isBefore(other) ? one : other;
    }

    /** Early enough for what has begun or is done, and for the longest lag after it. */
    private static LocalDate firstDay(PlanningProblem problem, Plan plan) {
        int longestLag = problem.activities().stream()
                .flatMap(activity -> activity.predecessors().stream())
                .mapToInt(Predecessor::lagHalfDays)
                .max()
                .orElse(0);
        LocalDate today = problem.today().date();
        LocalDate begun = plan.placements().values().stream()
                .map(placement -> placement.start().date())
                .min(Comparator.naturalOrder())
                .filter(today::isAfter)
                .orElse(today);
        return problem.calendar().before(begun, longestLag / 2 + 1);
    }

    private static LocalDate lastDay(PlanningProblem problem, Plan plan) {
        LocalDate today = problem.today().date();
        LocalDate end = plan.placements().values().stream()
                .map(placement -> placement.finish().date())
                .max(Comparator.naturalOrder())
                .filter(today::isBefore)
                .orElse(today);
        return end.plusDays(ChronoUnit.DAYS.between(today, end)).plusYears(1);
    }

    int days() {
        return days;
    }

    int lastSlot() {
        return clockOf.length - 1;
    }

    /** The first slot at or after a half-day of the clock, however far away that is. */
    int slotFrom(int clock) {
        return slotFrom[Math.min(Math.max(0, clock), slotFrom.length - 1)];
    }

    int slotFrom(HalfDay when) {
        return slotFrom(clock(when));
    }

    /** May lie before the first or behind the last. */
    int clock(HalfDay when) {
        int day = Math.toIntExact(ChronoUnit.DAYS.between(first, when.date()));
        return 2 * day + (when.half() == Half.AFTERNOON ? 1 : 0);
    }

    LocalDate date(int day) {
        return first.plusDays(day);
    }

    private HalfDay halfDay(int clock) {
        return new HalfDay(first.plusDays(clock / 2), clock % 2 == 0 ? Half.MORNING : Half.AFTERNOON);
    }

    WaitDays waiting(WorkingCalendar counting) {
        return waits.computeIfAbsent(counting, calendar -> new WaitDays(calendar, first, days));
    }

    /** Which days count for somebody, as a table. */
    static final class WaitDays {

        /** Of each day since the first: how many counted days lie before it; one entry more than days. */
        private final int[] countedBefore;

        private final int[] counted;

        private WaitDays(WorkingCalendar calendar, LocalDate first, int days) {
            countedBefore = new int[days + 1];
            int[] found = new int[days];
            int count = 0;
            for (int day = 0; day < days; day++) {
                countedBefore[day] = count;
                if (calendar.isWorking(first.plusDays(day))) {
                    found[count++] = day;
                }
            }
            countedBefore[days] = count;
            counted = Arrays.copyOf(found, count);
        }

        /** The n-th counted day after a day, the day itself not counted; the last known one beyond the table. */
        int after(int day, int n) {
            if (n == 0) {
                return day;
            }
            return counted[Math.min(counted.length - 1, countedBefore[day + 1] + n - 1)];
        }

        /** How many counted days lie between two days, the later one included. */
        int between(int from, int to) {
            return countedBefore[to + 1] - countedBefore[from + 1];
        }
    }
}
