package org.plumbrow.estimate.savings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.math.RoundingMode;
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
import org.plumbrow.calc.finance.Growth;
import org.plumbrow.calc.finance.Loan;
import org.plumbrow.estimate.EstimateFacts;
import org.plumbrow.estimate.Estimates;
import org.plumbrow.estimate.site.EstimateFixture;
import org.plumbrow.project.ProjectFixture;
import org.plumbrow.web.Visitor;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.web.servlet.assertj.MvcTestResult;

/** The pages of a project's savings, as people click through them. */
@PlumbrowTest
class SavingsPagesTest {

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

    private void withYieldAndUse(double kwhAMonth) {
        fixture.weather(branch, "Valley means");
        fixture.use(branch, project, "Barn", kwhAMonth);
    }

    private MvcTestResult ask(String suffix, Visitor who) {
        return pages.get(who, "/projects/" + project + suffix);
    }

    private Document get(String suffix) {
        return pages.page(branch.projectManager(), "/projects/" + project + suffix);
    }

    private EstimateFacts facts() {
        return world.as(branch.manager(), () -> estimates.of(project)).orElseThrow();
    }

    /** Every field of the form as the page has it. */
    private Map<String, String> form() {
        return TestPages.fields(get("/savings/terms").selectFirst("main form[action$=/terms]"));
    }

    private MvcTestResult post(Map<String, String> fields) {
        return pages.post(branch.projectManager(), "/projects/" + project + "/savings/terms", fields);
    }

    /** Likely figure of an answer, by the key's words. */
    private static String likely(Document page, String answer) {
        return row(page, answer).select("td").get(1).text();
    }

    private static Element row(Document page, String answer) {
        return page.select("section[aria-labelledby=answers] tbody tr").stream()
                .filter(row -> row.select("summary").text().equals(answer))
                .findFirst()
                .orElseThrow();
    }

    /** The common case: about 16,000 in the first year, 2 % a year, 30 years, 0.5 % of fading. */
    private Map<String, String> theCommonCase() {
        Map<String, String> fields = form();
        String rate = BigDecimal.valueOf(16_000)
                .divide(BigDecimal.valueOf(facts().kwh()), 9, RoundingMode.HALF_UP)
                .toPlainString();
        fields.put("rate", rate);
        fields.put("export", rate);
        fields.put("upkeep", "0");
        return fields;
    }

    @Test
    void withoutYieldAndUseThePageSaysWhatIsMissingAndWhereToGo() {
        Document page = get("/savings");
        assertThat(page.select("h1").text()).isEqualTo("Sedge Hollow Dairy: savings are not known yet");
        assertThat(page.text()).contains("The branch has no weather yet.");
        assertThat(page.select("main a.button[href$=/yield]")).isNotEmpty();
        fixture.weather(branch, "Valley means");
        page = get("/savings");
        assertThat(page.text())
                .contains("Use of twelve months is not known.")
                .doesNotContain("The branch has no weather");
        assertThat(page.select("main a.button[href$=/use]")).isNotEmpty();
        assertThat(page.text()).doesNotContain("$");
    }

    @Test
    void theCommonCaseComesOutOnThePageWithItsRangeAndItsFading() {
        withYieldAndUse(20_000);
        assertThat(post(theCommonCase())).hasStatus3xxRedirection();
        Document page = get("/savings");
        assertThat(page.select("h1").text())
                .matches("Sedge Hollow Dairy saves \\$\\d{3},\\d{3} to \\$\\d{3},\\d{3} over 30 years,"
                        + " most likely \\$599,696");
        assertThat(likely(page, "Saved on the bill")).isEqualTo("$599,696");
        assertThat(row(page, "Saved on the bill").select("th").text())
                .contains("100.0 % used on site", "= $16,000.", "production × (1 − 0.5 %)", "× (1 + 2 %)");
        assertThat(page.select("section[aria-labelledby=from]").text())
                .contains("Fading of the production 0.5 % a year written for this project")
                .contains("Production of year 1", "the yield by the contract, weather Valley means")
                .contains("Price of the system $198,000 the contract");
        assertThat(page.select("section[aria-labelledby=years] table.rows tbody tr"))
                .hasSize(31);
        assertThat(page.select(".note-risk").text()).contains("invented").doesNotContain("Nobody has written down");
    }

