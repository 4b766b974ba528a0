package org.plumbrow.schedule.crewweek;

import static org.assertj.core.api.Assertions.assertThat;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;

import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.UUID;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.plumbrow.PlumbrowTest;
import org.plumbrow.Queries;
import org.plumbrow.TestPages;
import org.plumbrow.TestWorld;
import org.plumbrow.TestWorld.TestBranch;
import org.plumbrow.calc.duration.Skill;
import org.plumbrow.evidence.MadeUpPhoto;
import org.plumbrow.project.ProjectFixture;
import org.plumbrow.project.Stage;
import org.plumbrow.schedule.ScheduleFixture;
import org.plumbrow.web.Visitor;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.mock.web.MockMultipartFile;
import org.springframework.test.web.servlet.assertj.MockMvcTester;
import org.springframework.test.web.servlet.assertj.MvcTestResult;
import org.springframework.transaction.support.TransactionTemplate;

/** The clock stands at Monday, March 1, 2027, 9:00 am. */
@PlumbrowTest
class DailyReportTest {

    @Autowired
    TestWorld world;

    @Autowired
    TestPages pages;

    @Autowired
    ProjectFixture projects;

    @Autowired
    ScheduleFixture schedule;

    @Autowired
    MockMvcTester mvc;

    @Autowired
    JdbcClient jdbc;

    @Autowired
    TransactionTemplate transaction;

    private TestBranch branch;
    private UUID crew;
    private UUID dairy;
    private String page;

    @BeforeEach
    void aCrewOnTheDairy() {
        branch = world.branch();
        crew = schedule.crew(branch, "Crew 1", branch.crewLead().personId(), Skill.values());
        dairy = projects.aDairyGroundMount()
                .named("Sedge Hollow Dairy")
                .in(branch)
                .build();
        schedule.reach(branch, dairy, Stage.PERMITTED, LocalDate.of(2027, 2, 16));
        schedule.planned(branch);
        page = "/crews/" + crew + "/reports/" + dairy + "/2027-03-01";
    }

    private MvcTestResult open(String address, Visitor who) {
        return pages.get(who, address);
    }

    private static Document read(MvcTestResult answer) {
        return TestPages.read(answer);
    }

    private MvcTestResult report(String version, String quantity, String hours, String state) {
        String at = "lines[foundation].";
        return pages.post(
                branch.crewLead(),
                page,
                "version",
                version,
                "people",
                "4",
                "hours",
                "9.5",
                "weather",
                "RAIN",
                "trouble",
                "",
                at + "key",
                "foundation",
                at + "quantity",
                quantity,
                at + "hours",
                hours,
                at + "state",
                state);
    }

    private <T> T stored(String sql, Class<T> type) {
        return world.as(
                branch.manager(),
                () -> transaction.execute(
                        status -> jdbc.sql(sql).param(dairy).query(type).single()));
    }

    private static final String ACTIVITY = " from activity where project_id = ? and key = 'foundation'";

    @Test
    void whatTheLeadReportsIsRecordedOfTheActivityAndTeachesThePace() {
        assertThat(report("-1", "20", "9.5", "")).hasStatus3xxRedirection();
        assertThat(stored("select started_on" + ACTIVITY, LocalDate.class)).isEqualTo("2027-03-01");
        assertThat(stored("select half_days_left" + ACTIVITY, Integer.class)).isGreaterThan(2);
        assertThat(stored("select quantity from finished_work where project_id = ?", Double.class))
                .isEqualTo(20);
        assertThat(stored("select crew_days from finished_work where project_id = ?", Double.class))
                .isBetween(0.9, 1.1);
        assertThat(stored(
                        "select sentence from project_journal where kind = 'report.daily' and project_id = ?",
                        String.class))
                .contains("Daily report of Crew 1 for Mon, Mar 1, 2027")
                .contains("20 posts")
                .contains("4 people, 9.5 hours, rain.");
        assertThat(open("/settings/learned", branch.manager()))
                .hasStatusOk()
                .bodyText()
                .contains("1 pace is learned from finished work", "Sedge Hollow Dairy", "(5 × 45 + 20) ÷ (5 + 1)");
        assertThat(open("/projects/" + dairy + "/schedule/foundation", branch.manager()))
                .bodyText()
                .contains("learned");
    }

    @Test
    void aFinishedActivityIsDoneAndAnEditTakesItBack() {
        assertThat(report("-1", "60", "9.5", "DONE")).hasStatus3xxRedirection();
        assertThat(stored("select finished_on" + ACTIVITY, LocalDate.class)).isEqualTo("2027-03-01");
        assertThat(report("0", "", "", "")).hasStatus(422).bodyText().contains("Write above what was done");
        assertThat(report("0", "30", "4", "")).hasStatus3xxRedirection();
        assertThat(stored("select count(*)" + ACTIVITY + " and finished_on is null", Integer.class))
                .isEqualTo(1);
        assertThat(stored("select quantity from finished_work where project_id = ?", Double.class))
                .isEqualTo(30);
    }

