package org.plumbrow.project.gate;

import java.util.HashMap;
import java.util.Map;
import java.util.UUID;
import java.util.function.Function;
import org.plumbrow.project.ProjectFacts;

/** One look at a project's gate: the project as it stands, and what its rules have read for one another. */
public final class GateLook {

    private final ProjectFacts project;
    private final Map<Class<?>, Object> read = new HashMap<>();

    public GateLook(ProjectFacts project) {
        this.project = project;
    }

    public ProjectFacts project() {
        return project;
    }

    public UUID projectId() {
        return project.id();
    }

    /** What several rules ask for is read once a look. @param what a type of the room's own, so that rooms do not meet */
    public <T> T once(Class<T> what, Function<ProjectFacts, T> reader) {
        T known = what.cast(read.get(what));
        if (known == null) {
            known = reader.apply(project);
            read.put(what, known);
        }
        return known;
    }
}
