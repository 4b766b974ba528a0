package org.plumbrow.schedule.scenario;

import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.plumbrow.branch.Written;

/**
 * A named copy of the plan.
 *
 * @param changes what is otherwise, in the order in which it was thought of; none yet in a new one
 */
record Scenario(UUID id, UUID branchId, long version, String name, List<Change> changes, String madeBy) {

    /** One thing that is otherwise. */
    record Change(UUID id, ScenarioTerms terms) {}

    List<Written> written() {
        return List.of(Written.of("Name", "name", name));
    }

    /** Why it cannot be accepted as a whole; empty when all of it can be recorded. */
    Optional<String> notToAccept() {
        if (changes.isEmpty()) {
            return Optional.of("Nothing is otherwise in it yet. Add what is, then look again.");
        }
        return changes.stream()
                .map(change -> switch (change.terms().kind()) {
                    case NEW_JOB ->
                        "A job comes into the plan when its project passes the gate to signed. Take it out here to accept the rest.";
                    case SATURDAYS ->
                        "Saturdays are agreed with the crews and set as working days of the branch. Take them out here to accept the rest.";
                    default -> "";
                })
                .filter(why -> !why.isEmpty())
                .findFirst();
    }
}
