package org.plumbrow.calc.outage.ranking;

import java.time.LocalTime;

/** Something that happens every day between two times: a milking, a feeding. */
public record Daily(LocalTime from, LocalTime to, String words) {

    public Daily {
        if (!from.isBefore(to)) {
            throw new IllegalArgumentException(words + " from " + from + " to " + to + " is empty");
        }
    }
}
