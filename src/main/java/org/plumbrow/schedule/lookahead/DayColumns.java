package org.plumbrow.schedule.lookahead;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.temporal.TemporalAdjusters;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.plumbrow.branch.BranchFacts;
import org.plumbrow.calc.calendar.DayWords;
import org.plumbrow.calc.calendar.Half;
import org.plumbrow.calc.calendar.HalfDay;
import org.plumbrow.calc.calendar.WorkingCalendar;

/**
 * The days of the grid: each weekday on which the branch works, holidays among them as closed columns, two half-days a
 * column. A half-day has a place from 0 to {@link #halfDays()}.
 */
record DayColumns(List<Day> days, LocalDate today, Span span) {

    /** How far a grid reaches, and how wide it draws: pixels a half-day. */
    enum Span {
        LOOK_AHEAD(8, 14),
        /** Wide enough that a work of half a day can be taken hold of. */
        CALENDAR(4, 28);

        private final int weeks;
        private final int halfDayPx;

        Span(int weeks, int halfDayPx) {
            this.weeks = weeks;
            this.halfDayPx = halfDayPx;
        }

        int weeks() {
            return weeks;
        }

        int halfDayPx() {
            return halfDayPx;
        }
    }

    /** @param closed why nobody works, on a holiday */
    record Day(LocalDate date, Optional<String> closed, boolean startsWeek, boolean isToday) {
        public String words() {
            return DayWords.of(date);
        }
    }

    /** A week's head: how many columns stand under it. */
    record Week(LocalDate first, LocalDate last, int days) {}

    static DayColumns from(LocalDate anyDay, BranchFacts branch, LocalDate today, Span span) {
        LocalDate monday = monday(anyDay);
        WorkingCalendar calendar = branch.workDays();
        LocalDate end = monday.plusWeeks(span.weeks);
        Set<DayOfWeek> weekdays = EnumSet.copyOf(branch.workingWeekdays().days());
        calendar.alsoWorked().stream()
                .filter(day -> !day.isBefore(monday) && day.isBefore(end))
                .forEach(day -> weekdays.add(day.getDayOfWeek()));
        List<Day> days = new ArrayList<>();
        LocalDate week = LocalDate.MIN;
        for (LocalDate date = monday; date.isBefore(end); date = date.plusDays(1)) {
            if (weekdays.contains(date.getDayOfWeek())) {
                LocalDate itsMonday = monday(date);
                days.add(new Day(date, calendar.whyClosed(date), !itsMonday.equals(week), date.equals(today)));
                week = itsMonday;
            }
        }
        return new DayColumns(List.copyOf(days), today, span);
    }

    private static LocalDate monday(LocalDate date) {
        return date.with(TemporalAdjusters.previousOrSame(DayOfWeek.MONDAY));
    }

    public LocalDate first() {
        return days.get(0).date();
    }

    public LocalDate last() {
        return days.get(days.size() - 1).date();
    }

    public LocalDate firstMonday() {
        return monday(first());
    }

    /** Pixels of the whole picture. */
    public int width() {
        return halfDays() * span.halfDayPx;
    }

    /** Pixels of a week. */
    public int weekPx() {
        return 2 * daysAWeek() * span.halfDayPx;
    }

    public int halfDays() {
        return 2 * days.size();
    }

    /** Columns a week, 5 for Monday to Friday: the style sheet knows the widths. */
    public int daysAWeek() {
        return days.size() / span.weeks;
    }

    public List<Week> weeks() {
        List<Week> weeks = new ArrayList<>();
        for (int at = 0; at < days.size(); at += daysAWeek()) {
            weeks.add(
                    new Week(days.get(at).date(), days.get(at + daysAWeek() - 1).date(), daysAWeek()));
        }
        return weeks;
    }

    /** The place of the half-day, or of the first one after it that is shown. */
    public int at(HalfDay halfDay) {
        for (int column = 0; column < days.size(); column++) {
            LocalDate date = days.get(column).date();
            if (date.equals(halfDay.date())) {
                return 2 * column + (halfDay.half() == Half.AFTERNOON ? 1 : 0);
            }
            if (date.isAfter(halfDay.date())) {
                return 2 * column;
            }
        }
        return halfDays();
    }

    /** The place just behind the half-day, so that a bar from {@link #at} to here covers it. */
    public int behind(HalfDay halfDay) {
        return at(halfDay.next());
    }
}
