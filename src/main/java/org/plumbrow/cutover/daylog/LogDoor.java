package org.plumbrow.cutover.daylog;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Stream;
import org.plumbrow.crew.Crews;
import org.plumbrow.cutover.OutageFacts;
import org.plumbrow.cutover.Outages;
import org.plumbrow.project.ProjectAccess;
import org.plumbrow.project.ProjectFacts;
import org.plumbrow.project.Projects;
import org.plumbrow.web.Access;
import org.plumbrow.web.May;
import org.plumbrow.web.NotForYourRole;
import org.springframework.stereotype.Component;

/** Who may read and write the day log: who runs cutovers, and whoever leads the crew that the outage is booked with. */
@Component
class LogDoor {

    private final Access access;
    private final ProjectAccess projectAccess;
    private final Projects projects;
    private final Outages outages;
    private final Crews crews;

    LogDoor(Access access, ProjectAccess projectAccess, Projects projects, Outages outages, Crews crews) {
        this.access = access;
        this.projectAccess = projectAccess;
        this.projects = projects;
        this.outages = outages;
        this.crews = crews;
    }

    /**
     * @throws org.plumbrow.web.NotFound if the project is not in the person's branches
     * @throws NotForYourRole if the role may not, or the crew lead's crew is not booked there
     */
    ProjectFacts require(UUID projectId) {
        ProjectFacts project = projects.factsUnchecked(projectId);
        access.require(project.branchId(), May.RUN_CUTOVER);
        if (!reaches(project) && !leadsTheCrew(project)) {
            throw new NotForYourRole("Crew leads of a crew that is booked here");
        }
        return project;
    }

    /** Whether the other pages of the project are open too. */
    boolean reaches(ProjectFacts project) {
        Optional<Set<UUID>> reach = projectAccess.reachOf(project.branchId());
        return reach.isEmpty() || reach.get().contains(project.id());
    }

    private boolean leadsTheCrew(ProjectFacts project) {
        List<UUID> own = crews.crewsLedBy(project.branchId(), access.visitor().personId());
        return outages.liveOrDone(project.id()).map(OutageFacts::crewId).stream()
                .flatMap(Stream::ofNullable)
                .anyMatch(own::contains);
    }
}
