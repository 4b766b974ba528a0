package org.plumbrow.schedule.crewweek;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.Map;
import java.util.UUID;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.plumbrow.PlumbrowTest;
import org.plumbrow.TestClock;
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
import org.springframework.mock.web.MockMultipartFile;
import org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors;
import org.springframework.test.web.servlet.assertj.MockMvcTester;
import org.springframework.test.web.servlet.assertj.MvcTestResult;

/** What a crew's phone sends of a daily report and of day one: late, twice, second, in another's name. */
@PlumbrowTest
class FieldSendingTest {

    @Autowired
    TestWorld world;

    @Autowired
    ProjectFixture projects;

    @Autowired
    ScheduleFixture schedule;

    @Autowired
    TestPages pages;

    @Autowired
    MockMvcTester mvc;

    @Autowired
    TestClock clock;

    private TestBranch branch;
    private UUID dairy;
    private String report;
    private String dayOne;

    @BeforeEach
    void aCrewOnTheDairy() {
        branch = world.branch();
        UUID crew = schedule.crew(branch, "Crew 1", branch.crewLead().personId(), Skill.values());
        dairy = projects.aDairyGroundMount()
                .named("Sedge Hollow Dairy")
                .in(branch)
                .build();
        schedule.reach(branch, dairy, Stage.PERMITTED, LocalDate.of(2027, 2, 16));
        schedule.planned(branch);
        report = "/crews/" + crew + "/reports/" + dairy + "/2027-03-01";
        dayOne = "/projects/" + dairy + "/day-one";
    }

    @AfterEach
    void theClockGoesBack() {
        clock.standAt(TestClock.START);
    }

    /** Written half an hour before it is sent, on a phone that is 14 minutes slow. */
    private Map<String, String> sending(UUID id, Visitor who, String... fields) {
        Instant sent = clock.instant().minus(Duration.ofMinutes(14));
        Map<String, String> all = new HashMap<>(Map.of(
                "sending", id.toString(),
                "person", who.personId().toString(),
                "written", sent.minus(Duration.ofMinutes(30)).toString(),
                "sent", sent.toString()));
        for (int at = 0; at < fields.length; at += 2) {
            all.put(fields[at], fields[at + 1]);
        }
        return all;
    }

    private MvcTestResult report(UUID id, Visitor who, String version, String posts) {
        return pages.post(who, report + "/sending", said(id, who, version, posts));
    }

    private Map<String, String> said(UUID id, Visitor who, String version, String posts) {
        Map<String, String> all =
                sending(id, who, "version", version, "people", "4", "hours", "9.5", "weather", "RAIN");
        all.putAll(Map.of("lines[foundation].quantity", posts, "lines[foundation].hours", "9.5"));
        return all;
    }

    private static void says(MvcTestResult answer, int status, String said) {
        assertThat(answer).hasStatus(status).bodyJson().extractingPath("$.said").isEqualTo(said);
    }

    private Document page(String address) {
        return pages.page(branch.crewLead(), address);
    }

    private int linesOfTheJournal(String words) {
        String journal = pages.page(branch.manager(), "/projects/" + dairy + "/journal")
                .select("main")
                .text();
        return journal.split(words, -1).length - 1;
    }

    @Test
    void aReportThatComesTwiceCountsOnceAndSaysWhatBothClocksSaid() {
        UUID id = UUID.randomUUID();
        says(report(id, branch.crewLead(), "-1", "20"), 200, "stored");
        says(report(id, branch.crewLead(), "-1", "20"), 200, "already");
        assertThat(linesOfTheJournal("Daily report of Crew 1")).isEqualTo(1);
        assertThat(page(report).select("main").text())
                .contains("Mon, Mar 1, 8:30 am.")
                .contains("It came from the phone Mon, Mar 1, 9:00 am.")
                .contains("The phone’s clock said Mon, Mar 1, 8:16 am, 14 min off.");
    }

    @Test
    void whatAPhoneReportsIsProgressAndTeachesThePaceAsAReportWithSignalDoes() {
        says(report(UUID.randomUUID(), branch.crewLead(), "-1", "20"), 200, "stored");
        Document learned = pages.page(branch.manager(), "/settings/learned");
        assertThat(learned.text()).contains("1 pace is learned from finished work", "(5 × 45 + 20) ÷ (5 + 1)");
        Document activity = pages.page(branch.manager(), "/projects/" + dairy + "/schedule/foundation");
        assertThat(activity.text()).contains("learned");
        Map<String, String> rest = said(UUID.randomUUID(), branch.crewLead(), "0", "45");
        rest.put("lines[foundation].state", "DONE");
        says(pages.post(branch.crewLead(), report + "/sending", rest), 200, "stored");
        assertThat(pages.page(branch.manager(), "/settings/learned").text()).contains("(5 × 45 + 45) ÷ (5 + 1)");
        assertThat(pages.page(branch.manager(), "/projects/" + dairy + "/schedule")
                        .text())
                .contains("done");
    }

