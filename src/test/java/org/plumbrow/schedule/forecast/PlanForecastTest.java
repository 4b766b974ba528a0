package org.plumbrow.schedule.forecast;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.plumbrow.PlumbrowTest;
import org.plumbrow.TestPages;
import org.plumbrow.TestWorld;
import org.plumbrow.TestWorld.TestBranch;
import org.plumbrow.calc.duration.Milestone;
import org.plumbrow.project.NewProject;
import org.plumbrow.project.ProjectCourse;
import org.plumbrow.project.ProjectFixture;
import org.plumbrow.project.Stage;
import org.plumbrow.schedule.ScheduleFixture;
import org.plumbrow.schedule.plan.PlanHead;
import org.plumbrow.schedule.plan.Plans;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.web.servlet.assertj.MvcTestResult;

/** Every run of the plan says how likely its dates are, and the pages say it in words. */
@PlumbrowTest
class PlanForecastTest {

    @Autowired
    TestWorld world;

    @Autowired
    TestPages pages;

    @Autowired
    ProjectFixture projects;

    @Autowired
    ScheduleFixture schedule;

    @Autowired
    PlanForecasts forecasts;

    @Autowired
    Plans plans;

    @Autowired
    ProjectCourse course;

    private TestBranch branch;
    private UUID dairy;

    @BeforeEach
    void aPlannedProject() {
        branch = world.branch();
        schedule.crew(branch, "Crew 1");
        dairy = projects.aDairyGroundMount().in(branch).build();
        schedule.reach(branch, dairy, Stage.PERMITTED, LocalDate.of(2027, 2, 16));
        schedule.planned(branch);
    }

    private List<MilestoneForecast> stored() {
        return schedule.inBranch(branch, () -> forecasts.of(published().id(), dairy));
    }

    private PlanHead published() {
        return plans.publishedHead(branch.id()).orElseThrow();
    }

    private MvcTestResult page(String address) {
        return pages.get(branch.manager(), address);
    }

    @Test
    void milestonesAheadHaveThreeDatesInOrderAndThoseReachedHaveNone() {
        assertThat(stored())
                .extracting(MilestoneForecast::milestone)
                .contains(Milestone.ARRAY_BUILT, Milestone.CUTOVER_DONE, Milestone.SYSTEM_ON)
                .doesNotContain(Milestone.SURVEY_DONE, Milestone.DESIGN_DONE, Milestone.AGREEMENT_SIGNED)
                .isSortedAccordingTo(Comparator.naturalOrder());
        assertThat(stored()).allSatisfy(one -> {
            assertThat(one.evenChance()).isBeforeOrEqualTo(one.fourInFive());
            assertThat(one.fourInFive()).isBeforeOrEqualTo(one.nineteenInTwenty());
            assertThat(one.evenChance()).isAfterOrEqualTo(LocalDate.of(2027, 3, 1));
        });
    }

    @Test
    void onlyWhatIsFollowedSaysWhatDrivesIt() {
        assertThat(stored())
                .filteredOn(one -> !one.drivers().isEmpty())
                .singleElement()
                .satisfies(one -> {
                    assertThat(one.milestone()).isEqualTo(Milestone.SYSTEM_ON);
                    assertThat(one.drivers())
                            .isSortedAccordingTo(Comparator.comparingDouble(MilestoneForecast.DrivenBy::share)
                                    .reversed());
                    // The promised work itself ends every chain.
                    assertThat(one.drivers().get(0).share()).isCloseTo(1, within(1e-9));
                });
    }

    /** The chance of a promise is what its own days say: kept for sure if made for a day by which every run has ended. */
    @Test
    void aPromiseIsJudgedByTheDayItWasMadeFor() {
        MilestoneForecast on = stored().stream()
                .filter(one -> one.milestone() == Milestone.SYSTEM_ON)
                .findFirst()
                .orElseThrow();
        promise(on.fourInFive());
        double chance = kept().orElseThrow().chance();
        assertThat(chance).isBetween(0.78, 0.9);
        promise(on.nineteenInTwenty().plusYears(1));
        assertThat(kept().orElseThrow().chance()).isEqualTo(1);
        promise(LocalDate.of(2027, 3, 2));
        assertThat(kept().orElseThrow().chance()).isZero();
    }

    private void promise(LocalDate day) {
        schedule.inBranch(
                branch,
                () -> course.promise(
                        dairy, new NewProject.NewPromise(Milestone.SYSTEM_ON, day, 0, "Ines", "told anew")));
        schedule.planned(branch);
    }

    private Optional<MilestoneForecast.Kept> kept() {
        return stored().stream()
                .filter(one -> one.milestone() == Milestone.SYSTEM_ON)
                .findFirst()
                .flatMap(MilestoneForecast::kept);
    }

    @Test
    void theSameBranchHasTheSameForecastTwice() {
        List<MilestoneForecast> first = stored();
        schedule.planned(branch);
        assertThat(stored()).isEqualTo(first);
    }

    @Test
    void thePagesSayEvenChanceAndFourInFive() {
        promise(LocalDate.of(2027, 4, 30));
        assertThat(page("/projects/" + dairy + "/schedule"))
                .hasStatusOk()
                .bodyText()
                .contains("How likely the dates are", "even chance by", "four in five by", "the promise is kept in");
        assertThat(page("/projects/" + dairy)).bodyText().contains("even chance by");
        assertThat(page("/look-ahead")).bodyText().contains("kept in ", "; even chance ");
    }

    @Test
    void aShareIsNeverRoundedToSure() {
        assertThat(MilestoneForecast.ofHundred(0.996)).isEqualTo("more than 99 of 100");
        assertThat(MilestoneForecast.ofHundred(0.004)).isEqualTo("fewer than 1 of 100");
        assertThat(MilestoneForecast.ofHundred(1)).isEqualTo("100 of 100");
        assertThat(MilestoneForecast.ofHundred(0)).isEqualTo("0 of 100");
        assertThat(MilestoneForecast.ofHundred(0.715)).isEqualTo("72 of 100");
    }
}
