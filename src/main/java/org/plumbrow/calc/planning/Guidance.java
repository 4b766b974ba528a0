package org.plumbrow.calc.planning;

import java.util.Map;
import java.util.Optional;
import org.plumbrow.calc.calendar.HalfDay;

/**
 * How to place otherwise than by urgency: what a search has found, or what people already know. Rules stay rules: an
 * activity still waits for its predecessors, its crew and its equipment.
 *
 * @param guides by activity id; what is not named comes after everything that is
 */
public record Guidance(Map<String, Guide> guides) {

    public static final Guidance NONE = new Guidance(Map.of());

    /**
     * Of one free activity.
     *
     * @param rank who is served first: the smaller one
     * @param crewId taken if it may do the work, else the crew that finishes first
     * @param notBefore kept back until then although it could start earlier, so that a known date stays
     */
    public record Guide(int rank, Optional<String> crewId, Optional<HalfDay> notBefore) {}

    public Guidance {
        guides = Map.copyOf(guides);
    }

    int rank(String activityId) {
        Guide guide = guides.get(activityId);
        return guide == null ? Integer.MAX_VALUE : guide.rank();
    }

    Optional<String> crew(String activityId) {
        return Optional.ofNullable(guides.get(activityId)).flatMap(Guide::crewId);
    }

    Optional<HalfDay> notBefore(String activityId) {
        return Optional.ofNullable(guides.get(activityId)).flatMap(Guide::notBefore);
    }
}