    @Test
    void ofTwoWhoWriteAtOnceTheSecondSeesTheFirsts() {
        assertThat(report("-1", "20", "9.5", "")).hasStatus3xxRedirection();
        assertThat(report("-1", "25", "9.5", "")).hasStatus(409).bodyText().contains("Theirs: 20", "Yours: 25");
        assertThat(stored("select quantity from finished_work where project_id = ?", Double.class))
                .isEqualTo(20);
    }

    @Test
    void hoursAreAskedForAtTheirFieldAndWhatWasTypedStays() {
        MvcTestResult answer = report("-1", "20", "many", "");
        assertThat(answer).hasStatus(422).bodyText().contains("as a number from 0.25 to 24 hours");
        assertThat(read(answer).select("[aria-invalid=true]").val()).isEqualTo("many");
    }

    @Test
    void figuresThatCannotBeAreAskedAboutAtTheirFields() {
        assertThat(report("-1", "600", "9.5", ""))
                .hasStatus(422)
                .bodyText()
                .contains("Write how many posts as a number from 0 to");
        assertThat(report("-1", "20", "9.75", ""))
                .hasStatus(422)
                .bodyText()
                .contains("The works above took 9.75 hours together, more than these 9.5.");
    }

    @Test
    void aDayAheadHasNoPageAndAnOldDayIsOnlyRead() {
        assertThat(open(page.replace("2027-03-01", "2027-03-02"), branch.crewLead()))
                .hasStatus(404);
        MvcTestResult old = open(page.replace("2027-03-01", "2027-02-24"), branch.crewLead());
        assertThat(old).hasStatusOk().bodyText().contains("until the end of Thu, Feb 25");
        assertThat(read(old).select("fieldset[disabled]")).hasSize(1);
        assertThat(open(page.replace("2027-03-01", "2027-02-26"), branch.crewLead()))
                .bodyText()
                .contains("until the end of Mon, Mar 1");
    }

    @Test
    void dayOneIsTickedByNameAndHourAndTakenBack() {
        String dayOne = "/projects/" + dairy + "/day-one";
        assertThat(open(dayOne, branch.crewLead())).bodyText().contains("4 steps are open", "/survey/day-one");
        assertThat(post(dayOne + "/string-line/tick")).hasStatus3xxRedirection();
        assertThat(open(dayOne, branch.crewLead())).bodyText().contains("3 steps are open", "Mon, Mar 1, 9:00 am");
        assertThat(stored(
                        "select sentence from project_journal where kind = 'dayone.ticked' and project_id = ?",
                        String.class))
                .isEqualTo("Day one: String line set.");
        assertThat(post(dayOne + "/string-line/take-back?version=1")).hasStatus3xxRedirection();
        assertThat(post(dayOne + "/string-line/take-back")).hasStatus3xxRedirection();
        assertThat(open(dayOne, branch.crewLead())).bodyText().contains("3 steps are open");
        String version = read(open(dayOne, branch.crewLead()))
                .select("form[action$=string-line/take-back] [name=version]")
                .val();
        assertThat(post(dayOne + "/string-line/take-back?version=" + version)).hasStatus3xxRedirection();
        assertThat(open(dayOne, branch.crewLead())).bodyText().contains("4 steps are open");
    }

    @Test
    void photosAreKeptWithTheReportAndWhatIsNoneIsRefused() {
        assertThat(withPhoto("-1", "no picture".getBytes(StandardCharsets.UTF_8)))
                .hasStatus(422);
        assertThat(withPhoto("-1", MadeUpPhoto.jpeg(160, 120))).hasStatus3xxRedirection();
        Document kept = read(open(page, branch.crewLead()));
        assertThat(kept.select("img.thumb-pic")).hasSize(1);
        assertThat(kept.select("textarea").text()).isEqualTo("The driver stood still.");
    }

    private MvcTestResult withPhoto(String version, byte[] bytes) {
        return mvc.post()
                .multipart()
                .uri(page)
                .file(new MockMultipartFile("photos", "posts.jpg", "image/jpeg", bytes))
                .param("version", version)
                .param("people", "4")
                .param("hours", "2")
                .param("weather", "DRY")
                .param("trouble", "The driver stood still.")
                .with(csrf())
                .with(world.signedIn(branch.crewLead()))
                .exchange();
    }

    @Test
    void thePagesTakeAsManyQueriesForMuchAsForLittle() {
        open(page, branch.manager());
        int empty = Queries.count(() -> open(page, branch.manager()));
        int nothingLearned = Queries.count(() -> open("/settings/learned", branch.manager()));
        report("-1", "20", "9.5", "");
        // the lines and the photos of the report
        assertThat(Queries.count(() -> open(page, branch.manager()))).isLessThanOrEqualTo(empty + 2);
        assertThat(Queries.count(() -> open("/settings/learned", branch.manager())))
                .isEqualTo(nothingLearned);
    }

    private MvcTestResult post(String address) {
        return pages.post(branch.crewLead(), address);
    }
}
