package org.plumbrow.calc.planning;

import java.util.Optional;

/**
 * A job as the plan sees it: whose activities belong together, and what people call it.
 *
 * @param site empty when nobody knows where it is: then no way there is counted
 */
public record Project(String id, String name, Optional<Site> site) {

    public Project(String id, String name) {
        this(id, name, Optional.empty());
    }
}
