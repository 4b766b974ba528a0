package org.plumbrow.project.gate;

import java.util.Map;
import java.util.UUID;
import org.plumbrow.RouteSamples;
import org.plumbrow.TestWorld;
import org.plumbrow.TestWorld.TestBranch;
import org.plumbrow.project.NewProject;
import org.plumbrow.project.ProjectCustomers;
import org.plumbrow.project.ProjectFixture;
import org.springframework.stereotype.Component;

/** A new home, and an item that a designer may answer and that may not apply. */
@Component
class GateSamples implements RouteSamples {

    private final ProjectFixture projects;
    private final GateRoad road;
    private final TestWorld world;
    private final ProjectCustomers customers;

    GateSamples(ProjectFixture projects, GateRoad road, TestWorld world, ProjectCustomers customers) {
        this.projects = projects;
        this.road = road;
        this.world = world;
        this.customers = customers;
    }

    @Override
    public Map<String, String> in(TestBranch branch) {
        UUID project = projects.aHomeRoof().in(branch).build();
        UUID contact = world.as(
                branch.projectManager(),
                () -> customers.customer(project).contacts().get(0).id());
        int line = world.as(
                branch.projectManager(),
                () -> customers.addContact(
                        project, 0, new NewProject.NewContact("Ash", "neighbor", "", "", "en", false)));
        return Map.of(
                "contactId",
                contact.toString(),
                "lineNumber",
                Integer.toString(line),
                "projectId",
                project.toString(),
                "gateStage",
                "surveyed",
                "gateItem",
                "surveyed.5",
                "paperId",
                road.papers(branch, project).document().toString());
    }
}
