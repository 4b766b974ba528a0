package org.plumbrow.calc.outage.ranking;

import java.time.LocalDateTime;
import java.util.List;
import java.util.OptionalDouble;

/**
 * What the animals' days allow.
 *
 * @param flockEvents catch, load-out, placement: no outage ends within 24 h before
 * @param feeding no outage while feed runs
 * @param mostThi temperature-humidity index outdoors from which animals count as stressed; empty: not asked
 */
public record AnimalDays(List<FlockEvent> flockEvents, List<Daily> feeding, OptionalDouble mostThi) {

    public static final AnimalDays NONE = new AnimalDays(List.of(), List.of(), OptionalDouble.empty());
    public static final int FREE_BEFORE_EVENT_MINUTES = 1440;

    public AnimalDays {
        flockEvents = List.copyOf(flockEvents);
        feeding = List.copyOf(feeding);
    }

    /** @param words "the catch of house 2" */
    public record FlockEvent(LocalDateTime at, String words) {}
}
