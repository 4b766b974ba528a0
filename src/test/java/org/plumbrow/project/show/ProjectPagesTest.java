package org.plumbrow.project.show;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.plumbrow.PlumbrowTest;
import org.plumbrow.Queries;
import org.plumbrow.TestPages;
import org.plumbrow.TestWorld;
import org.plumbrow.TestWorld.TestBranch;
import org.plumbrow.project.ProjectFixture;
import org.plumbrow.project.Stage;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.test.web.servlet.assertj.MockMvcTester;
import org.springframework.test.web.servlet.assertj.MvcTestResult;
import org.springframework.transaction.support.TransactionTemplate;

@PlumbrowTest
class ProjectPagesTest {

    /** At the gate that asks the most rooms; survey, design, use and the decision on roof or ground are read there too. */
    private static final int MOST_QUERIES = 29;

    @Autowired
    TestWorld world;

    @Autowired
    TestPages pages;

    @Autowired
    ProjectFixture fixture;

    @Autowired
    MockMvcTester mvc;

    @Autowired
    JdbcClient jdbc;

    @Autowired
    TransactionTemplate transaction;

    private TestBranch branch;

    @BeforeEach
    void aBranch() {
        branch = world.branch();
    }

    private MvcTestResult page(String address) {
        return pages.get(branch.projectManager(), address);
    }

    @Test
    void thePageSaysFirstWhatIsMissing() {
        UUID project = fixture.aHomeRoof().named("Alder home").in(branch).build();

        assertThat(page("/projects/" + project))
                .hasStatus(200)
                .bodyText()
                .containsPattern("Alder home: \\d+ items of \\d+ missing for signed")
                .contains("aria-current=\"step\"")
                .contains("Acts next:");
    }

    @Test
    void thePageTakesFewQueriesAtEveryStageHoweverLongTheJournal() {
        page("/projects/" + fixture.aHomeRoof().in(branch).build());
        for (int reached = 0; reached <= Stage.values().length; reached++) {
            var project = fixture.aHomeRoof().in(branch);
            UUID id = (reached == 0 ? project : project.reached(Stage.values()[reached - 1])).build();

            List<String> selects = Queries.during(() -> page("/projects/" + id)).selects();

            assertThat(selects).as("after " + reached + " stages").hasSizeLessThanOrEqualTo(MOST_QUERIES);
        }
    }

    @Test
    void theJournalIsSoundUntilSomebodyRewritesALine() {
        UUID project = fixture.aHomeRoof().in(branch).reached(Stage.SIGNED).build();
        assertThat(page("/projects/" + project + "/journal/check"))
                .bodyText()
                .containsPattern("All \\d+ lines are as they were written");

        world.as(
                branch.manager(),
                () -> transaction.executeWithoutResult(status -> {
                    jdbc.sql("alter table project_journal disable trigger user").update();
                    jdbc.sql(
                                    "update project_journal set sentence = sentence || '!' where project_id = ? and number = 2")
                            .param(project)
                            .update();
                    jdbc.sql("alter table project_journal enable trigger user").update();
                }));

        assertThat(page("/projects/" + project + "/journal/check"))
                .bodyText()
                .contains("Line 2 is not as it was written", "What it says now is not what was written.");
    }

    @Test
    void theJournalLeavesTheHouseAsATableWithoutFormulas() throws Exception {
        UUID project = fixture.aHomeRoof().in(branch).build();
        MvcTestResult taken = page("/projects/" + project + "/journal/export");

        assertThat(taken.getResponse().getContentType()).startsWith("text/csv");
        assertThat(taken.getResponse().getContentAsString())
                .contains("line,at,by,kind,sentence,facts")
                .contains("project.opened");
    }

    @Test
    void anotherBranchsProjectIsNotThere() {
        UUID project = fixture.aHomeRoof().in(branch).build();
        TestBranch other = world.branch();
        assertThat(mvc.get().uri("/projects/{id}", project).with(world.signedIn(other.manager())))
                .hasStatus(404);
    }
}
