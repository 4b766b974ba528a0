package org.plumbrow.estimate.site;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import java.util.UUID;
import org.jsoup.Jsoup;
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
import org.plumbrow.project.JournalReader;
import org.plumbrow.project.ProjectFixture;
import org.plumbrow.web.Visitor;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.web.servlet.assertj.MockMvcTester;
import org.springframework.test.web.servlet.assertj.MvcTestResult;

/** The pages of yield and orientation, as people click through them. */
@PlumbrowTest
class YieldPagesTest {

    @Autowired
    MockMvcTester mvc;

    @Autowired
    TestWorld world;

    @Autowired
    TestPages pages;

    @Autowired
    ProjectFixture projects;

    @Autowired
    EstimateFixture fixture;

    @Autowired
    Estimates estimates;

    private TestBranch branch;
    private UUID project;

    @BeforeEach
    void aDairy() {
        branch = world.branch();
        project = projects.aDairyGroundMount().in(branch).build();
    }

    private Document get(String suffix, Visitor who) {
        return pages.page(who, "/projects/" + project + suffix);
    }

    private Document get(String suffix) {
        return get(suffix, branch.projectManager());
    }

    private EstimateFacts facts() {
        return world.as(branch.manager(), () -> estimates.of(project)).orElseThrow();
    }

    /** Every field of the form as the page has it. */
    private Map<String, String> form() {
        return TestPages.fields(get("/yield/terms").selectFirst("main form[action$=/terms]"));
    }

    private MvcTestResult post(Map<String, String> fields) {
        return pages.post(branch.projectManager(), "/projects/" + project + "/yield/terms", fields);
    }

    @Test
    void withoutWeatherThePageSaysWhatIsMissingAndWhereToGo() {
        Document page = get("/yield");
        assertThat(page.select("h1").text()).isEqualTo("Sedge Hollow Dairy: no yield yet");
        assertThat(page.text()).contains("The branch has no weather yet.");
        assertThat(page.select("main a[href=/weather]")).isNotEmpty();
    }

    @Test
    void thePageAnswersInItsHeadingAndNamesItsWeather() {
        fixture.weather(branch, "Valley means");
        Document page = get("/yield", branch.designer());
        String kwh = "%,.0f".formatted(facts().kwh());
        assertThat(page.select("h1").text()).isEqualTo("Sedge Hollow Dairy: " + kwh + " kWh in a typical year");
        assertThat(page.select(".note-risk").text())
                .contains("is invented: the figures are for practice only", "made from twelve monthly means");
        assertThat(page.text())
                .contains("in nine years of ten", "99.0 kW DC and 75.0 kW AC, by the contract", "Clipping")
                .contains("118,800 kWh guaranteed a year")
                .doesNotContain("$");
        assertThat(page.select("section[aria-labelledby=months] tbody tr")).hasSize(12);
        assertThat(page.select("section[aria-labelledby=ladder] tbody tr")
                        .last()
                        .text())
                .endsWith(kwh);
        assertThat(page.select("a[href$=/terms]")).isEmpty();
    }

    @Test
    void oneHourOpensWithEveryStep() {
        fixture.weather(branch, "Valley means");
        Document page = get("/yield?array=0&month=3&day=20&hour=11");
        assertThat(page.select("section[aria-labelledby=hour] caption").text())
                .isEqualTo("Array 1, ground mount: Mar 20, 11:00 to 12:00 standard time");
        assertThat(page.select("section[aria-labelledby=hour] tbody tr")).hasSize(15);
        assertThat(get("/yield?array=7&month=2&day=31&hour=99").text()).contains("Feb 28, 23:00 to 24:00");
        assertThat(get("/yield?array=x&month=&day=-1&hour=noon").text()).contains("Jun 21, 12:00 to 13:00");
    }

    @Test
    void aChangedLossChangesTheYieldAndStandsInTheJournal(@Autowired JournalReader journal) {
        fixture.weather(branch, "Valley means");
        double before = facts().kwh();
        Map<String, String> fields = form();
        fields.put("losses[0].percent", "7 %");
        fields.put("losses[7].name", "Dust of the grain leg");
        fields.put("losses[7].percent", "1.5");
        assertThat(post(fields)).hasStatus3xxRedirection();
        EstimateFacts after = facts();
        assertThat(after.kwh()).isLessThan(before * 0.95);
        assertThat(after.losses()).extracting(EstimateFacts.Loss::name).contains("Dust of the grain leg");
        assertThat(get("/yield").text()).contains("Dust of the grain leg");
        assertThat(get("/journal").text()).contains("Terms of the yield changed: losses 17.2 % together.");
    }

