package org.plumbrow.project.gate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;

import java.nio.charset.StandardCharsets;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.plumbrow.PlumbrowTest;
import org.plumbrow.Queries;
import org.plumbrow.TestWorld;
import org.plumbrow.TestWorld.TestBranch;
import org.plumbrow.evidence.MadeUpPhoto;
import org.plumbrow.project.ProjectFixture;
import org.plumbrow.project.Stage;
import org.plumbrow.web.Visitor;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.mock.web.MockMultipartFile;
import org.springframework.test.web.servlet.assertj.MockMvcTester;
import org.springframework.test.web.servlet.assertj.MvcTestResult;

/** What people read and do on the pages of the gates. */
@PlumbrowTest
class GatePagesTest {

    @Autowired
    TestWorld world;

    @Autowired
    ProjectFixture fixture;

    @Autowired
    GateRoad road;

    @Autowired
    Gates gates;

    @Autowired
    GateAnswers answers;

    @Autowired
    MockMvcTester mvc;

    private TestBranch branch;
    private UUID project;

    @BeforeEach
    void aDairyInSurvey() {
        branch = world.branch();
        project = fixture.aDairyGroundMount().in(branch).reached(Stage.SIGNED).build();
    }

    private MvcTestResult get(String path, Object... values) {
        return mvc.get()
                .uri(path, values)
                .with(world.signedIn(branch.projectManager()))
                .exchange();
    }

    private MockMvcTester.MockMvcRequestBuilder post(Visitor who, String path, Object... values) {
        return mvc.post().uri(path, values).with(world.signedIn(who)).with(csrf());
    }

    private ItemView item(String code) {
        return world.as(
                branch.manager(),
                () -> gates.view(project, AskedItem.stageOf(code)).item(code));
    }

    @Test
    void theHeadingSaysHowManyItemsAreMissing() {
        assertThat(get("/projects/{id}/gate", project))
                .hasStatusOk()
                .bodyText()
                .contains("The gate to surveyed: 16 of 17 items are missing")
                .contains("Meter number equals the contract’s")
                .contains("/gate-items/surveyed.7");
    }

    @Test
    void anAnsweredGateSaysThatItIsOpen() {
        road.answerAll(branch, project, Stage.SURVEYED);
        assertThat(get("/projects/{id}/gate", project))
                .bodyText()
                .contains("surveyed: nothing is missing")
                .contains("/gates/surveyed/pass");
        assertThat(get("/projects/{id}/gates/surveyed/pass", project))
                .hasStatusOk()
                .bodyText()
                .contains("The stage moves from Signed to Surveyed.");
    }

    @Test
    void aPhotoIsKeptInOneForm() {
        MvcTestResult saved = mvc.post()
                .uri("/projects/{id}/gate-items/surveyed.7", project)
                .multipart()
                .file(new MockMultipartFile("photo", "bond.jpg", "image/jpeg", MadeUpPhoto.plain()))
                .param("version", "0")
                .with(world.signedIn(branch.projectManager()))
                .with(csrf())
                .exchange();
        assertThat(saved).hasStatus3xxRedirection().hasRedirectedUrl("/projects/" + project + "/gates/surveyed");
        assertThat(item("surveyed.7").state()).isEqualTo(ItemState.DONE);
        assertThat(get("/projects/{id}/gate-items/surveyed.7", project))
                .bodyText()
                .contains("bond.jpg")
                .contains("/thumbnail");
    }

    @Test
    void aWordInAReadingIsStillThereAndTheMessageIsAtTheField() {
        MvcTestResult page = post(branch.projectManager(), "/projects/{id}/gate-items/surveyed.16", project)
                .param("version", "0")
                .param("reading", "far")
                .param("label", "array to meter")
                .exchange();
        assertThat(page)
                .hasStatus(422)
                .bodyText()
                .contains("value=\"far\"")
                .contains("value=\"array to meter\"")
                .contains("Write the reading as a number in ft, for example 12.5.");
    }

    @Test
    void aPhotoOutlivesARefusedReading() {
        MvcTestResult page = mvc.post()
                .uri("/projects/{id}/gate-items/surveyed.14", project)
                .multipart()
                .file(new MockMultipartFile("photo", "gate.jpg", "image/jpeg", MadeUpPhoto.plain()))
                .param("version", "0")
                .param("reading", "wide")
                .with(world.signedIn(branch.projectManager()))
                .with(csrf())
                .exchange();
        assertThat(page)
                .hasStatus(422)
                .bodyText()
                .contains("One photo is kept already")
                .contains("name=\"photoId\"");
    }

    @Test
    void aFileOfAnotherKindIsRefusedAtItsField() {
        MvcTestResult page = mvc.post()
                .uri("/projects/{id}/gate-items/surveyed.7", project)
                .multipart()
                .file(new MockMultipartFile(
                        "photo", "notes.docx", "application/x", "PK\0\1".getBytes(StandardCharsets.ISO_8859_1)))
                .param("version", "0")
                .with(world.signedIn(branch.projectManager()))
                .with(csrf())
                .exchange();
        assertThat(page).hasStatus(422).bodyText().contains("neither a JPEG or PNG picture");
    }

    @Test
    void aReadingOutsideItsLimitsIsKeptAskedAboutAndExplained() {
        post(branch.projectManager(), "/projects/{id}/gate-items/surveyed.14", project)
                .param("version", "0")
                .param("reading", "7 ft")
                .exchange();
        assertThat(get("/projects/{id}/gate-items/surveyed.14", project))
                .bodyText()
                .contains("7 ft is outside at least 8 ft. Explain it. It is kept.")
                .contains("value=\"7\"");
        post(branch.projectManager(), "/projects/{id}/gate-items/surveyed.14", project)
                .param("version", "1")
                .param("reading", "7")
                .param("explanation", "The fence comes off.")
                .exchange();
        ItemView item = item("surveyed.14");
        assertThat(item.state()).isEqualTo(ItemState.PARTLY);
        assertThat(item.sentence()).isEqualTo("Missing: photo");
        assertThat(item.answer().parts())
                .singleElement()
                .extracting(AnswerPart::note)
                .isEqualTo("The fence comes off.");
    }

