package org.plumbrow.status.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.UUID;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.plumbrow.PlumbrowTest;
import org.plumbrow.TestClock;
import org.plumbrow.TestWorld;
import org.plumbrow.cutover.CutoverFixture;
import org.plumbrow.cutover.CutoverFixture.Ground;
import org.plumbrow.cutover.OutagePlanning;
import org.plumbrow.cutover.OutageRecords;
import org.plumbrow.cutover.Outages;
import org.plumbrow.evidence.Keeping;
import org.plumbrow.evidence.MadeUpPhoto;
import org.plumbrow.evidence.Upload;
import org.plumbrow.project.Journal;
import org.plumbrow.project.JournalEvent;
import org.plumbrow.project.ProjectCourse;
import org.plumbrow.project.ProjectFixture;
import org.plumbrow.project.Stage;
import org.plumbrow.project.gate.GateAnswers;
import org.plumbrow.project.gate.Gates;
import org.plumbrow.project.gate.ItemView;
import org.plumbrow.project.papers.ProjectPapers;
import org.plumbrow.schedule.ScheduleFixture;
import org.plumbrow.status.CustomerSharing;
import org.plumbrow.status.CustomerTerms;
import org.plumbrow.status.StatusFixture;
import org.plumbrow.web.Visitor;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.test.web.servlet.assertj.MockMvcTester;
import org.springframework.test.web.servlet.assertj.MvcTestResult;

/**
 * Whoever has the link sees what was chosen for them and nothing else: a project is filled with marked words wherever
 * people of the branch write, and none of them, no id and no word of the house comes out again.
 */
@PlumbrowTest
class NothingInternalLeaksTest {

    private static final Pattern ID =
            Pattern.compile("[0-9a-f]{8}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{12}", Pattern.CASE_INSENSITIVE);
    /** What only the house says: none of it is a customer's word. */
    private static final List<String> HOUSE_WORDS = List.of(
            "journal",
            "waive",
            "gate",
            "milestone",
            "lateness",
            "draft",
            "crew 4",
            "capacity",
            "kwh",
            "kw dc",
            "guarantee",
            "price",
            "usd",
            "$",
            "true-up",
            "utility cutover",
            "commissioning",
            "interconnection",
            "remark",
            "reversal",
            "hold point",
            "ve-77");

    @Autowired
    MockMvcTester mvc;

    @Autowired
    TestWorld world;

    @Autowired
    TestClock clock;

    @Autowired
    CutoverFixture cutovers;

    @Autowired
    ProjectFixture projects;

    @Autowired
    ScheduleFixture schedule;

    @Autowired
    StatusFixture status;

    @Autowired
    OutagePlanning planning;

    @Autowired
    OutageRecords records;

    @Autowired
    Outages outages;

    @Autowired
    ProjectCourse course;

    @Autowired
    ProjectPapers papers;

    @Autowired
    CustomerSharing sharing;

    @Autowired
    Journal journal;

    @Autowired
    Gates gates;

    @Autowired
    GateAnswers gateAnswers;

    @Autowired
    JdbcClient jdbc;

    private Ground ground;
    private UUID project;
    private Visitor pm;
    private String link;
    private UUID photo;
    private final List<String> seen = new ArrayList<>();

    @BeforeEach
    void aProjectFullOfMarkedWords() {
        ground = cutovers.ground();
        pm = ground.branch().projectManager();
        projects.aPoultryGroundMount()
                .named("MARKERneighbor farm")
                .in(ground.branch())
                .build();
        project = cutovers.dairy(ground);
        schedule.reach(ground.branch(), project, Stage.PERMITTED, LocalDate.of(2027, 3, 1));
        link = status.link(ground.branch(), project);
        writeMarkedWords();
        photo = paper("MARKERfile.jpg", "MARKERcaption");
        UUID shared = paper("MARKERshared.jpg", "MARKERsharedcaption");
        world.as(pm, () -> {
            assertThat(sharing.change(project, 0, new CustomerTerms("North wall of the barn", photo, "Mind the dog")))
                    .isEmpty();
            assertThat(sharing.share(project, shared, "Picture of the field")).isEmpty();
        });
        schedule.planned(ground.branch());
    }

    private void writeMarkedWords() {
        schedule.inBranch(ground.branch(), () -> {
            journal.append(
                    JournalEvent.of(project, "test.note", "MARKERjournal sentence"), pm.actor(), clock.instant());
            jdbc.sql(
                            "update project_contract set price_usd = 987654, guaranteed_kwh_per_year = 876543 where project_id = ?")
                    .param(project)
                    .update();
            jdbc.sql("update crew set name = 'MARKERcrew' where branch_id = ?")
                    .param(ground.branch().id())
                    .update();
            jdbc.sql(
                            "update utility set must_be_present = 'MARKERpresent', email = 'marker@utility.example' where branch_id = ?")
                    .param(ground.branch().id())
                    .update();
            jdbc.sql(
                            "update project_contact set phone = '555-MARKERphone', email = 'marker@customer.example' where project_id = ?")
                    .param(project)
                    .update();
            return project;
        });
        world.as(ground.branch().manager(), () -> {
            course.weigh(project, course.course(project).version(), 3, "MARKERweight");
            ItemView item = gates.view(project, Stage.INSTALLED).missing().stream()
                    .filter(one -> !one.asked().safety())
                    .findFirst()
                    .orElseThrow();
            assertThat(gateAnswers.waive(project, item.code(), item.version(), "MARKERwaiver"))
                    .isEmpty();
        });
    }

