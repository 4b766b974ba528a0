package org.plumbrow.status.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.UUID;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.plumbrow.PlumbrowTest;
import org.plumbrow.Queries;
import org.plumbrow.TestPages;
import org.plumbrow.TestWorld;
import org.plumbrow.TestWorld.TestBranch;
import org.plumbrow.evidence.Keeping;
import org.plumbrow.evidence.MadeUpPhoto;
import org.plumbrow.evidence.Upload;
import org.plumbrow.notice.NoticeKind;
import org.plumbrow.notice.Outbox;
import org.plumbrow.project.Duty;
import org.plumbrow.project.JournalLine;
import org.plumbrow.project.JournalReader;
import org.plumbrow.project.NewProject;
import org.plumbrow.project.ProjectCustomers;
import org.plumbrow.project.ProjectFixture;
import org.plumbrow.project.papers.ProjectPapers;
import org.plumbrow.status.StatusFixture;
import org.plumbrow.web.Visitor;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.web.servlet.assertj.MockMvcTester;
import org.springframework.test.web.servlet.assertj.MvcTestResult;

/** The branch's side of the customer's page, as a project manager clicks through it. */
@PlumbrowTest
class DeskPagesTest {

    @Autowired
    MockMvcTester mvc;

    @Autowired
    TestWorld world;

    @Autowired
    TestPages pages;

    @Autowired
    ProjectFixture projects;

    @Autowired
    StatusFixture status;

    @Autowired
    ProjectPapers papers;

    @Autowired
    JournalReader journal;

    @Autowired
    Outbox outbox;

    @Autowired
    ProjectCustomers customers;

    private TestBranch branch;
    private UUID project;
    private UUID contact;
    private Visitor pm;

    @BeforeEach
    void aProject() {
        branch = world.branch();
        pm = branch.projectManager();
        project = projects.aDairyGroundMount().in(branch).build();
        contact = status.contact(branch, project);
    }

    private MvcTestResult get(String suffix) {
        return pages.get(pm, "/projects/" + project + "/customer" + suffix);
    }

    private MvcTestResult post(String suffix, String... fields) {
        return pages.post(pm, "/projects/" + project + "/customer" + suffix, fields);
    }

    private static Document page(MvcTestResult answer) {
        assertThat(answer).hasStatusOk();
        return TestPages.read(answer);
    }

    private JournalLine lastLine() {
        return world.as(pm, () -> journal.newest(project, 1)).get(0);
    }

    private UUID photo() {
        Keeping kept = world.as(
                pm, () -> papers.keep(project, new Upload("DSC_0042.jpg", MadeUpPhoto.jpeg(200, 140), "North wall")));
        return ((Keeping.Kept) kept).evidence().id();
    }

    @Test
    void theProjectLeadsToThePageAndThePageSaysWhatTheCustomerIsNotTold() {
        assertThat(mvc.get().uri("/projects/" + project).with(world.signedIn(pm)))
                .bodyText()
                .contains("/projects/" + project + "/customer");
        Document page = page(get(""));
        assertThat(page.select("h1").text()).isEqualTo("The customer has no link to the own page yet");
        assertThat(page.text())
                .contains("Nobody at the customer’s side has a link.")
                .contains("Somebody whom the customer may call has no number on the page.")
                .contains("The page does not say where the shut-off is.");
    }

    @Test
    void aLinkIsMadeOpenedCountedAndEnded() {
        assertThat(post("/links/" + contact)).hasStatus(302);
        Document link = page(get("/links/" + contact));
        String path = link.select("a:has(code)").attr("href");
        assertThat(path).matches("/s/[0-9a-z]{32}");
        assertThat(link.select("code").text()).endsWith(path).startsWith("http");
        assertThat(lastLine().sentence()).isEqualTo("Private link to the customer's page made.");
        assertThat(lastLine().toString()).doesNotContain(path.substring(3)).doesNotContain("Perrin");
        assertThat(page(get("")).select("h1").text())
                .isEqualTo("The customer has a link and has not opened the page yet");
        mvc.get().uri(path).exchange();
        mvc.get().uri(path).exchange();
        Document opened = page(get(""));
        assertThat(opened.select("h1").text()).isEqualTo("The customer opened the page last on Mon, Mar 1, 9:00 am");
        assertThat(opened.text()).contains("Mon, Mar 1 2 times");
        assertThat(post("/links/" + contact + "/end")).hasStatus(302);
        assertThat(mvc.get().uri(path)).hasStatus(404);
        assertThat(lastLine().sentence()).isEqualTo("Private link to the customer's page ended.");
    }