    @Test
    void whoComesSecondGetsTheirsBesideYoursAndNothingIsOverwritten() {
        report(UUID.randomUUID(), branch.manager(), "-1", "25");
        UUID id = UUID.randomUUID();
        MvcTestResult second = report(id, branch.crewLead(), "-1", "20");
        says(second, 409, "conflict");
        assertThat(second).bodyJson().extractingPath("$.by").isEqualTo("Ines");
        assertThat(second).bodyJson().extractingPath("$.theirs.length()").isEqualTo(1);
        assertThat(second).bodyJson().extractingPath("$.theirs[0].field").isEqualTo("lines[foundation].quantity");
        assertThat(second).bodyJson().extractingPath("$.theirs[0].theirs").isEqualTo("25");
        assertThat(page(report).select("[name='lines[foundation].quantity']").val())
                .isEqualTo("25");
        says(report(id, branch.crewLead(), "0", "20"), 200, "stored");
    }

    @Test
    void theSameReportByTwoPeopleIsNoConflict() {
        report(UUID.randomUUID(), branch.manager(), "-1", "25");
        says(report(UUID.randomUUID(), branch.crewLead(), "-1", "25"), 200, "already");
    }

    @Test
    void whatCannotBeReadIsRefusedAtItsFieldAndMayComeAgain() {
        UUID id = UUID.randomUUID();
        MvcTestResult refused = report(id, branch.crewLead(), "-1", "many");
        says(refused, 422, "refused");
        assertThat(refused).bodyJson().extractingPath("$.problems[0].field").isEqualTo("lines[foundation].quantity");
        says(report(id, branch.crewLead(), "-1", "20"), 200, "stored");
    }

    @Test
    void writtenInTimeCountsThoughItIsSentLater() {
        Map<String, String> kept = said(UUID.randomUUID(), branch.crewLead(), "-1", "20");
        clock.standAt("2027-03-04T14:00:00Z");
        kept.put("sent", clock.instant().toString());
        says(pages.post(branch.crewLead(), report + "/sending", kept), 200, "stored");
        says(report(UUID.randomUUID(), branch.crewLead(), "0", "30"), 422, "refused");
    }

    @Test
    void nothingIsTakenInAnothersNameOrFromAnotherBranch() {
        Map<String, String> foreign = said(UUID.randomUUID(), branch.manager(), "-1", "20");
        says(pages.post(branch.crewLead(), report + "/sending", foreign), 403, "not-theirs");
        says(report(UUID.randomUUID(), world.branch().crewLead(), "-1", "20"), 404, "refused");
        says(
                pages.post(
                        branch.designer(),
                        dayOne + "/shade/tick/sending",
                        sending(UUID.randomUUID(), branch.designer())),
                403,
                "refused");
    }

    @Test
    void aPhotoMayComeBeforeItsReportAndIsOnePhotoHoweverOftenItComes() {
        UUID id = UUID.randomUUID();
        says(photo(id), 200, "stored");
        says(photo(id), 200, "already");
        assertThat(page(report).select("img.thumb-pic")).hasSize(1);
        says(report(UUID.randomUUID(), branch.crewLead(), "-1", "20"), 200, "stored");
        assertThat(page(report).select("img.thumb-pic")).hasSize(1);
    }

    private MvcTestResult photo(UUID id) {
        return mvc.post()
                .uri(report + "/photos/sending")
                .multipart()
                .file(new MockMultipartFile("photo", "posts.jpg", "image/jpeg", MadeUpPhoto.plain()))
                .param("sending", id.toString())
                .param("person", branch.crewLead().personId().toString())
                .with(world.signedIn(branch.crewLead()))
                .with(SecurityMockMvcRequestPostProcessors.csrf())
                .exchange();
    }

    @Test
    void aStepIsTickedAtTheHourOfTheTapAndTheSecondWhoTicksIsTold() {
        UUID id = UUID.randomUUID();
        String tick = dayOne + "/string-line/tick/sending";
        says(pages.post(branch.crewLead(), tick, sending(id, branch.crewLead())), 200, "stored");
        says(pages.post(branch.crewLead(), tick, sending(id, branch.crewLead())), 200, "already");
        assertThat(page(dayOne).text()).contains("3 steps are open", "8:30 am", "8:16 am, 14 min off");
        MvcTestResult second = pages.post(branch.manager(), tick, sending(UUID.randomUUID(), branch.manager()));
        says(second, 422, "refused");
        assertThat(second)
                .bodyJson()
                .extractingPath("$.problems[0].sentence")
                .asString()
                .contains("had ticked it, Mon, Mar 1, 8:30 am. That tick stands");
        assertThat(linesOfTheJournal("Day one: String line set")).isEqualTo(1);
    }

    @Test
    void onlyTheTickThatWasSeenIsTakenBack() {
        String tick = dayOne + "/location/tick/sending";
        String back = dayOne + "/location/take-back/sending";
        pages.post(branch.crewLead(), tick, sending(UUID.randomUUID(), branch.crewLead()));
        String seen = page(dayOne)
                .select("form[action$=location/take-back] [name=version]")
                .val();
        MvcTestResult older =
                pages.post(branch.crewLead(), back, sending(UUID.randomUUID(), branch.crewLead(), "version", "17"));
        says(older, 422, "refused");
        assertThat(page(dayOne).text()).contains("3 steps are open");
        says(
                pages.post(branch.crewLead(), back, sending(UUID.randomUUID(), branch.crewLead(), "version", seen)),
                200,
                "stored");
        assertThat(page(dayOne).text()).contains("4 steps are open");
    }
}
