package org.plumbrow.status;

import java.util.UUID;
import org.plumbrow.TestWorld;
import org.plumbrow.TestWorld.TestBranch;
import org.plumbrow.project.ProjectFacts;
import org.plumbrow.project.Projects;
import org.springframework.stereotype.Component;

/** Customers with a private link, made as a project manager makes it. */
@Component
public class StatusFixture {

    private final TestWorld world;
    private final Projects projects;
    private final CustomerLinks links;

    StatusFixture(TestWorld world, Projects projects, CustomerLinks links) {
        this.world = world;
        this.projects = projects;
        this.links = links;
    }

    /** Who decides at the customer's side. */
    public UUID contact(TestBranch branch, UUID project) {
        return world.as(
                branch.projectManager(), () -> projects.contacts(project).get(0).id());
    }

    /** Makes the link and gives its path, {@code /s/…}. */
    public String link(TestBranch branch, UUID project) {
        UUID contact = contact(branch, project);
        return world.as(
                branch.projectManager(), () -> links.make(project, contact).path());
    }

    public ProjectFacts facts(TestBranch branch, UUID project) {
        return world.as(branch.projectManager(), () -> projects.facts(project));
    }
}
