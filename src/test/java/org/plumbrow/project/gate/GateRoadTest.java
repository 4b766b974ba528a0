package org.plumbrow.project.gate;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.plumbrow.PlumbrowTest;
import org.plumbrow.TestWorld;
import org.plumbrow.TestWorld.TestBranch;
import org.plumbrow.project.ProjectFixture;
import org.plumbrow.project.Projects;
import org.plumbrow.project.Stage;
import org.springframework.beans.factory.annotation.Autowired;

/** The whole road from contract to commissioned, through the services. */
@PlumbrowTest
class GateRoadTest {

    @Autowired
    TestWorld world;

    @Autowired
    ProjectFixture fixture;

    @Autowired
    Projects projects;

    @Autowired
    Gates gates;

    @ParameterizedTest
    @EnumSource(Stage.class)
    void aDairyReachesEachStage(Stage stage) {
        TestBranch branch = world.branch();
        UUID id = fixture.aDairyGroundMount().in(branch).reached(stage).build();
        assertThat(world.as(branch.manager(), () -> projects.facts(id)).stage()).isEqualTo(stage);
    }

    @Test
    void everySiteReachesTheEnd() {
        TestBranch branch = world.branch();
        for (ProjectFixture.Draft draft :
                java.util.List.of(fixture.aHomeRoof(), fixture.aSchoolFlatRoof(), fixture.aPoultryGroundMount())) {
            UUID id = draft.in(branch).reached(Stage.COMMISSIONED).build();
            assertThat(world.as(branch.manager(), () -> gates.next(id))).isEmpty();
        }
    }
}