    @Test
    void theSecondOfTwoReadsTheirsBesideTheirOwn() {
        post(branch.manager(), "/projects/{id}/gate-items/surveyed.16", project)
                .param("version", "0")
                .param("reading", "120")
                .exchange();
        MvcTestResult late = post(branch.projectManager(), "/projects/{id}/gate-items/surveyed.16", project)
                .param("version", "0")
                .param("reading", "140")
                .exchange();
        assertThat(late)
                .hasStatus(409)
                .bodyText()
                .contains("Theirs: 120")
                .contains("Yours: 140")
                .contains("name=\"version\" value=\"1\"");
        assertThat(post(branch.projectManager(), "/projects/{id}/gate-items/surveyed.16", project)
                        .param("version", "1")
                        .param("reading", "140")
                        .exchange())
                .hasStatus3xxRedirection();
        assertThat(item("surveyed.16").answer().parts())
                .singleElement()
                .satisfies(part -> assertThat(part.number()).isEqualByComparingTo("140"));
    }

    @Test
    void aSignatureIsTypedOrDrawn() {
        String png = "data:image/png;base64," + java.util.Base64.getEncoder().encodeToString(png());
        assertThat(post(branch.projectManager(), "/projects/{id}/gate-items/surveyed.21", project)
                        .param("version", "0")
                        .param("signerName", "Runa Oake")
                        .param("date", "2027-02-26")
                        .param("drawing", png)
                        .exchange())
                .hasStatus3xxRedirection();
        assertThat(get("/projects/{id}/gate-items/surveyed.21", project))
                .bodyText()
                .contains("Runa Oake");
        assertThat(post(branch.projectManager(), "/projects/{id}/gate-items/surveyed.21", project)
                        .param("version", "1")
                        .param("drawing", png)
                        .exchange())
                .hasStatus(422)
                .bodyText()
                .contains("Write the name of the person who signs.");
    }

    private static byte[] png() {
        try (var out = new java.io.ByteArrayOutputStream()) {
            javax.imageio.ImageIO.write(
                    new java.awt.image.BufferedImage(60, 20, java.awt.image.BufferedImage.TYPE_INT_RGB), "png", out);
            return out.toByteArray();
        } catch (java.io.IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }

    @Test
    void aClosedGateIsNotPassedAndNamesWhatIsMissing() {
        MvcTestResult shut = post(branch.projectManager(), "/projects/{id}/gates/surveyed/pass", project)
                .param("reachedOn", "2027-03-01")
                .exchange();
        assertThat(shut)
                .hasStatus(422)
                .bodyText()
                .contains("The gate to surveyed stays shut: 16 items are missing.")
                .contains("Enough to draw (Tamsin, for surveyor)");
    }

    @Test
    void anOpenGateIsPassedAndGoneBackThrough() {
        road.answerAll(branch, project, Stage.SURVEYED);
        assertThat(post(branch.projectManager(), "/projects/{id}/gates/surveyed/pass", project)
                        .param("reachedOn", "2027-03-01")
                        .exchange())
                .hasRedirectedUrl("/projects/" + project + "/gate");
        assertThat(get("/projects/{id}/gates/surveyed", project))
                .bodyText()
                .contains("The gate to surveyed has been passed")
                .contains("by Tamsin");
        assertThat(post(branch.projectManager(), "/projects/{id}/go-back", project)
                        .param("to", "SIGNED")
                        .param("reason", "")
                        .exchange())
                .hasStatus(422)
                .bodyText()
                .contains("Write the reason");
        assertThat(post(branch.projectManager(), "/projects/{id}/go-back", project)
                        .param("to", "SIGNED")
                        .param("reason", "The meter was changed.")
                        .exchange())
                .hasStatus3xxRedirection();
        assertThat(get("/projects/{id}/gate", project)).bodyText().contains("surveyed: nothing is missing");
    }

    @Test
    void aDateThatIsNoneIsRefusedAtItsField() {
        assertThat(post(branch.projectManager(), "/projects/{id}/gates/surveyed/pass", project)
                        .param("reachedOn", "soon")
                        .exchange())
                .hasStatus(422)
                .bodyText()
                .contains("Choose the day as people count it, today or earlier.");
    }

    @Test
    void whoMustNotAnswerReadsWhoMay() {
        assertThat(post(branch.designer(), "/projects/{id}/gate-items/signed.16", project)
                        .param("version", "0")
                        .param("confirmed", "true")
                        .exchange())
                .hasStatus(403)
                .bodyText()
                .contains("Branch managers and project managers may do this.");
        assertThat(post(branch.designer(), "/projects/{id}/gate-items/surveyed.9", project)
                        .param("version", "0")
                        .param("confirmed", "true")
                        .exchange())
                .hasStatus3xxRedirection();
    }

    @Test
    void theSamePageTakesAsManyQueriesWithEveryItemAnswered() {
        int before = Queries.count(() -> get("/projects/{id}/gates/surveyed", project));
        road.answerAll(branch, project, Stage.SURVEYED);
        int after = Queries.count(() -> get("/projects/{id}/gates/surveyed", project));
        assertThat(after).isEqualTo(before).isLessThanOrEqualTo(18);
    }
}