    @Test
    void lowAndHighAreProductionAndPricesApart() {
        withYieldAndUse(20_000);
        assertThat(post(theCommonCase())).hasStatus3xxRedirection();
        Document page = get("/savings");
        double apart = 1.2815516 * facts().spread().share(30);
        double low = Growth.sum(16_000 * (1 - apart), Growth.ratio(0.01, 0.005), 30);
        double high = Growth.sum(16_000 * (1 + apart), Growth.ratio(0.03, 0.005), 30);
        Element row = row(page, "Saved on the bill");
        assertThat(dollars(row.select("td").get(0).text())).isCloseTo(low, within(1.0));
        assertThat(dollars(row.select("td").get(2).text())).isCloseTo(high, within(1.0));
    }

    private static double dollars(String written) {
        return Double.parseDouble(written.replaceAll("[$,]", "").replace('−', '-'));
    }

    @Test
    void worthTodayReturnAndCostOfAKwhAgreeWithTheClosedForms() {
        withYieldAndUse(20_000);
        assertThat(post(theCommonCase())).hasStatus3xxRedirection();
        Document page = get("/savings");
        double worth = Growth.presentValue(16_000, Growth.ratio(0.02, 0.005), 0.05, 30);
        double kwh = Growth.presentValue(facts().kwh(), 0.995, 0.05, 30);
        assertThat(dollars(likely(page, "Worth today, after the purchase"))).isCloseTo(worth - 198_000, within(1.0));
        assertThat(likely(page, "What a kWh from it costs")).isEqualTo("$%.3f".formatted(198_000 / kwh));
        assertThat(likely(page, "Simple pay-back")).isEqualTo("12.4 years");
        assertThat(likely(page, "Left after purchase and upkeep")).isEqualTo("$401,696");
        assertThat(page.select(".lead").text()).startsWith("It pays for itself after 11.");
    }

    @Test
    void untilSomebodyWritesTheTermsThePageSaysThatTheyAreUsual() {
        withYieldAndUse(8_000);
        Document page = get("/savings");
        assertThat(page.select(".note-risk").text()).contains("Nobody has written down", "common practice, no source");
        assertThat(page.select("section[aria-labelledby=from]").text())
                .contains("What a bought kWh costs $0.16 common practice, no source")
                .contains("0.5 % a year published median: Jordan and Kurtz")
                .contains("Upkeep $1,485 in year 1");
        assertThat(page.select(".caution").text()).contains("no advice on taxes");
        assertThat(get("/savings/terms").text()).contains("Nothing is written yet");
    }

    @Test
    void incentivesAndALoanAreTakenLineByLine() {
        withYieldAndUse(20_000);
        Map<String, String> fields = theCommonCase();
        fields.put("incentives[0].name", "State rebate");
        fields.put("incentives[0].kind", "SHARE_OF_PRICE");
        fields.put("incentives[0].amount", "5.7 %");
        fields.put("incentives[1].name", "Payment for each kWh");
        fields.put("incentives[1].kind", "PER_KWH");
        fields.put("incentives[1].amount", "0.02");
        fields.put("incentives[1].firstYear", "1");
        fields.put("incentives[1].years", "5");
        fields.put("loan", "150,000");
        fields.put("loanRate", "6.5");
        fields.put("loanMonths", "180");
        assertThat(post(fields)).hasStatus3xxRedirection();
        Document page = get("/savings");
        assertThat(page.text())
                .contains("Incentive: State rebate 5.7 % of the price, with the purchase")
                .contains("Incentive: Payment for each kWh $0.02 for each kWh made, years 1 to 5")
                .contains("Purchase: price of the contract $198,000 less $11,286 of incentives");
        String monthly = "$%,.0f".formatted(new Loan(150_000, 0.065, 180).monthlyUsd());
        assertThat(page.select("section[aria-labelledby=loan] h2").text())
                .isEqualTo("The loan costs " + monthly + " a month");
        Map<String, String> again = form();
        assertThat(again)
                .containsEntry("incentives[0].amount", "5.7")
                .containsEntry("loanRate", "6.5")
                .containsEntry("rate", fields.get("rate"));
        assertThat(again).containsKey("incentives[2].name");
        again.put("incentives[0].name", "");
        again.put("incentives[0].amount", "");
        again.put("loan", "");
        again.put("loanRate", "");
        again.put("loanMonths", "");
        assertThat(post(again)).hasStatus3xxRedirection();
        assertThat(get("/savings").text()).doesNotContain("State rebate", "The loan costs");
        assertThat(form()).doesNotContainKey("incentives[2].name");
    }