    @Test
    void aPreviewIsNotCountedAndAnswersNothing() {
        post("/links/" + contact);
        Document preview = page(get("/preview"));
        assertThat(preview.select("h1").text()).isEqualTo("We are getting your project ready.");
        assertThat(preview.select("form")).isEmpty();
        assertThat(preview.text()).contains("Here nothing can be answered");
        assertThat(page(get("")).text()).contains("has not opened the page yet");
    }

    @Test
    void theLinkGoesOutByLetterAndALaterOneOvertakesIt() {
        post("/links/" + contact + "/send");
        assertThat(letters()).as("no link, no letter").isEmpty();
        post("/links/" + contact);
        assertThat(post("/links/" + contact + "/send")).hasStatus(302);
        assertThat(letters())
                .singleElement()
                .satisfies(letter -> assertThat(letter).contains("Perrin Ash", "perrin@ash.example"));
    }

    private List<String> letters() {
        return world.as(pm, () -> outbox.ofProject(project)).stream()
                .filter(line -> line.kind() == NoticeKind.CUSTOMER)
                .map(Object::toString)
                .toList();
    }

    @Test
    void whatIsWrittenStandsOnTheCustomersPageAndTheJournalQuotesNothing() {
        UUID photo = photo();
        assertThat(post(
                        "/words",
                        "shutOffPlace",
                        "Gray box on the north wall",
                        "shutOffPhoto",
                        photo.toString(),
                        "message",
                        "Mind the dog",
                        "version",
                        "0"))
                .hasStatus(302);
        Document seen = page(get("/preview"));
        assertThat(seen.text()).contains("Gray box on the north wall").contains("Mind the dog");
        assertThat(seen.select("figure img").attr("alt")).isEqualTo("Photo of the shut-off");
        assertThat(lastLine().sentence())
                .isEqualTo("Customer's page changed: where the shut-off is, its photo, message.");
        assertThat(lastLine().toString()).doesNotContain("Gray").doesNotContain("dog");
    }

    @Test
    void wordsThatDoNotFitAreStillThereAndTheMessageIsAtTheField() {
        assertThat(post("/words", "shutOffPlace", "x".repeat(301), "message", "Hello", "version", "0"))
                .hasStatus(422)
                .bodyText()
                .contains("300 characters fit; 301 are written.")
                .contains("x".repeat(301))
                .contains("Hello");
        assertThat(post("/words", "shutOffPlace", "", "shutOffPhoto", photo().toString(), "version", "0"))
                .hasStatus(422)
                .bodyText()
                .contains("Write where it is, too");
        assertThat(post("/words", "shutOffPlace", "Wall", "shutOffPhoto", "no photo", "version", "0"))
                .hasStatus(422);
        UUID elsewhere = projects.aHomeRoof().in(branch).build();
        UUID foreign = world.as(
                pm,
                () -> ((Keeping.Kept) papers.keep(elsewhere, new Upload("a.jpg", MadeUpPhoto.jpeg(90, 90), "")))
                        .evidence()
                        .id());
        assertThat(post("/words", "shutOffPlace", "Wall", "shutOffPhoto", foreign.toString(), "version", "0"))
                .as("a photo of another project")
                .hasStatus(422);
    }

    @Test
    void anEditOverANewerOneShowsTheirsBesideYours() {
        assertThat(post("/words", "shutOffPlace", "North wall", "message", "", "version", "0"))
                .hasStatus(302);
        assertThat(post("/words", "shutOffPlace", "South wall", "message", "", "version", "0"))
                .hasStatus(409)
                .bodyText()
                .contains("Theirs: North wall", "Yours: South wall", "name=\"version\" value=\"1\"");
    }

