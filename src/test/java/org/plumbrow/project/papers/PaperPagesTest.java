package org.plumbrow.project.papers;

import static org.assertj.core.api.Assertions.assertThat;
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
import org.plumbrow.evidence.EvidenceFacts;
import org.plumbrow.evidence.MadeUpPhoto;
import org.plumbrow.project.ProjectFixture;
import org.plumbrow.web.Visitor;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.mock.web.MockMultipartFile;
import org.springframework.test.web.servlet.assertj.MockMvcTester;
import org.springframework.test.web.servlet.assertj.MvcTestResult;
import org.springframework.transaction.support.TransactionTemplate;

/** The papers of a project: brought, looked at, hidden and shown again. */
@PlumbrowTest
class PaperPagesTest {

    @Autowired
    TestWorld world;

    @Autowired
    TestPages pages;

    @Autowired
    ProjectFixture fixture;

    @Autowired
    ProjectPapers papers;

    @Autowired
    MockMvcTester mvc;

    @Autowired
    JdbcClient jdbc;

    @Autowired
    TransactionTemplate transaction;

    private TestBranch branch;
    private UUID project;

    @BeforeEach
    void aProject() {
        branch = world.branch();
        project = fixture.aHomeRoof().in(branch).build();
    }

    private MvcTestResult bring(String name, byte[] bytes) {
        return mvc.post()
                .uri("/projects/{id}/papers", project)
                .multipart()
                .file(new MockMultipartFile("file", name, null, bytes))
                .param("caption", "Roof from the north")
                .with(world.signedIn(branch.designer()))
                .with(csrf())
                .exchange();
    }

    private MvcTestResult get(Visitor who, String path, Object... values) {
        return mvc.get().uri(path, values).with(world.signedIn(who)).exchange();
    }

    private List<String> texts(String sql, UUID id) {
        return world.as(
                branch.manager(),
                () -> transaction.execute(
                        status -> jdbc.sql(sql).param(id).query(String.class).list()));
    }

    private EvidenceFacts brought() {
        bring("roof.jpg", MadeUpPhoto.plain());
        return world.as(branch.manager(), () -> papers.of(project)).get(0);
    }

    @Test
    void aPhotoIsBroughtSeenAndStandsInTheJournal() {
        EvidenceFacts photo = brought();
        assertThat(get(branch.designer(), "/projects/{id}/papers", project))
                .hasStatusOk()
                .bodyText()
                .contains("Alder Lane 12: 1 paper")
                .contains("Roof from the north")
                .contains(photo.thumbnailHref());
        assertThat(get(branch.designer(), "/projects/{id}/papers/{paper}", project, photo.id()))
                .hasStatusOk()
                .bodyText()
                .contains(photo.href());
        assertThat(get(branch.designer(), photo.href())).hasStatusOk();
        assertThat(texts("select sentence from project_journal where project_id = ? and kind = 'paper.added'", project))
                .containsExactly("Kept: a photo.");
    }

    @Test
    void aFileThatCannotBeKeptIsRefusedInWords() {
        assertThat(bring("roof.heic", "\0\0\0\u0018ftypheic\0\0\0\0".getBytes()))
                .hasStatus(422)
                .bodyText()
                .contains("most compatible")
                .contains("value=\"Roof from the north\"");
        assertThat(pages.post(branch.designer(), "/projects/" + project + "/papers"))
                .hasStatus(422)
                .bodyText()
                .contains("Choose the file first.");
    }

    @Test
    void whatIsHiddenIsSeenOnlyByWhoCanShowItAgain() {
        EvidenceFacts photo = brought();
        String one = "/projects/" + project + "/papers/" + photo.id();
        assertThat(pages.post(branch.projectManager(), one + "/hide"))
                .hasStatus(422)
                .bodyText()
                .contains("Write the reason");
        assertThat(pages.post(branch.projectManager(), one + "/hide", "reason", "A face in it."))
                .hasRedirectedUrl("/projects/" + project + "/papers");
        assertThat(get(branch.designer(), "/projects/{id}/papers", project))
                .bodyText()
                .contains("no papers yet");
        assertThat(get(branch.designer(), one)).hasStatus(404);
        assertThat(get(branch.designer(), photo.href())).hasStatus(404);
        assertThat(get(branch.projectManager(), one)).hasStatusOk().bodyText().contains("Show it again");
        pages.post(branch.projectManager(), one + "/show");
        assertThat(get(branch.designer(), photo.href())).hasStatusOk();
    }

    @Test
    void anotherBranchsPapersAreNotThere() {
        EvidenceFacts photo = brought();
        TestBranch other = world.branch();
        assertThat(get(other.manager(), photo.href())).hasStatus(404);
        assertThat(get(other.manager(), "/projects/{id}/papers", project)).hasStatus(404);
    }

    @Test
    void manyPapersTakeAsManyQueriesAsOne() {
        brought();
        int one = Queries.count(() -> get(branch.projectManager(), "/projects/{id}/papers", project));
        for (int n = 0; n < 5; n++) {
            brought();
        }
        assertThat(Queries.count(() -> get(branch.projectManager(), "/projects/{id}/papers", project)))
                .isEqualTo(one);
    }

    @Test
    void theBranchDecidesWhetherThePlaceIsKept() {
        var save = mvc.post()
                .uri("/settings/evidence")
                .param("keepsPhotoPlace", "true")
                .param("version", "0")
                .with(world.signedIn(branch.manager()))
                .with(csrf());
        assertThat(save.exchange()).hasRedirectedUrl("/settings/evidence");
        assertThat(get(branch.manager(), "/settings/evidence")).bodyText().contains("checked");
        assertThat(texts(
                        "select was || ' → ' || now from branch_change where branch_id = ? and thing = 'photos'",
                        branch.id()))
                .containsExactly("not kept → kept");
        assertThat(pages.post(branch.manager(), "/settings/evidence", "version", "0"))
                .hasStatus(409);
    }
}
