package org.plumbrow.calc.outage;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
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

    /** The same without the days on which nobody needs the power after all. */
    public List<Blackout> outside(List<DaySpan> free) {
        List<Blackout> left = new ArrayList<>();
        LocalDate next = first;
        for (DaySpan span : free.stream()
                .filter(span -> !span.first().isAfter(last))
                .sorted(Comparator.comparing(DaySpan::first))
                .toList()) {
            if (span.first().isAfter(next)) {
                left.add(new Blackout(next, span.first().minusDays(1), weekdays, from, to, reason));
            }
            if (!span.last().isBefore(next)) {
                next = span.last().plusDays(1);
            }
        }
        if (!next.isAfter(last)) {
            left.add(new Blackout(next, last, weekdays, from, to, reason));
        }
        return left;
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
