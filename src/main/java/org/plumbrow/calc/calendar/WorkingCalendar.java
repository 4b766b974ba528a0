package org.plumbrow.calc.calendar;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.Collection;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;

/**
 * Which days count for a branch, a utility or a permit office.
 *
 * @param workingWeekdays at least one
 * @param closedDays holidays and other days off, with their reason
 * @param alsoWorked dates of other weekdays that are worked; one that is closed stays closed
 */
public record WorkingCalendar(
        Set<DayOfWeek> workingWeekdays, Map<LocalDate, String> closedDays, Set<LocalDate> alsoWorked) {

    /** Every day of the year counts: for waits given in calendar days. */
    public static final WorkingCalendar EVERY_DAY = new WorkingCalendar(EnumSet.allOf(DayOfWeek.class), Map.of());

    /** Monday to Friday without any holiday. */
    public static final WorkingCalendar MONDAY_TO_FRIDAY =
            new WorkingCalendar(EnumSet.range(DayOfWeek.MONDAY, DayOfWeek.FRIDAY), Map.of());

    public WorkingCalendar {
        if (workingWeekdays.isEmpty()) {
            throw new IllegalArgumentException("a calendar needs at least one working weekday");
        }
        workingWeekdays = Set.copyOf(workingWeekdays);
        closedDays = Map.copyOf(closedDays);
        alsoWorked = Set.copyOf(alsoWorked);
    }

    public WorkingCalendar(Set<DayOfWeek> workingWeekdays, Map<LocalDate, String> closedDays) {
        this(workingWeekdays, closedDays, Set.of());
    }

    public static WorkingCalendar of(Set<DayOfWeek> workingWeekdays, Collection<ClosedDay> closed) {
        return new WorkingCalendar(workingWeekdays, Map.of()).closedAlsoOn(closed);
    }

    public WorkingCalendar closedAlsoOn(Collection<ClosedDay> more) {
        Map<LocalDate, String> all = new TreeMap<>(closedDays);
        more.forEach(day -> all.put(day.date(), day.reason()));
        return new WorkingCalendar(workingWeekdays, all, alsoWorked);
    }

    public WorkingCalendar workedAlsoOn(Collection<LocalDate> more) {
        Set<LocalDate> all = new HashSet<>(alsoWorked);
        all.addAll(more);
        return new WorkingCalendar(workingWeekdays, closedDays, all);
    }

    public boolean isWorking(LocalDate date) {
        return (workingWeekdays.contains(date.getDayOfWeek()) || alsoWorked.contains(date))
                && !closedDays.containsKey(date);
    }

    /** Why nobody works on that date: the holiday's name or the weekday; empty on a working day. */
    public Optional<String> whyClosed(LocalDate date) {
        String holiday = closedDays.get(date);
        if (holiday != null) {
            return Optional.of(holiday);
        }
        return isWorking(date) ? Optional.empty() : Optional.of(DayWords.dayOfWeek(date));
    }

    public LocalDate onOrAfter(LocalDate date) {
        LocalDate day = date;
        while (!isWorking(day)) {
            day = day.plusDays(1);
        }
        return day;
    }

    public LocalDate onOrBefore(LocalDate date) {
        LocalDate day = date;
        while (!isWorking(day)) {
            day = day.minusDays(1);
        }
        return day;
    }

    /** The n-th working day after a date; the date itself does not count; n = 0 is the date itself. */
    public LocalDate after(LocalDate date, int workingDays) {
        LocalDate day = date;
        for (int left = notNegative(workingDays); left > 0; left--) {
            day = onOrAfter(day.plusDays(1));
        }
        return day;
    }

    /** The n-th working day before a date; the date itself does not count; n = 0 is the date itself. */
    public LocalDate before(LocalDate date, int workingDays) {
        LocalDate day = date;
        for (int left = notNegative(workingDays); left > 0; left--) {
            day = onOrBefore(day.minusDays(1));
        }
        return day;
    }

    /** Working days from the first date to the last, both counted; 0 when the last lies before the first. */
    public int workingDaysIn(LocalDate first, LocalDate last) {
        int days = 0;
        for (LocalDate day = first; !day.isAfter(last); day = day.plusDays(1)) {
            days += isWorking(day) ? 1 : 0;
        }
        return days;
    }

    /** Working days strictly between two dates: the full days of a notice. */
    public int fullWorkingDaysBetween(LocalDate sent, LocalDate event) {
        return workingDaysIn(sent.plusDays(1), event.minusDays(1));
    }

    private static int notNegative(int days) {
        if (days < 0) {
            throw new IllegalArgumentException("days to count must not be negative: " + days);
        }
        return days;
    }
}
