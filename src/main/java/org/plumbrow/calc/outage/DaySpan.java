package org.plumbrow.calc.outage;

import java.time.LocalDate;

/** Days from the first to the last, both of them counted. */
public record DaySpan(LocalDate first, LocalDate last) {

    /** @throws IllegalArgumentException if the last day lies before the first */
    public DaySpan {
        if (last.isBefore(first)) {
            throw new IllegalArgumentException("the last day lies before the first");
        }
    }
}
