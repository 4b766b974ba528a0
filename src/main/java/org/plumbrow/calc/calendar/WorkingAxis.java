package org.plumbrow.calc.calendar;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Arrays;

/**
 * The working half-days from one date to another, numbered from 0 without gaps: the time line of a plan.
 * One table each way, so that either direction costs the same few steps however long the plan is.
 */
public final class WorkingAxis {

    private final WorkingCalendar calendar;
    private final LocalDate first;
    private final LocalDate last;
    /** Of each calendar day since the first: how many working days lie before it; one entry more than days. */
    private final int[] workingDaysBefore;

    private final LocalDate[] workingDays;

    public WorkingAxis(WorkingCalendar calendar, LocalDate first, LocalDate last) {
        if (last.isBefore(first)) {
            throw new IllegalArgumentException("axis from " + first + " to " + last + " is empty");
        }
        this.calendar = calendar;
        this.first = first;
        this.last = last;
        int days = Math.toIntExact(ChronoUnit.DAYS.between(first, last)) + 1;
        workingDaysBefore = new int[days + 1];
        LocalDate[] found = new LocalDate[days];
        int count = 0;
        for (int day = 0; day < days; day++) {
            workingDaysBefore[day] = count;
            LocalDate date = first.plusDays(day);
            if (calendar.isWorking(date)) {
                found[count++] = date;
            }
        }
        workingDaysBefore[days] = count;
        workingDays = Arrays.copyOf(found, count);
    }

    public WorkingCalendar calendar() {
        return calendar;
    }

    public LocalDate first() {
        return first;
    }

    public LocalDate last() {
        return last;
    }

    /** How many working half-days there are; valid numbers are 0 to one less. */
    public int size() {
        return 2 * workingDays.length;
    }

    /** @throws IndexOutOfBoundsException if the number is not on the axis */
    public HalfDay at(int number) {
        return new HalfDay(workingDays[number / 2], number % 2 == 0 ? Half.MORNING : Half.AFTERNOON);
    }

    /** The number of the first working half-day at or after that one; {@link #size()} when there is none. */
    public int atOrAfter(HalfDay halfDay) {
        if (halfDay.date().isBefore(first)) {
            return 0;
        }
        if (halfDay.date().isAfter(last)) {
            return size();
        }
        int day = dayNumber(halfDay.date());
        boolean works = workingDaysBefore[day + 1] > workingDaysBefore[day];
        int offset = works && halfDay.half() == Half.AFTERNOON ? 1 : 0;
        return 2 * workingDaysBefore[day] + offset;
    }

    /** The number of the last working half-day at or before that one; -1 when there is none. */
    public int atOrBefore(HalfDay halfDay) {
        return atOrAfter(halfDay.next()) - 1;
    }

    /** The number of the first working half-day after that one; {@link #size()} when there is none. */
    public int after(HalfDay halfDay) {
        return atOrAfter(halfDay.next());
    }

    public boolean holds(HalfDay halfDay) {
        int number = atOrAfter(halfDay);
        return number < size() && at(number).equals(halfDay);
    }

    /** The n-th working day after a date, as {@link WorkingCalendar#after}; the axis' own table where it reaches. */
    public LocalDate dayAfter(LocalDate date, int days) {
        if (days == 0 || date.isBefore(first) || date.isAfter(last)) {
            return calendar.after(date, days);
        }
        int wanted = workingDaysBefore[dayNumber(date) + 1] + days - 1;
        return wanted < workingDays.length ? workingDays[wanted] : calendar.after(date, days);
    }

    private int dayNumber(LocalDate date) {
        return Math.toIntExact(date.toEpochDay() - first.toEpochDay());
    }
}
