package org.plumbrow.project.gate;

import java.util.Map;
import java.util.UUID;
import org.plumbrow.RouteSamples;
import org.plumbrow.TestWorld.TestBranch;
import org.plumbrow.project.ProjectFixture;
import org.springframework.stereotype.Component;

/** A new home, and an item that a designer may answer and that may not apply. */
@Component
public class GateSamples implements RouteSamples {

    private final ProjectFixture projects;
    private final GateRoad road;

    GateSamples(ProjectFixture projects, GateRoad road) {
        this.projects = projects;
        this.road = road;
    }

    @Override
    public Map<String, String> in(TestBranch branch) {
        UUID project = projects.aHomeRoof().in(branch).build();
        return Map.of(
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
