package org.plumbrow.estimate.place;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashMap;
import java.util.Map;
import java.util.UUID;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.plumbrow.PlumbrowTest;
import org.plumbrow.Queries;
import org.plumbrow.TestPages;
import org.plumbrow.TestWorld;
import org.plumbrow.TestWorld.TestBranch;
import org.plumbrow.estimate.EstimateFacts;
import org.plumbrow.estimate.Estimates;
import org.plumbrow.estimate.site.EstimateFixture;
import org.plumbrow.project.ProjectFixture;
import org.plumbrow.survey.SurveyBook;
import org.plumbrow.web.Visitor;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.web.servlet.assertj.MockMvcTester;

/** The horizon before the work and on day one, as the page holds them against each other. */
@PlumbrowTest
class ShadePagesTest {

    @Autowired
    MockMvcTester mvc;

    @Autowired
    TestWorld world;

    @Autowired
    TestPages pages;

    @Autowired
    ProjectFixture projects;

    @Autowired
    EstimateFixture weather;

    @Autowired
    SurveyBook surveys;

    @Autowired
    Estimates estimates;

    private TestBranch branch;
    private UUID project;

    @BeforeEach
    void aDairy() {
        branch = world.branch();
        project = projects.aDairyGroundMount().in(branch).build();
    }

    private void read(String part, int from, int to, double degrees) {
        Map<String, String> typed = new HashMap<>();
        for (int azimuth = from; azimuth <= to; azimuth += 15) {
            typed.put("h_" + azimuth, String.valueOf(degrees));
        }
        world.as(branch.designer(), () -> surveys.fill(project, part, typed));
    }

    private Document page(Visitor who) {
        return pages.page(who, "/projects/" + project + "/shade");
    }

    private Document page() {
        return page(branch.projectManager());
    }

    private EstimateFacts facts() {
        return world.as(branch.manager(), () -> estimates.of(project)).orElseThrow();
    }

    @Test
    void nothingReadIsSaidWithTheWayToTheSurvey() {
        Document page = page();
        assertThat(page.select("h1").text()).isEqualTo("Sedge Hollow Dairy: the horizon was not read yet");
        assertThat(page.select(".note-wait a").eachAttr("href"))
                .contains("/projects/" + project + "/survey/shade", "/projects/" + project + "/survey/day-one");
        assertThat(page.text()).contains("The branch has no weather yet.");
        assertThat(page.select("figure.plot")).isEmpty();
    }

    @Test
    void readingsStandThereAlsoWithoutAYield() {
        read("shade", 60, 300, 6);
        Document page = page();
        assertThat(page.select("h1").text()).isEqualTo("Sedge Hollow Dairy: horizon read, no yield yet");
        assertThat(page.select("#readings ~ table tbody tr")).hasSize(17);
        assertThat(page.select("#year")).isEmpty();
    }

    @Test
    void theReadingBeforeTheWorkIsHeldAgainstNothingAround() {
        weather.weather(branch, "Valley means");
        double open = facts().kwh();
        read("shade", 60, 300, 8);
        Document page = page(branch.designer());
        assertThat(page.select("h1").text()).matches("Sedge Hollow Dairy: the horizon takes \\d\\.\\d % of the year");
        assertThat(page.select("#means ~ p").text())
                .contains("%,.0f kWh a year in place of %,.0f.".formatted(facts().kwh(), open));
        assertThat(page.select("#year ~ .roll table thead").text()).contains("Nothing around", "With the horizon");
        assertThat(page.text()).doesNotContain("$");
    }

    @Test
    void dayOneIsHeldAgainstTheReadingBeforeAndTheEstimateStays() {
        weather.weather(branch, "Valley means");
        read("shade", 60, 300, 4);
        double estimate = facts().kwh();
        read("day-one", 60, 300, 6);
        assertThat(facts().kwh()).isEqualTo(estimate);
        Document page = page();
        assertThat(page.select("h1").text())
                .matches(
                        "Sedge Hollow Dairy: day one’s horizon takes [\\d,]+ kWh a year, less than a month’s weather does");
        assertThat(page.select("#readings ~ table tbody tr").get(2).text()).isEqualTo("90° E 4.0 6.0 +2.0");
        assertThat(page.select("#year ~ .roll table tbody tr")).hasSize(12);
        assertThat(page.select("#year ~ .roll table tfoot td").get(0).text()).isEqualTo("%,.0f".formatted(estimate));
        assertThat(page.select("#means ~ p").text())
                .contains("Nobody needs to be told.", "a single month’s weather alone spreads by about 10.4 %");
        assertThat(page.select("#means ~ p").text())
                .containsPattern("the year is [\\d,]+ kWh, \\d+\\.\\d % (more|less) than the 118,800 kWh");
        assertThat(page.select(".note-wait")).isEmpty();
        assertThat(page.select("figure.plot path")).hasSize(6);
        assertThat(page.select("figure.plot circle")).hasSize(17);
    }

    @Test
    void aHorizonThatTakesTwoPercentIsToldToCustomerAndDesigner() {
        weather.weather(branch, "Valley means");
        read("shade", 60, 300, 3);
        read("day-one", 60, 300, 18);
        Document page = page();
        assertThat(page.select("h1").text()).endsWith("kWh a year. Tell the customer and the designer");
        assertThat(page.select("#means ~ p").text()).contains("The customer is told before the array is built");
    }

    @Test
    void aLowerHorizonGivesMore() {
        weather.weather(branch, "Valley means");
        read("shade", 60, 300, 9);
        read("day-one", 60, 300, 5);
        assertThat(page().select("h1").text()).endsWith("kWh a year more");
    }

    @Test
    void whereDayOneReadNothingTheReadingBeforeCounts() {
        weather.weather(branch, "Valley means");
        read("shade", 60, 300, 4);
        read("day-one", 90, 90, 4);
        Document page = page();
        assertThat(page.select("h1").text()).isEqualTo("Sedge Hollow Dairy: day one’s horizon changes nothing");
        assertThat(page.text()).contains("On day one one direction was read; elsewhere the reading before counts.");
    }

    @Test
    void aReadingBelowTheLevelHidesNoSun() {
        weather.weather(branch, "Valley means");
        double open = facts().kwh();
        read("shade", 60, 300, -2);
        assertThat(facts().kwh()).isCloseTo(open, org.assertj.core.api.Assertions.withinPercentage(0.05));
        assertThat(page().select("#readings ~ table tbody tr").first().text()).contains("−2.0");
    }

    @Test
    void aCrewLeadWhoIsNotBookedAndAnotherBranchFindNothing() {
        assertThat(mvc.get()
                        .uri("/projects/" + project + "/shade")
                        .with(world.signedIn(branch.crewLead()))
                        .exchange())
                .hasStatus(403);
        assertThat(mvc.get()
                        .uri("/projects/" + project + "/shade")
                        .with(world.signedIn(world.branch().manager()))
                        .exchange())
                .hasStatus(404);
    }

    @Test
    void thePageTakesAFixedNumberOfQueries() {
        weather.weather(branch, "Valley means");
        page();
        int bare = Queries.count(() -> page());
        read("shade", 60, 300, 4);
        read("day-one", 60, 300, 6);
        assertThat(Queries.count(() -> page())).isEqualTo(bare).isLessThanOrEqualTo(14);
    }
}