    private UUID paper(String name, String caption) {
        Keeping kept = world.as(pm, () -> papers.keep(project, new Upload(name, MadeUpPhoto.jpeg(200, 140), caption)));
        return ((Keeping.Kept) kept).evidence().id();
    }

    private void look(String address) {
        MvcTestResult answer = mvc.get().uri(address).exchange();
        var response = answer.getResponse();
        StringBuilder all = new StringBuilder();
        response.getHeaderNames()
                .forEach(name -> all.append(name)
                        .append(": ")
                        .append(response.getHeaders(name))
                        .append('\n'));
        boolean text =
                response.getContentType() == null || !response.getContentType().startsWith("image/");
        all.append(text ? new String(response.getContentAsByteArray(), StandardCharsets.UTF_8) : "");
        seen.add(all.toString());
    }

    private void lookAtEverything() {
        look(link);
        look(link + "/power-off.ics");
        look(link + "/shut-off");
        look(link + "/shut-off/small");
        look(link + "/papers/1");
        look(link + "/papers/2");
        seen.add(mvc.post()
                .uri(link + "/answer")
                .exchange()
                .getResponse()
                .getHeaderNames()
                .toString());
    }

    @Test
    void noMarkedWordNoIdAndNoWordOfTheHouseIsInAnyAnswer() {
        lookAtEverything();
        cutovers.booked(ground, project);
        world.as(pm, () -> {
            assertThat(records.utilityTold(project, LocalDate.of(2027, 3, 1), "MARKERtold"))
                    .isEmpty();
            assertThat(records.utilityConfirms(project, "MARKERnumber VE-77")).isEmpty();
            assertThat(records.customerTold(project, LocalDate.of(2027, 3, 1), "MARKERtoldcustomer"))
                    .isEmpty();
            assertThat(records.customerAnswers(project, false, "MARKERnote of a talk on the phone"))
                    .isEmpty();
        });
        lookAtEverything();
        world.as(pm, () -> {
            long version = outages.live(project).orElseThrow().version();
            assertThat(planning.cancel(project, version, "MARKERreason")).isEmpty();
        });
        lookAtEverything();
        world.as(pm, () -> course.hold(project, course.course(project).version(), "MARKERhold", null));
        lookAtEverything();
        assertThat(seen).hasSize(28).allSatisfy(this::isForACustomer);
        assertThat(seen.get(0))
                .contains("North wall of the barn")
                .contains("Mind the dog")
                .contains("Picture of the field");
    }

    private void isForACustomer(String answer) {
        // the calendar entry has a name of its own, made from nothing that can be asked for
        String body = answer.replaceAll("(?m)^UID:.*$", "")
                .replace("//Plumbrow//", "")
                .replace(link, "");
        assertThat(body).doesNotContainIgnoringCase("MARKER").doesNotContain("987654", "987,654", "876543", "876,543");
        assertThat(ID.matcher(body).results().map(found -> found.group()).toList())
                .isEmpty();
        String plain = body.toLowerCase(Locale.ROOT);
        assertThat(HOUSE_WORDS.stream().filter(plain::contains).toList()).isEmpty();
    }

    @Test
    void theNameOfACalendarEntryIsNoIdOfTheHouse() {
        cutovers.booked(ground, project);
        look(link + "/power-off.ics");
        UUID window = world.as(pm, () -> outages.live(project).orElseThrow().id());
        assertThat(seen.get(0))
                .contains("UID:")
                .doesNotContain(
                        window.toString(),
                        project.toString(),
                        ground.branch().id().toString());
    }

    @Test
    void aPaperThatIsNotSharedOrIsHiddenIsNotThere() {
        world.as(
                pm,
                () -> assertThat(papers.hide(project, photo, "MARKERhidden")).isEmpty());
        assertThat(mvc.get().uri(link + "/shut-off")).hasStatus(404);
        assertThat(mvc.get().uri(link)).bodyText().doesNotContain("/shut-off\"").contains("North wall of the barn");
        assertThat(mvc.get().uri(link + "/papers/1")).hasStatusOk();
        assertThat(mvc.get().uri(link + "/papers/2")).hasStatus(404);
        assertThat(mvc.get().uri(link + "/papers/" + photo)).hasStatus(404);
    }

    @Test
    void aFileIsSentUnderItsTitleAndRunsNothing() {
        var response = mvc.get().uri(link + "/papers/1").exchange().getResponse();
        assertThat(response.getHeader("Content-Disposition"))
                .contains("Picture")
                .doesNotContain("MARKER");
        assertThat(response.getHeader("Content-Security-Policy")).contains("sandbox");
        assertThat(response.getHeader("X-Content-Type-Options")).isEqualTo("nosniff");
        assertThat(response.getHeader("Cache-Control")).contains("no-store");
    }
}
