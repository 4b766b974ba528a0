package org.plumbrow.estimate.guarantee;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.plumbrow.PlumbrowTest;
import org.plumbrow.Queries;
import org.plumbrow.TestPages;
import org.plumbrow.TestWorld;
import org.plumbrow.TestWorld.TestBranch;
import org.plumbrow.calc.Normal;
import org.plumbrow.estimate.EstimateFacts;
import org.plumbrow.estimate.Estimates;
import org.plumbrow.estimate.site.EstimateFixture;
import org.plumbrow.project.ProjectFixture;
import org.plumbrow.project.Projects;
import org.plumbrow.project.gate.Finding;
import org.plumbrow.project.gate.GateLook;
import org.plumbrow.project.gate.GateRule;
import org.plumbrow.web.Visitor;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.web.servlet.assertj.MockMvcTester;
import org.springframework.test.web.servlet.assertj.MvcTestResult;
import org.springframework.transaction.support.TransactionTemplate;

/**
 * The page of a project's guarantee, as people click through it. Figures are held against the loss function of the normal
 * distribution, E[(K - X)+] = (K - m) Phi(z) + s phi(z), written down here once more.
 */
@PlumbrowTest
class GuaranteePagesTest {

    private static final double RATE = 0.12;

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

    @Autowired
    Projects facts;

    @Autowired
    List<GateRule> rules;

    @Autowired
    TransactionTemplate transaction;

    private TestBranch branch;
    private UUID project;

    @BeforeEach
    void aDairy() {
        branch = world.branch();
        project = projects.aDairyGroundMount().in(branch).build();
    }

    private MvcTestResult ask(String suffix, Visitor who) {
        return pages.get(who, "/projects/" + project + "/guarantee" + suffix);
    }

    private Document get(String suffix) {
        return pages.page(branch.projectManager(), "/projects/" + project + "/guarantee" + suffix);
    }

    private MvcTestResult post(String suffix, Map<String, String> fields) {
        return pages.post(branch.projectManager(), "/projects/" + project + "/guarantee" + suffix, fields);
    }

    private Map<String, String> terms() {
        return TestPages.fields(get("/terms").selectFirst("main form[action$=/terms]"));
    }

    private void written() {
        fixture.weather(branch, "Valley means");
        Map<String, String> fields = terms();
        fields.put("rate", "$" + RATE);
        fields.put("years", "10");
        assertThat(post("/terms", fields)).hasStatus3xxRedirection();
    }

    private EstimateFacts estimate() {
        return world.as(branch.manager(), () -> estimates.of(project)).orElseThrow();
    }

    private int contractKwh() {
        return java.util.Objects.requireNonNull(world.as(branch.manager(), () -> facts.facts(project))
                .contract()
                .guaranteedKwhPerYear());
    }

    private static Element row(Document page, String named) {
        return page.select("section[aria-labelledby=choices] tbody tr").stream()
                .filter(row -> row.text().contains(named))
                .findFirst()
                .orElseThrow();
    }

    private static double figure(Element row, int cell) {
        return Double.parseDouble(row.select("td").get(cell).text().replaceAll("[$,]", ""));
    }

    private static double loss(double k, double m, double s) {
        double z = (k - m) / s;
        return (k - m) * Normal.share(z) + s * Normal.density(z);
    }

    @Test
    void whatLacksIsSaidWithTheWayToIt() {
        Document page = get("");
        assertThat(page.select("h1").text()).isEqualTo("Sedge Hollow Dairy promises 118,800 kWh a year");
        assertThat(page.select(".note-wait").text())
                .contains("The branch has no weather yet.", "The terms of the guarantee are not written yet");
        assertThat(page.select(".note-wait a"))
                .extracting(link -> link.attr("href").replaceAll(".*/", ""))
                .containsExactly("yield", "terms");
        fixture.weather(branch, "Valley means");
        Document unpriced = get("");
        assertThat(row(unpriced, "P90").text()).contains("10").contains("–").doesNotContain("$");
    }

