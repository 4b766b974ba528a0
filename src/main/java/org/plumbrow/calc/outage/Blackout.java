package org.plumbrow.calc.outage;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.EnumSet;
import java.util.Set;

/** When the customer must have power: on some dates or every week, all day or between two times, and why. */
public record Blackout(
        LocalDate first, LocalDate last, Set<DayOfWeek> weekdays, LocalTime from, LocalTime to, String reason) {

    private static final Set<DayOfWeek> ALL_WEEK = EnumSet.allOf(DayOfWeek.class);

    public Blackout {
        weekdays = Set.copyOf(weekdays);
        if (last.isBefore(first) || !from.isBefore(to)) {
            throw new IllegalArgumentException(
                    "blackout from %s to %s, %s to %s is empty".formatted(first, last, from, to));
        }
    }

    public static Blackout allDay(LocalDate first, LocalDate last, String reason) {
        return new Blackout(first, last, ALL_WEEK, LocalTime.MIN, LocalTime.MAX, reason);
    }

    public static Blackout between(LocalDate first, LocalDate last, LocalTime from, LocalTime to, String reason) {
        return new Blackout(first, last, ALL_WEEK, from, to, reason);
    }

    /** On these weekdays of every week. */
    public static Blackout weekly(Set<DayOfWeek> weekdays, LocalTime from, LocalTime to, String reason) {
        return new Blackout(LocalDate.MIN, LocalDate.MAX, weekdays, from, to, reason);
    }

    public boolean isAllDay() {
        return from.equals(LocalTime.MIN) && to.equals(LocalTime.MAX);
    }

    public boolean concerns(LocalDate day) {
        return !day.isBefore(first) && !day.isAfter(last) && weekdays.contains(day.getDayOfWeek());
    }

    /** Does an outage between these times meet it? One that ends when the blackout begins does not. */
    public boolean meets(LocalDate day, LocalTime start, LocalTime end) {
        return concerns(day) && start.isBefore(to) && end.isAfter(from);
    }
}
