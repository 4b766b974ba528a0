package org.plumbrow.calc.planning;

import org.plumbrow.calc.calendar.HalfDay;

/** From the first half-day to the last, both included. */
public record Absence(HalfDay first, HalfDay last, String reason) {

    public Absence {
        if (last.isBefore(first)) {
            throw new IllegalArgumentException("absence from " + first + " to " + last + " ends before it begins");
        }
    }

    public boolean holds(HalfDay halfDay) {
        return !halfDay.isBefore(first) && !halfDay.isAfter(last);
    }
}
