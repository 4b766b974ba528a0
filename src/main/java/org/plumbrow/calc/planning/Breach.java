package org.plumbrow.calc.planning;

import java.util.Optional;

/**
 * One rule that a plan does not keep.
 *
 * @param activityId the activity at fault
 * @param otherId the other one, where two are
 */
public record Breach(Rule rule, String activityId, Optional<String> otherId, String sentence) {

    /** The rules of a plan, each checked on its own. */
    public enum Rule {
        MISSING,
        TOO_EARLY,
        DAY_OFF,
        ORDER,
        DURATION,
        NO_CREW,
        SKILL,
        CREW_TWICE,
        CREW_AWAY,
        EQUIPMENT,
        CONTINUITY,
        SETTLED
    }
}