    @Test
    void everyFigureIsTheLossFunctionOfTheNormalDistribution() {
        written();
        EstimateFacts estimate = estimate();
        Document page = get("");
        assertThat(page.select("h1").text())
                .matches("Sedge Hollow Dairy promises 118,800 kWh: \\$[\\d,]+ a year owed on average");
        assertThat(page.select(".note-risk").text()).contains("is invented");
        double sigma = estimate.kwh() * Math.hypot(estimate.yearShare(), estimate.modelShare());
        double[] z = {0, 0.6744898, 1.2815516, 1.6448536, 2.3263479};
        String[] names = {"P50", "P75", "P90", "P95", "P99"};
        for (int at = 0; at < z.length; at++) {
            Element row = row(page, names[at]);
            double kwh = Math.floor(estimate.kwh() - z[at] * sigma);
            assertThat(figure(row, 0)).isCloseTo(kwh, within(1.0));
            double mean = RATE * loss(kwh, estimate.kwh(), sigma);
            double fading = (1 - Math.pow(0.995, 10)) / 0.005 / 10;
            if (mean * fading >= 1) {
                assertThat(figure(row, 2)).isCloseTo(mean * fading, within(0.6));
                assertThat(figure(row, 5)).isCloseTo(10 * mean * fading, within(0.6));
            }
            assertThat(figure(row, 3))
                    .isCloseTo(RATE * Math.max(0, kwh - (estimate.kwh() - 1.2815516 * sigma)), within(0.6));
            assertThat(figure(row, 4))
                    .isCloseTo(RATE * Math.max(0, kwh - (estimate.kwh() - 1.6448536 * sigma)), within(0.6));
        }
        assertThat(page.select("section[aria-labelledby=years] tbody tr")).hasSize(10);
    }

    @Test
    void choosingOneWritesTheContractAndTheJournalAndTheGateStillHolds() throws Exception {
        written();
        Document page = get("");
        Element form = row(page, "P90").select("form").get(0);
        int kwh = Integer.parseInt(form.select("input[name=kwh]").val());
        Map<String, String> fields = Map.of(
                "kwh",
                String.valueOf(kwh),
                "version",
                form.select("input[name=version]").val());
        assertThat(post("", fields)).hasStatus3xxRedirection();
        assertThat(contractKwh()).isEqualTo(kwh);
        assertThat(row(get(""), "P90").text()).contains("in the contract");
        String journal = mvc.get()
                .uri("/projects/" + project + "/journal")
                .with(world.signedIn(branch.projectManager()))
                .exchange()
                .getResponse()
                .getContentAsString();
        assertThat(Jsoup.parse(journal).text()).contains("guaranteed energy a year 118800 kWh → %d kWh".formatted(kwh));
        Finding keeps = ask("designed.15");
        assertThat(keeps).isInstanceOf(Finding.Satisfied.class);
        assertThat(keeps.sentence()).contains("the contract’s figure %,d kWh".formatted(kwh));
        assertThat(ask("signed.7")).isInstanceOf(Finding.Recorded.class);
        assertThat(ask("signed.7").sentence())
                .isEqualTo(
                        "%,d kWh in the first year, 0.5 %% less each later year; 10 years, settled each year by itself,"
                                        .formatted(kwh)
                                + " rate agreed; the firm carries bad years; surplus not kept.");
    }

    private Finding ask(String item) {
        GateRule rule = rules.stream()
                .filter(each -> each.item().equals(item))
                .findFirst()
                .orElseThrow();
        return world.as(
                branch.manager(),
                () -> transaction.execute(status -> rule.check(new GateLook(facts.factsUnchecked(project)))));
    }

    @Test
    void whoWasSlowerSeesBothPromises() {
        written();
        String version = row(get(""), "P90").select("input[name=version]").val();
        assertThat(post("", Map.of("kwh", "110,000", "version", version))).hasStatus3xxRedirection();
        MvcTestResult slower = post("", Map.of("kwh", "100000", "version", version));
        assertThat(slower).hasStatus(409);
        assertThat(TestPages.read(slower).text()).contains("110000", "100000");
        assertThat(contractKwh()).isEqualTo(110_000);
    }

