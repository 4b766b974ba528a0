package org.plumbrow.estimate.site;

import java.util.Map;
import java.util.UUID;
import org.plumbrow.RouteSamples;
import org.plumbrow.TestWorld.TestBranch;
import org.plumbrow.project.ProjectFixture;
import org.springframework.stereotype.Component;

/** Values for the addresses of the pages of weather, use, size and yield. */
@Component
class EstimateSamples implements RouteSamples {

    private final EstimateFixture fixture;
    private final ProjectFixture projects;

    EstimateSamples(EstimateFixture fixture, ProjectFixture projects) {
        this.fixture = fixture;
        this.projects = projects;
    }

    @Override
    public Map<String, String> in(TestBranch branch) {
        UUID project = projects.aHomeRoof().in(branch).build();
        return Map.of(
                "weatherId",
                fixture.weather(branch, "Valley means").toString(),
                "meterId",
                fixture.use(branch, project, "House", 950).toString());
    }
}