    @Test
    void rowsSnowAndHorizonAreApplied() {
        fixture.weather(branch, "Valley means");
        double before = facts().kwh();
        Map<String, String> fields = form();
        fields.put("rows[0].widthFt", "13.5");
        fields.put("rows[0].pitchFt", "24 ft");
        fields.put("snow[0].percent", "20");
        assertThat(post(fields)).hasStatus3xxRedirection();
        EstimateFacts after = facts();
        assertThat(after.rowsApplied()).isTrue();
        assertThat(after.kwh()).isLessThan(before);
        assertThat(after.steps()).extracting(EstimateFacts.Step::name).contains("Snow");
    }

    @Test
    void whatCannotBeIsRefusedAtItsFieldAndTheRestIsKept() throws Exception {
        fixture.weather(branch, "Valley means");
        Map<String, String> fields = form();
        fields.put("losses[0].percent", "140");
        fields.put("losses[1].name", "");
        fields.put("rows[0].widthFt", "14");
        fields.put("rows[0].pitchFt", "9");
        fields.put("gammaPercent", "0.35");
        fields.put("yearPercent", "often");
        fields.put("albedo", "0.25");
        MvcTestResult answer = post(fields);
        assertThat(answer).hasStatus(422);
        Document page = Jsoup.parse(answer.getResponse().getContentAsString());
        assertThat(page.select(".field.bad")).hasSize(5);
        assertThat(page.text())
                .contains("Write the loss “Soiling” as a number from 0 to 99 %.")
                .contains("From row to row it is at least the row’s own 14 ft.")
                .contains("as a number from −1 to 0 % for each kelvin.");
        assertThat(page.select("input[name=albedo]").val()).isEqualTo("0.25");
        assertThat(page.select("input[name=yearPercent]").val()).isEqualTo("often");
    }

    @Test
    void whoWasSlowerSeesBoth() throws Exception {
        fixture.weather(branch, "Valley means");
        Map<String, String> fields = form();
        fields.put("albedo", "0.3");
        assertThat(post(fields)).hasStatus3xxRedirection();
        fields.put("albedo", "0.4");
        MvcTestResult slower = post(fields);
        assertThat(slower).hasStatus(409);
        assertThat(Jsoup.parse(slower.getResponse().getContentAsString()).text())
                .contains("0.3", "0.4");
        assertThat(facts().remarks()).isNotEmpty();
    }

    @Test
    void weatherOfAnotherBranchCannotBeChosen() {
        fixture.weather(branch, "Valley means");
        UUID foreign = fixture.weather(world.branch(), "Theirs");
        Map<String, String> fields = form();
        fields.put("weatherId", foreign.toString());
        assertThat(post(fields)).hasStatus(422);
        fields.put("weatherId", "none of them");
        assertThat(post(fields)).hasStatus(422);
    }

    @Test
    void anEmptyFormIsRefusedAndNotBroken() {
        fixture.weather(branch, "Valley means");
        assertThat(post(Map.of())).hasStatus(422);
    }

    @Test
    void theMapSaysHowNearTheBestThisArrayIs() {
        fixture.weather(branch, "Valley means");
        Document page = get("/yield/orientation", branch.designer());
        assertThat(page.select("h1").text()).matches("Sedge Hollow Dairy: within \\d\\.\\d % of the best there is");
        assertThat(page.select("table.map tbody tr")).hasSize(13);
        assertThat(page.select("table.map td")).hasSize(169);
        assertThat(page.select("table.map td.own")).hasSize(1);
        assertThat(page.select("table.map td.own").text()).contains("this array");
        assertThat(page.select("table.map td:contains(best)")).hasSize(1);
        assertThat(page.select("section[aria-labelledby=rows] tbody tr")).hasSize(9);
        double flat = pitch(page, 0);
        double steep = pitch(page, 8);
        assertThat(steep).isGreaterThan(flat);
    }

    private static double pitch(Document page, int row) {
        return Double.parseDouble(page.select("section[aria-labelledby=rows] tbody tr")
                .get(row)
                .select("td")
                .get(1)
                .text());
    }

    @Test
    void aRowThatIsNoLengthIsRefusedOnTheSamePage() throws Exception {
        fixture.weather(branch, "Valley means");
        MvcTestResult answer = mvc.get()
                .uri("/projects/" + project + "/yield/orientation?rowFt=long&freeHours=30")
                .with(world.signedIn(branch.manager()))
                .exchange();
        assertThat(answer).hasStatus(422);
        Document page = Jsoup.parse(answer.getResponse().getContentAsString());
        assertThat(page.select(".field.bad")).hasSize(2);
        assertThat(page.select("input[name=rowFt]").val()).isEqualTo("long");
    }

    @Test
    void thePagesTakeAFixedNumberOfQueries() {
        fixture.weather(branch, "Valley means");
        get("/yield");
        assertThat(Queries.count(() -> get("/yield"))).isLessThanOrEqualTo(14);
        assertThat(Queries.count(() -> get("/yield/orientation"))).isLessThanOrEqualTo(14);
    }
}