    @Test
    void aPromiseAboveTheMiddleYearIsSaid() {
        written();
        String version = row(get(""), "P90").select("input[name=version]").val();
        int bold = (int) (1.05 * estimate().kwh());
        assertThat(post("", Map.of("kwh", String.valueOf(bold), "version", version)))
                .hasStatus3xxRedirection();
        assertThat(get("").select(".note-trouble").text())
                .contains("stand above the middle year (P50)", "more than not");
    }

    @Test
    void anotherPromiseIsWeighedAndWhatIsNoneIsRefused() {
        written();
        assertThat(row(get("?kwh=99000"), "tried here").text()).contains("99,000");
        MvcTestResult none = ask("?kwh=many", branch.manager());
        assertThat(none).hasStatus(422);
        assertThat(TestPages.read(none).text()).contains("as a whole number from 1 to 50,000,000 kWh");
        assertThat(post("", Map.of())).hasStatus(422);
        assertThat(post("", Map.of("kwh", "0", "version", "0"))).hasStatus(422);
    }

    @Test
    void termsChangeWhatIsOwed() {
        written();
        double before = figure(row(get(""), "P75"), 2);
        Map<String, String> fields = terms();
        fields.put("free", "5 %");
        assertThat(post("/terms", fields)).hasStatus3xxRedirection();
        assertThat(figure(row(get(""), "P75"), 2)).isLessThan(before);
        fields = terms();
        fields.put("free", "0");
        fields.put("weather", "adjusted");
        fields.put("settled", "5");
        assertThat(post("/terms", fields)).hasStatus3xxRedirection();
        Document page = get("");
        assertThat(page.select("section[aria-labelledby=years] tbody tr")).hasSize(2);
        assertThat(page.text()).contains("the promise follows the light of the year", "settled 5 years together");
        EstimateFacts estimate = estimate();
        assertThat(figure(row(page, "P90"), 0))
                .isCloseTo(estimate.kwh() * (1 - 1.2815516 * estimate.modelShare()), within(1.0));
    }

    @Test
    void badTermsAreRefusedAtTheirFieldsAndKept() {
        fixture.weather(branch, "Valley means");
        Map<String, String> fields = terms();
        fields.put("rate", "cheap");
        fields.put("years", "0");
        fields.put("settled", "2.5");
        fields.put("free", "31");
        fields.put("beginsOn", "soon");
        fields.put("weather", "sunny");
        MvcTestResult answer = post("/terms", fields);
        assertThat(answer).hasStatus(422);
        Document page = TestPages.read(answer);
        assertThat(page.select(".field.bad")).hasSize(6);
        assertThat(page.text())
                .contains("Write what a missing kWh costs as a number from 0 to 5 dollars for each kWh.")
                .contains("Write the years of the guarantee as a whole number from 1 to 40 years.");
        assertThat(page.select("input[name=rate]").val()).isEqualTo("cheap");
        assertThat(post("/terms", Map.of())).hasStatus(422);
    }

    @Test
    void termsChangedMeanwhileLieBesideOnesOwn() {
        written();
        Map<String, String> fields = terms();
        fields.put("rate", "0.2");
        assertThat(post("/terms", fields)).hasStatus3xxRedirection();
        fields.put("rate", "0.3");
        MvcTestResult slower = post("/terms", fields);
        assertThat(slower).hasStatus(409);
        assertThat(TestPages.read(slower).text()).contains("0.2", "0.3");
    }

    @Test
    void aDesignerSeesNeitherThePageNorItsLinkNorTheRate() throws Exception {
        written();
        assertThat(ask("", branch.designer())).hasStatus(403);
        for (String suffix : List.of("/yield", "/journal")) {
            String seen = mvc.get()
                    .uri("/projects/" + project + suffix)
                    .with(world.signedIn(branch.designer()))
                    .exchange()
                    .getResponse()
                    .getContentAsString();
            assertThat(seen).doesNotContain("/guarantee\"").doesNotContain("0.12");
        }
    }

    @Test
    void thePageTakesAFixedNumberOfQueries() {
        written();
        get("");
        assertThat(Queries.count(() -> get(""))).isLessThanOrEqualTo(20);
    }
}
