package org.plumbrow.calc.outage;

import java.util.List;
import java.util.Optional;
import org.plumbrow.calc.calendar.HalfDay;

/** A crew that could do the cutover, and when it is elsewhere. */
public record CrewOffer(String id, String name, List<Busy> busy) {

    public CrewOffer {
        busy = List.copyOf(busy);
    }

    /** Half-days, both ends included, and what the crew does then: "Quillback School" or "away". */
    public record Busy(HalfDay from, HalfDay to, String what) {
        boolean meets(HalfDay first, HalfDay last) {
            return !from.isAfter(last) && !to.isBefore(first);
        }
    }

    /** What keeps the crew between two half-days, both included; empty when it is free. */
    public Optional<Busy> busyBetween(HalfDay first, HalfDay last) {
        return busy.stream().filter(other -> other.meets(first, last)).findFirst();
    }
}