    @Test
    void theJournalNamesWhatChangedAndNoFigure() {
        withYieldAndUse(8_000);
        assertThat(post(form())).hasStatus3xxRedirection();
        Map<String, String> fields = form();
        fields.put("rate", "0.1873");
        fields.put("discount", "6");
        fields.put("incentives[0].name", "Grant");
        fields.put("incentives[0].amount", "4,321");
        assertThat(post(fields)).hasStatus3xxRedirection();
        String journal = get("/journal").text();
        assertThat(journal)
                .contains("Terms of the savings written down.")
                .contains("Terms of the savings changed: a bought kWh, discount, incentives.")
                .doesNotContain("1873", "4,321");
    }

    @Test
    void whatCannotBeIsRefusedAtItsFieldAndTheRestIsKept() throws Exception {
        withYieldAndUse(8_000);
        Map<String, String> fields = form();
        fields.put("rate", "twelve cents");
        fields.put("years", "30.5");
        fields.put("escalation", "40");
        fields.put("upkeep", "");
        fields.put("incentives[0].name", "");
        fields.put("incentives[0].kind", "SHARE_OF_PRICE");
        fields.put("incentives[0].amount", "140");
        fields.put("loan", "10000");
        fields.put("discount", "4.25");
        MvcTestResult answer = post(fields);
        assertThat(answer).hasStatus(422);
        Document page = Jsoup.parse(answer.getResponse().getContentAsString());
        assertThat(page.select(".field.bad")).hasSize(8);
        assertThat(page.text())
                .contains("Write what a bought kWh costs as a number from 0 to 5 USD/kWh.")
                .contains("Write for how many years as a whole number from 1 to 40 years.")
                .contains("Write the amount as a number from 0 to 100 % of the price.")
                .contains("Write what this money is called.")
                .contains("Write the loan’s duration as a whole number from 1 to 600 months.");
        assertThat(page.select("input[name=discount]").val()).isEqualTo("4.25");
        assertThat(page.select("input[name=rate]").val()).isEqualTo("twelve cents");
        assertThat(post(Map.of())).hasStatus(422);
    }

    @Test
    void whoWasSlowerSeesBoth() throws Exception {
        withYieldAndUse(8_000);
        Map<String, String> fields = form();
        fields.put("rate", "0.171");
        assertThat(post(fields)).hasStatus3xxRedirection();
        fields.put("rate", "0.192");
        MvcTestResult slower = post(fields);
        assertThat(slower).hasStatus(409);
        assertThat(Jsoup.parse(slower.getResponse().getContentAsString()).text())
                .contains("A bought kWh", "0.171", "0.192");
        assertThat(form()).containsEntry("rate", "0.171");
    }

    @Test
    void designersAndCrewsSeeNoMoney() throws Exception {
        withYieldAndUse(8_000);
        assertThat(ask("/savings", branch.designer())).hasStatus(403);
        assertThat(ask("/savings/terms", branch.designer())).hasStatus(403);
        for (String page : new String[] {"/yield", "/use", "/use/size", ""}) {
            MvcTestResult answer = ask(page, branch.designer());
            assertThat(answer).hasStatusOk();
            assertThat(answer.getResponse().getContentAsString()).doesNotContain("/savings");
            assertThat(get(page).select("main a[href$=/savings]")).isNotEmpty();
        }
    }

    @Test
    void withoutAPriceOnlyTheBillIsAnswered() {
        withYieldAndUse(8_000);
        project = projects.aDairyGroundMount()
                .in(branch)
                .named("No price yet")
                .withoutPrice()
                .build();
        fixture.use(branch, project, "Barn", 8_000);
        Document page = get("/savings");
        assertThat(page.select("section[aria-labelledby=answers] tbody tr")).hasSize(1);
        assertThat(page.text()).contains("The contract names no price").contains("Price of the system not known");
        assertThat(page.select("main a[href$=/contract]")).isNotEmpty();
    }

    @Test
    void thePagesTakeAFixedNumberOfQueries() {
        withYieldAndUse(8_000);
        assertThat(post(form())).hasStatus3xxRedirection();
        get("/savings");
        assertThat(Queries.count(() -> get("/savings"))).isLessThanOrEqualTo(18);
        assertThat(Queries.count(() -> get("/savings/terms"))).isLessThanOrEqualTo(14);
    }
}