    @Test
    void aNumberIsWrittenOnceAndStandsOnEveryPageOfThatPerson() {
        UUID other = projects.aHomeRoof().in(branch).build();
        assertThat(post("/phone/project-manager", "phone", "call me", "version", "0"))
                .hasStatus(422)
                .bodyText()
                .contains("value=\"call me\"")
                .contains("Write the phone number in digits");
        assertThat(post("/phone/project-manager", "phone", "555-555-0142", "version", "0"))
                .hasStatus(302);
        assertThat(post("/phone/project-manager", "phone", "555-555-0199", "version", "0"))
                .hasStatus(409)
                .bodyText()
                .contains("Theirs: 555-555-0142");
        project = other;
        Document seen = page(get("/preview"));
        assertThat(seen.select(".one a[href^=tel]").attr("href")).isEqualTo("tel:5555550142");
        assertThat(seen.text()).contains("Tamsin, runs your project: 555-555-0142");
    }

    @Test
    void peopleWithOtherDutiesAreNotNamedToTheCustomer() {
        UUID with = projects.aHomeRoof()
                .in(branch)
                .inCharge(Duty.DESIGNER, branch.designer().personId(), "Dovrefjell")
                .build();
        project = with;
        assertThat(page(get("/preview")).text()).doesNotContain("Dovrefjell");
        assertThat(get("/phone/designer")).hasStatus(404);
        assertThat(get("/phone/person-in-charge")).hasStatus(404);
    }

    @Test
    void aPaperIsSharedUnderATitleOfItsOwnAndTakenBackAndUndone() {
        UUID photo = photo();
        assertThat(page(get("/papers")).text()).contains("DSC_0042.jpg").contains("not shared");
        assertThat(post("/papers/" + photo, "title", " "))
                .hasStatus(422)
                .bodyText()
                .contains("Write what the customer reads as its name");
        assertThat(post("/papers/" + photo, "title", "Your north wall")).hasStatus(302);
        assertThat(lastLine().sentence()).isEqualTo("Shared with the customer: a photo.");
        assertThat(page(get("/preview")).select("#papers ~ ul").text()).contains("Your north wall (photo, 0.1 MB)");
        assertThat(page(get("/preview")).text()).doesNotContain("DSC_0042");
        assertThat(mvc.get().uri("/projects/" + project + "/journal").with(world.signedIn(pm)))
                .bodyText()
                .contains("/customer/papers/" + photo + "/stop");
        assertThat(post("/papers/" + photo + "/stop")).hasStatus(302);
        assertThat(page(get("/preview")).text()).doesNotContain("Your north wall");
        assertThat(post("/papers/" + photo + "/again")).hasStatus(302);
        assertThat(page(get("/preview")).text()).contains("Your north wall");
        assertThat(get("/shown/1")).hasStatus(302).hasRedirectedUrl("/evidence/" + photo);
    }

    @Test
    void aPaperOfAnotherProjectCannotBeShared() {
        UUID photo = photo();
        project = projects.aHomeRoof().in(branch).build();
        assertThat(post("/papers/" + photo, "title", "A picture")).hasStatus(404);
        assertThat(get("/papers/" + photo)).hasStatus(404);
    }

    @Test
    void aPersonOfAnotherProjectGetsNoLinkHere() {
        project = projects.aHomeRoof().in(branch).build();
        assertThat(post("/links/" + contact)).hasStatus(404);
    }

    @Test
    void thePagesTakeAFixedNumberOfQueries() {
        photo();
        get("");
        int papersBefore = Queries.count(() -> assertThat(get("/papers")).hasStatusOk());
        photo();
        assertThat(Queries.count(() -> assertThat(get("/papers")).hasStatusOk()))
                .isEqualTo(papersBefore);
        int sheetBefore = Queries.count(() -> assertThat(get("")).hasStatusOk());
        assertThat(sheetBefore).isLessThanOrEqualTo(24);
        for (String name : List.of("Marit", "Bram", "Ottilie")) {
            world.as(
                    pm,
                    () -> customers.addContact(
                            project,
                            customers.customer(project).version(),
                            new NewProject.NewContact(name, "herd", "", "", "en", false)));
        }
        assertThat(Queries.count(() -> assertThat(get("")).hasStatusOk())).isEqualTo(sheetBefore);
    }
}
