package org.plumbrow.schedule.tell;

import static org.assertj.core.api.Assertions.assertThat;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;

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
import org.plumbrow.calc.calendar.Half;
import org.plumbrow.calc.duration.Milestone;
import org.plumbrow.crew.AwayReason;
import org.plumbrow.crew.AwayTime;
import org.plumbrow.crew.CrewEditing;
import org.plumbrow.database.Ids;
import org.plumbrow.project.ProjectFixture;
import org.plumbrow.project.Stage;
import org.plumbrow.schedule.ScheduleFixture;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.web.servlet.assertj.MockMvcTester;
import org.springframework.test.web.servlet.assertj.MvcTestResult;

@PlumbrowTest
class TellPagesTest {

    private static final String PAGE = "/look-ahead/tell";

    @Autowired
    TestWorld world;

    @Autowired
    TestPages pages;

    @Autowired
    ProjectFixture projects;

    @Autowired
    ScheduleFixture schedule;

    @Autowired
    CrewEditing crews;

    @Autowired
    MockMvcTester mvc;

    private TestBranch branch;
    private UUID crew;
    private UUID project;

    @BeforeEach
    void aPlannedBranch() {
        branch = world.branch();
        crew = schedule.crew(branch, "Crew 1");
        project = aProject("Sedge Hollow Dairy");
        schedule.planned(branch);
    }

    @Test
    void ofAFirstPlanNobodyHasToBeTold() {
        Document page = document(get());
        assertThat(page.select("h1").text()).isEqualTo("Nobody is left to be told of plan 1");
        assertThat(page.text()).contains("It is the branch’s first plan");
    }

    @Test
    void afterALostCrewTheCrewAndTheCustomerAreToldOnceEach() {
        loseTheCrewAndPublish();
        Document page = document(get());
        assertThat(page.select("h1").text()).endsWith("have to be told of plan 2");
        assertThat(page.select("main").text()).contains("Crew 1: to be told", "Sedge Hollow Dairy: to be told", "→");
        String plan = page.select("input[name=plan]").first().attr("value");
        assertThat(post("plan", plan)).hasStatus3xxRedirection();
        assertThat(document(get()).select("main").text())
                .contains("Crew 1: told", "Sedge Hollow Dairy: told", "with a notice in the outbox.");
        String outbox = document(pages.get(branch.manager(), "/outbox")).text();
        assertThat(outbox).contains("of your next two weeks changed", "Other days for the work on your solar system");
        assertThat(post("plan", plan)).hasStatus3xxRedirection();
        assertThat(outbox)
                .isEqualTo(document(pages.get(branch.manager(), "/outbox")).text());
    }

    @Test
    void whoWasToldByTelephoneIsWrittenDownWithoutANotice() {
        loseTheCrewAndPublish();
        String plan = document(get()).select("input[name=plan]").first().attr("value");
        assertThat(post("plan", plan, "how", "spoken", "whom", "CUSTOMER", "id", project.toString()))
                .hasStatus3xxRedirection();
        assertThat(document(get()).select("main").text())
                .contains("Sedge Hollow Dairy: told", "in person or by telephone", "Crew 1: to be told");
        assertThat(post(
                        "plan",
                        plan,
                        "how",
                        "spoken",
                        "whom",
                        "CREW",
                        "id",
                        UUID.randomUUID().toString()))
                .hasStatus(404);
    }

    @Test
    void aPlanThatIsNoLongerTheOneIsAConflictAndNobodyIsTold() {
        loseTheCrewAndPublish();
        assertThat(post("plan", UUID.randomUUID().toString()))
                .hasStatus(409)
                .bodyText()
                .contains("Another plan was published meanwhile.");
        assertThat(document(get()).select("main").text()).contains("Crew 1: to be told");
    }

    @Test
    void theNumberOfQueriesDoesNotGrowWithTheProjects() {
        loseTheCrewAndPublish();
        int before = Queries.count(this::get);
        aProject("A second");
        aProject("A third");
        schedule.planned(branch);
        publish();
        assertThat(Queries.count(this::get)).isLessThanOrEqualTo(before);
    }

    private void loseTheCrewAndPublish() {
        world.as(
                branch.manager(),
                () -> crews.away(
                        Ids.next(),
                        crew,
                        new AwayTime(
                                LocalDate.of(2027, 3, 1),
                                Half.MORNING,
                                LocalDate.of(2027, 3, 19),
                                Half.AFTERNOON,
                                AwayReason.ILLNESS,
                                "")));
        schedule.planned(branch);
        publish();
    }

    private void publish() {
        Document page = document(pages.get(branch.manager(), "/look-ahead/publish"));
        String plan = page.select("input[name=plan]").attr("value");
        assertThat(mvc.post()
                        .uri("/look-ahead/publish")
                        .with(csrf())
                        .with(world.signedIn(branch.manager()))
                        .param("plan", plan)
                        .exchange())
                .hasStatus3xxRedirection()
                .hasRedirectedUrl(PAGE);
    }

    private MvcTestResult post(String... fields) {
        return pages.post(branch.manager(), PAGE, fields);
    }

    private MvcTestResult get() {
        return pages.get(branch.manager(), PAGE);
    }

    private static Document document(MvcTestResult answer) {
        assertThat(answer).hasStatusOk();
        return TestPages.read(answer);
    }

    private UUID aProject(String name) {
        UUID id = projects.aDairyGroundMount()
                .named(name)
                .promised(Milestone.SYSTEM_ON, LocalDate.of(2027, 7, 30))
                .in(branch)
                .build();
        schedule.reach(branch, id, Stage.PERMITTED, LocalDate.of(2027, 2, 16));
        return id;
    }
}
