package org.plumbrow.schedule.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.plumbrow.PlumbrowTest;
import org.plumbrow.TestClock;
import org.plumbrow.TestPages;
import org.plumbrow.TestWorld;
import org.plumbrow.TestWorld.TestBranch;
import org.plumbrow.calc.duration.ActivityCode;
import org.plumbrow.database.BackgroundRuns;
import org.plumbrow.database.Run;
import org.plumbrow.project.ProjectFixture;
import org.plumbrow.project.ProjectStages;
import org.plumbrow.project.Stage;
import org.plumbrow.schedule.PlannedDates;
import org.plumbrow.schedule.PublishedPlan;
import org.plumbrow.schedule.ScheduleFixture;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.web.servlet.assertj.MockMvcTester;
import org.springframework.test.web.servlet.assertj.MvcTestResult;

@PlumbrowTest
class PlanRunTest {

    private static final LocalDate PERMITTED_ON = LocalDate.of(2027, 2, 16);

    @Autowired
    TestWorld world;

    @Autowired
    TestPages pages;

    @Autowired
    ProjectFixture projects;

    @Autowired
    ScheduleFixture schedule;

    @Autowired
    PublishedPlan published;

    @Autowired
    ProjectStages stages;

    @Autowired
    BackgroundRuns runs;

    @Autowired
    TestClock clock;

    @Autowired
    MockMvcTester mvc;

    TestBranch branch;

    @BeforeEach
    void aBranch() {
        branch = world.branch();
    }

    @Test
    void theFirstPlanOfABranchPublishesItself() {
        schedule.crew(branch, "Crew 1");
        UUID dairy = permitted();
        Run run = schedule.planned(branch);
        assertThat(run.state()).as(run.outcome()).isEqualTo(Run.State.DONE);
        assertThat(dates(dairy)).extracting(PlannedDates::code).contains(ActivityCode.CUTOVER, ActivityCode.PERMISSION);
    }

    @Test
    void aBranchWithNothingToPlanIsToldSo() {
        assertThat(schedule.planned(branch).outcome()).isEqualTo("There is nothing to plan yet: no project is signed.");
    }

    @Test
    void whatTheStageSaysIsDoneIsDoneOnTheDayItWasReached() {
        schedule.crew(branch, "Crew 1");
        UUID dairy = permitted();
        schedule.planned(branch);
        assertThat(dates(dairy))
                .filteredOn(PlannedDates::isDone)
                .extracting(PlannedDates::code)
                .containsExactlyInAnyOrder(
                        ActivityCode.SURVEY,
                        ActivityCode.DESIGN,
                        ActivityCode.GROUND_TEST,
                        ActivityCode.STRUCTURAL_LETTER,
                        ActivityCode.PERMIT,
                        ActivityCode.INTERCONNECTION,
                        ActivityCode.AGREEMENT);
        assertThat(dates(dairy))
                .filteredOn(PlannedDates::isDone)
                .allSatisfy(done -> assertThat(done.finish().date()).isEqualTo(PERMITTED_ON));
    }

    @Test
    void aProjectThatGoesBackHasItsWorkAgainBeforeIt() {
        schedule.crew(branch, "Crew 1");
        UUID dairy = permitted();
        schedule.planned(branch);
        schedule.inBranch(branch, () -> {
            stages.goBack(
                    dairy, Stage.DESIGNED, "wrong inverter", branch.manager().actor());
            return dairy;
        });
        schedule.planned(branch);
        List<String> open = schedule.inBranch(branch, () -> published.crewWorkWithoutPlace(dairy));
        assertThat(open).isEmpty();
        MvcTestResult page = pages.get(branch.manager(), "/projects/" + dairy + "/schedule/permit");
        assertThat(page).hasStatusOk().bodyText().contains("Not asked for");
    }

    @Test
    void aManagerMayAskAnewAndSeesHowFarItIs() {
        schedule.crew(branch, "Crew 1");
        permitted();
        schedule.planned(branch);
        MvcTestResult asked = pages.post(branch.manager(), "/look-ahead/recompute");
        assertThat(asked).hasRedirectedUrl("/look-ahead");
        Run latest = schedule.inBranch(branch, () -> runs.latest("plan", branch.id(), null))
                .orElseThrow();
        assertThat(pages.get(branch.manager(), "/runs/" + latest.id())).hasStatusOk();
        assertThat(mvc.get()
                        .uri("/runs/" + latest.id())
                        .header("HX-Request", "true")
                        .with(world.signedIn(branch.manager()))
                        .exchange())
                .as("the strip alone, as the page asks for it each second")
                .hasStatusOk()
                .bodyText()
                .contains("id=\"run-" + latest.id())
                .doesNotContain("<html");
    }

    @Test
    void askingTwiceBeforeItBeginsIsOneRun() {
        List<UUID> asked = schedule.inBranch(
                branch,
                () -> List.of(
                        runs.start(PlanRun.KIND, branch.id(), null, "Ines"),
                        runs.start(PlanRun.KIND, branch.id(), null, "Tamsin")));
        assertThat(asked.get(0)).isEqualTo(asked.get(1));
    }

    @ParameterizedTest
    @CsvSource({
        "2027-03-01T10:00:00Z, America/New_York, true",
        "2027-03-01T10:29:59Z, America/New_York, true",
        "2027-03-01T10:30:00Z, America/New_York, false",
        "2027-03-01T09:59:59Z, America/New_York, false",
        "2027-07-01T09:00:00Z, America/New_York, true",
        "2027-03-01T10:00:00Z, America/Denver, false"
    })
    void itIsFiveInTheBranchsOwnMorning(Instant now, String zone, boolean five) {
        clock.standAt(now);
        assertThat(PlanTriggers.EachMorning.isFive(new PlanTriggers.EachMorning.Branch(branch.id(), zone), clock))
                .isEqualTo(five);
    }

    private UUID permitted() {
        UUID dairy = projects.aDairyGroundMount().in(branch).build();
        schedule.reach(branch, dairy, Stage.PERMITTED, PERMITTED_ON);
        return dairy;
    }

    private List<PlannedDates> dates(UUID project) {
        return schedule.inBranch(branch, () -> published.of(project));
    }
}
