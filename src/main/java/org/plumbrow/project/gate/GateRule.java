package org.plumbrow.project.gate;

import java.util.Optional;
import java.util.UUID;
import java.util.function.Function;

/**
 * Judges one item of a gate from the project's own data. A bean of the room that owns the data, or one of its
 * {@link GateRuleSet}; at most one for an item. Asked within the transaction in which the gate is looked at or passed; what
 * several rules read is read once a look. An item that is not computed is answered by hand as long as its rule cannot tell.
 */
public interface GateRule {

    /** Code of the item it judges: {@code cutover.13}. */
    String item();

    Finding check(GateLook look);

    /** Where people see what it looks at; empty where that is the item's own page. */
    default Optional<SeenAt> seenAt(UUID projectId) {
        return Optional.empty();
    }

    /** A rule that is one function of the look. */
    static GateRule of(String item, Function<GateLook, Finding> judge) {
        return new Judged(item, judge);
    }
}
