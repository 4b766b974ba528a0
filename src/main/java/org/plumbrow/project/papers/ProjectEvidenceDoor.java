package org.plumbrow.project.papers;

import java.util.UUID;
import org.plumbrow.evidence.EvidenceDoor;
import org.plumbrow.project.ProjectAccess;
import org.plumbrow.web.May;
import org.springframework.stereotype.Component;

/** Whoever may open a project may open its papers. */
@Component
class ProjectEvidenceDoor implements EvidenceDoor {

    private final ProjectAccess projects;

    ProjectEvidenceDoor(ProjectAccess projects) {
        this.projects = projects;
    }

    @Override
    public void require(UUID projectId) {
        projects.require(projectId, May.SEE_PROJECTS);
    }
}
