package org.plumbrow.permit;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.plumbrow.PlumbrowTest;
import org.plumbrow.TestWorld;
import org.plumbrow.TestWorld.TestBranch;
import org.plumbrow.project.ProjectFixture;
import org.plumbrow.project.Stage;
import org.plumbrow.project.gate.AnswerKind;
import org.plumbrow.project.gate.Gates;
import org.plumbrow.project.gate.ItemState;
import org.plumbrow.project.gate.ItemView;
import org.springframework.beans.factory.annotation.Autowired;

/** What is written on the page of waits answers the gate's item, and nobody writes it twice. */
@PlumbrowTest
class WaitsAtTheGateTest {

    private static final LocalDate SENT = LocalDate.of(2027, 2, 1);

    @Autowired
    TestWorld world;

    @Autowired
    ProjectFixture projects;

    @Autowired
    AwaitedBook book;

    @Autowired
    Gates gates;

    private TestBranch branch;
    private UUID project;

    @BeforeEach
    void aDairy() {
        branch = world.branch();
        project = projects.aDairyGroundMount().in(branch).build();
    }

    private void inspection(WaitResult result, LocalDate came) {
        Awaited one = new Awaited(
                UUID.randomUUID(),
                -1,
                project,
                AwaitedKind.INSPECTION,
                "",
                "",
                OwedBy.US,
                null,
                null,
                "",
                came.minusDays(3),
                null,
                null,
                null,
                came,
                result,
                null,
                "");
        world.as(branch.projectManager(), () -> assertThat(book.add(one)).isEmpty());
    }

    private ItemView electricalInspection() {
        return world.as(
                branch.projectManager(),
                () -> gates.viewUnchecked(project, Stage.INSTALLED).items().stream()
                        .filter(item -> item.code().equals("installed.16"))
                        .findFirst()
                        .orElseThrow());
    }

    @Test
    void anInspectionIsAskedForOnceAndAnswersTheItem() {
        assertThat(electricalInspection().lacking()).contains(AnswerKind.DATE, AnswerKind.DOCUMENT);
        inspection(WaitResult.CORRECTION, SENT);
        assertThat(electricalInspection().state()).isEqualTo(ItemState.BROKEN);
        inspection(WaitResult.PASSED, SENT.plusDays(9));
        assertThat(electricalInspection().lacking()).containsExactly(AnswerKind.DOCUMENT);
    }
}
