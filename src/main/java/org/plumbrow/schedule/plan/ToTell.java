package org.plumbrow.schedule.plan;

import java.util.List;
import java.util.UUID;

/**
 * Somebody whose dates differ between two plans, and how.
 *
 * @param id of the crew, the project whose customer it is, or the utility
 * @param name of the crew, project or utility
 * @param lines what is different, a line each, soonest first: "Sedge Hollow Dairy, racking: Mon, Mar 8 → Wed, Mar 10"
 */
public record ToTell(Whom whom, UUID id, String name, List<String> lines) {

    /** Who lives by a plan. */
    public enum Whom {
        CREW,
        CUSTOMER,
        UTILITY
    }

    public ToTell {
        lines = List.copyOf(lines);
    }
}
