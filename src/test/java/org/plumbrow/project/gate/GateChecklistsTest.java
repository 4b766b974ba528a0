package org.plumbrow.project.gate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;

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
import org.springframework.transaction.support.TransactionTemplate;

/** A branch makes the checklists its own, and none of it weaker where somebody could be hurt. */
@PlumbrowTest
class GateChecklistsTest {

    @Autowired
    TestWorld world;

    @Autowired
    TestPages pages;

    @Autowired
    ProjectFixture fixture;

    @Autowired
    Gates gates;

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

    private MockMvcTester.MockMvcRequestBuilder post(String path) {
        return mvc.post().uri(path).with(world.signedIn(branch.manager())).with(csrf());
    }

    private <T> T sql(java.util.function.Supplier<T> read) {
        return world.as(branch.manager(), () -> transaction.execute(status -> read.get()));
    }

    @Test
    void aChangedItemIsAskedInItsNewWordsAndStandsInTheChangeLog() {
        UUID project = fixture.aHomeRoof().in(branch).build();
        assertThat(post("/settings/gates/items/installed.9")
                        .param("version", "0")
                        .param("words", "Bonding, every rail")
                        .param("low", "")
                        .param("high", "0.5")
                        .param("required", "true")
                        .param("asked", "true")
                        .exchange())
                .hasRedirectedUrl("/settings/gates");
        AskedItem asked = world.as(
                        branch.manager(),
                        () -> gates.view(project, Stage.INSTALLED).item("installed.9"))
                .asked();
        assertThat(asked.words()).isEqualTo("Bonding, every rail");
        assertThat(asked.limits()).isEqualTo("at most 0.5 Ω");
        assertThat(sql(() -> jdbc.sql(
                                "select field || ': ' || was || ' → ' || now from branch_change where branch_id = ? order by field")
                        .param(branch.id())
                        .query(String.class)
                        .list()))
                .containsSubsequence("At most: 1 → 0.5", "Words: Bonding continuity → Bonding, every rail");
        assertThat(pages.get(branch.manager(), "/settings/gates"))
                .hasStatusOk()
                .bodyText()
                .contains("136 items, 1 changed or added")
                .contains("Bonding, every rail");
    }

    @Test
    void aSafetyItemStaysAskedRequiredAndAsStrict() {
        assertThat(post("/settings/gates/items/installed.11")
                        .param("version", "0")
                        .param("words", "Insulation")
                        .param("low", "1")
                        .param("required", "true")
                        .exchange())
                .hasStatus(422)
                .bodyText()
                .contains("every branch asks for it");
        assertThat(post("/settings/gates/items/installed.11")
                        .param("version", "0")
                        .param("words", "Insulation")
                        .param("low", "1")
                        .param("asked", "true")
                        .exchange())
                .hasStatus(422)
                .bodyText()
                .contains("it stays required");
        assertThat(post("/settings/gates/items/installed.11")
                        .param("version", "0")
                        .param("words", "Insulation")
                        .param("low", "0.5")
                        .param("required", "true")
                        .param("asked", "true")
                        .exchange())
                .hasStatus(422)
                .bodyText()
                .contains("The limits of this item may be narrower than at least 1 MΩ, not wider.")
                .contains("value=\"0.5\"");
        assertThat(post("/settings/gates/items/installed.11")
                        .param("version", "0")
                        .param("words", "Insulation")
                        .param("low", "2")
                        .param("required", "true")
                        .param("asked", "true")
                        .exchange())
                .hasStatus3xxRedirection();
    }

    @Test
    void aBranchAddsAnItemOfItsOwn() {
        UUID roof = fixture.aHomeRoof().in(branch).build();
        UUID field = fixture.aDairyGroundMount().in(branch).build();
        assertThat(post("/settings/gates/installed/new")
                        .param("words", "Rows look straight")
                        .param("kinds", "PHOTO", "READING")
                        .param("unit", "in")
                        .param("high", "2")
                        .param("sites", "GROUND_MOUNT")
                        .param("duty", "PERSON_IN_CHARGE")
                        .param("required", "true")
                        .param("asked", "true")
                        .exchange())
                .hasStatus3xxRedirection();
        ItemView asked = world.as(
                branch.manager(), () -> gates.view(field, Stage.INSTALLED).item("installed.101"));
        assertThat(asked.asked().words()).isEqualTo("Rows look straight");
        assertThat(asked.asked().kinds()).containsExactly(AnswerKind.READING, AnswerKind.PHOTO);
        assertThat(asked.isMissing()).isTrue();
        assertThat(world.as(branch.manager(), () -> gates.view(roof, Stage.INSTALLED))
                        .items())
                .extracting(ItemView::code)
                .doesNotContain("installed.101");
        assertThat(post("/settings/gates/installed/new")
                        .param("words", "Nothing given")
                        .param("duty", "DESIGNER")
                        .exchange())
                .hasStatus(422)
                .bodyText()
                .contains("Choose what somebody gives here: at least one.")
                .contains("Nothing given");
    }

    @Test
    void theListOfProjectsHearsOfIt() {
        UUID project = fixture.aHomeRoof().in(branch).build();
        int before = missing(project);
        post("/settings/gates/items/signed.13")
                .param("version", "0")
                .param("words", "Loads")
                .param("required", "true")
                .exchange();
        await().untilAsserted(() -> assertThat(missing(project)).isEqualTo(before - 1));
    }

    private int missing(UUID project) {
        return sql(() -> jdbc.sql("select missing from project_line where project_id = ?")
                .param(project)
                .query(Integer.class)
                .single());
    }

    @Test
    void twoManagersAtOneItemReadBoth() {
        post("/settings/gates/items/signed.13")
                .param("version", "0")
                .param("words", "Loads named")
                .param("required", "true")
                .param("asked", "true")
                .exchange();
        assertThat(post("/settings/gates/items/signed.13")
                        .param("version", "0")
                        .param("words", "Loads listed")
                        .param("required", "true")
                        .param("asked", "true")
                        .exchange())
                .hasStatus(409)
                .bodyText()
                .contains("Theirs: Loads named")
                .contains("Yours: Loads listed");
    }

    @Test
    void anotherBranchKeepsItsOwn() {
        post("/settings/gates/items/signed.13")
                .param("version", "0")
                .param("words", "Loads named")
                .param("required", "true")
                .param("asked", "true")
                .exchange();
        TestBranch other = world.branch();
        UUID project = fixture.aHomeRoof().in(other).build();
        assertThat(world.as(other.manager(), () -> gates.view(project, Stage.SIGNED))
                        .item("signed.13")
                        .asked()
                        .words())
                .isEqualTo("Loads that must not stop are named");
    }

    @Test
    void theWholeListTakesOneQuery() {
        assertThat(Queries.during(() -> pages.get(branch.manager(), "/settings/gates")).selects().stream()
                        .filter(select -> select.contains("gate_template_item"))
                        .toList())
                .isEqualTo(List.of("select * from gate_template_item where branch_id = ?"));
    }
}
