package org.plumbrow.project;

import java.util.Map;
import java.util.UUID;
import org.plumbrow.RouteSamples;
import org.plumbrow.TestWorld;
import org.plumbrow.TestWorld.TestBranch;
import org.plumbrow.project.gate.GateSamples;
import org.springframework.stereotype.Component;

/** Of the project that the gates' samples made. */
@Component
class ProjectSamples implements RouteSamples {

    private final TestWorld world;
    private final GateSamples gates;
    private final Projects projects;

    ProjectSamples(TestWorld world, GateSamples gates, Projects projects) {
        this.world = world;
        this.gates = gates;
        this.projects = projects;
    }

    @Override
    public Map<String, String> in(TestBranch branch) {
        UUID project = UUID.fromString(gates.in(branch).get("projectId"));
        UUID contact = world.as(
                branch.projectManager(), () -> projects.contacts(project).get(0).id());
        return Map.of("contactId", contact.toString(), "lineNumber", "1");
    }
}
