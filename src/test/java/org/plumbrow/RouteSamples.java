package org.plumbrow;

import java.util.Map;
import org.plumbrow.TestWorld.TestBranch;
import org.plumbrow.web.Visitor;

/**
 * What {@link RouteAccessTest} puts into the addresses of a room's routes; each room brings a bean of its own. Name
 * path variables for what they hold ({@code {crewId}}, not {@code {id}}): one name means one thing in the whole house.
 */
public interface RouteSamples {

    /** Name of the path variable → a value that exists in this branch. Called once for each of the two branches. */
    default Map<String, String> in(TestBranch branch) {
        return Map.of();
    }

    /** Name of the path variable → a value that belongs to this very person: a phone of theirs, a draft of theirs. */
    default Map<String, String> of(Visitor visitor) {
        return Map.of();
    }

    /**
     * Fields without which a route cannot even be asked (answered 400 before anybody looks at the role):
     * {@code "POST /crews/{crewId}/rename"} → name of the field → its text.
     */
    default Map<String, Map<String, String>> fields() {
        return Map.of();
    }
}
