package org.plumbrow.estimate.site;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.plumbrow.PlumbrowTest;
import org.plumbrow.Queries;
import org.plumbrow.TestWorld;
import org.plumbrow.TestWorld.TestBranch;
import org.plumbrow.calc.energy.EnergyYield;
import org.plumbrow.estimate.EnergyInputs;
import org.plumbrow.estimate.EstimateFacts;
import org.plumbrow.estimate.Estimates;
import org.plumbrow.project.ProjectFixture;
import org.plumbrow.web.NotForYourRole;
import org.plumbrow.web.NotFound;
import org.springframework.beans.factory.annotation.Autowired;

@PlumbrowTest
class YieldBookTest {

    @Autowired
    TestWorld world;

    @Autowired
    ProjectFixture projects;

    @Autowired
    EstimateFixture weather;

    @Autowired
    Estimates estimates;

    @Autowired
    YieldBook book;

    @Test
    void withoutWeatherItSaysWhatIsMissing() {
        TestBranch branch = world.branch();
        UUID project = projects.aHomeRoof().in(branch).build();
        assertThat(world.as(branch.designer(), () -> estimates.of(project))).isEmpty();
        assertThat(world.as(branch.designer(), () -> estimates.missing(project)))
                .containsExactly("The branch has no weather yet. Bring a file, or type twelve monthly means.");
    }

    @Test
    void figuresAreThoseOfTheChainAndCarryWhereTheirWeatherComesFrom() {
        TestBranch branch = world.branch();
        weather.weather(branch, "Valley means");
        UUID project = projects.aDairyGroundMount().in(branch).build();
        EstimateFacts facts =
                world.as(branch.projectManager(), () -> estimates.of(project)).orElseThrow();
        EnergyInputs inputs = world.as(branch.projectManager(), () -> estimates.inputs(project))
                .orElseThrow();
        EnergyYield year = inputs.energyYield();
        assertThat(facts.kwh()).isEqualTo(year.kwhOfYear());
        assertThat(facts.kwDc()).isEqualTo(99.0, within(1e-9));
        assertThat(facts.kwAc()).isEqualTo(75.0, within(1e-9));
        assertThat(facts.kwhPerKw()).isBetween(1000.0, 1500.0);
        assertThat(facts.kwhByMonth()).hasSize(12);
        assertThat(facts.kwhByMonth().stream().mapToDouble(Double::doubleValue).sum())
                .isEqualTo(facts.kwh(), within(1e-6));
        assertThat(facts.arrays()).hasSize(1);
        assertThat(facts.arrays().get(0).kwh()).isEqualTo(facts.kwh(), within(1e-6));
        assertThat(facts.weather().name()).isEqualTo("Valley means");
        assertThat(facts.weather().invented()).isTrue();
        assertThat(facts.weather().fromMonthlyMeans()).isTrue();
        assertThat(facts.weather().chosen()).isFalse();
        assertThat(facts.remarks())
                .anyMatch(remark -> remark.contains("invented"))
                .anyMatch(remark -> remark.contains("made from twelve monthly means"))
                .anyMatch(remark -> remark.contains("No horizon was read"));
        assertThat(facts.p90Kwh()).isLessThan(facts.kwh());
        assertThat(facts.modelShare()).isEqualTo(0.07);
    }

    @Test
    void theNearestYearCounts() {
        TestBranch branch = world.branch();
        weather.weather(branch, "Far", 44.0, -75.0);
        weather.weather(branch, "Near", 40.8, -77.8);
        UUID project = projects.aHomeRoof().in(branch).build();
        EstimateFacts facts =
                world.as(branch.designer(), () -> estimates.of(project)).orElseThrow();
        assertThat(facts.weather().name()).isEqualTo("Near");
        assertThat(facts.weather().kmAway()).isBetween(1.0, 10.0);
    }

    @Test
    void aKeptResultIsReadAndNotComputedAgainUntilItsInputsChange() {
        TestBranch branch = world.branch();
        weather.weather(branch, "Valley means");
        UUID project = projects.aHomeRoof().in(branch).build();
        world.as(branch.manager(), () -> book.refresh(project));
        EstimateFacts first =
                world.as(branch.manager(), () -> estimates.of(project)).orElseThrow();
        assertThat(world.as(branch.manager(), () -> estimates.ofBranch(branch.id())))
                .containsExactly(first);
        weather.weather(branch, "Nearer means", 40.79, -77.86);
        EstimateFacts second =
                world.as(branch.manager(), () -> estimates.of(project)).orElseThrow();
        assertThat(second.weather().name()).isEqualTo("Nearer means");
        assertThat(world.as(branch.manager(), () -> estimates.ofBranch(branch.id())))
                .as("still the kept one, until somebody writes")
                .containsExactly(first);
        world.as(branch.manager(), () -> book.refresh(project));
        List<EstimateFacts> kept = world.as(branch.manager(), () -> estimates.ofBranch(branch.id()));
        assertThat(kept).extracting(each -> each.weather().name()).containsExactly("Nearer means");
    }

    @Test
    void theBookOfABranchTakesTwoQueries() {
        TestBranch branch = world.branch();
        weather.weather(branch, "Valley means");
        for (int i = 0; i < 3; i++) {
            UUID project = projects.aHomeRoof().in(branch).build();
            world.as(branch.manager(), () -> book.refresh(project));
        }
        int queries = Queries.count(() -> world.as(
                branch.manager(),
                () -> assertThat(estimates.ofBranch(branch.id())).hasSize(3)));
        assertThat(queries).isEqualTo(2);
    }

    @Test
    void anotherBranchsProjectIsNotThereAndACrewLeadMayNot() {
        TestBranch branch = world.branch();
        TestBranch another = world.branch();
        UUID project = projects.aHomeRoof().in(branch).build();
        assertThatThrownBy(() -> world.as(another.manager(), () -> estimates.of(project)))
                .isInstanceOf(NotFound.class);
        assertThatThrownBy(() -> world.as(branch.crewLead(), () -> estimates.of(project)))
                .isInstanceOf(NotForYourRole.class);
    }
}
