package org.plumbrow.estimate.guarantee;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

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
import org.plumbrow.calc.Normal;
import org.plumbrow.estimate.EstimateFacts;
import org.plumbrow.estimate.Estimates;
import org.plumbrow.estimate.site.EstimateFixture;
import org.plumbrow.project.ProjectFixture;
import org.plumbrow.project.Stage;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.web.servlet.assertj.MvcTestResult;
import org.springframework.transaction.support.TransactionTemplate;

/**
 * What the branch owes in a bad year. Figures are held against the loss function of the normal distribution, E[(K - X)+]
 * = (K - m) Phi(z) + s phi(z), with the weather given: m = E (1 + year sqrt(r) c), c the quantile of the bad year.
 */
@PlumbrowTest
class BookPagesTest {

    private static final double RATE = 0.12;

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
    GuaranteeEditing editing;

    @Autowired
    GuaranteeReading reading;

    @Autowired
    TransactionTemplate transaction;

    private TestBranch branch;

    @BeforeEach
    void aBranch() {
        branch = world.branch();
        fixture.weather(branch, "Valley means");
    }

    private Document book(String query) {
        return pages.page(branch.manager(), "/production" + query);
    }

    private EstimateFacts promised(String name) {
        UUID project = projects.aDairyGroundMount()
                .named(name)
                .in(branch)
                .reached(Stage.SIGNED)
                .build();
        return world.as(branch.manager(), () -> {
            EstimateFacts facts =
                    transaction.execute(status -> estimates.of(project).orElseThrow());
            editing.change(project, -1, new PromiseTerms(RATE, 0, 10, 1, 0.5, 0.5, 0, true, false, null));
            editing.promise(project, contractVersion(project), (int) facts.kwh());
            return facts;
        });
    }

    private long contractVersion(UUID project) {
        return reading.page(project, null).contractVersion();
    }

    private static double usd(String text) {
        return Double.parseDouble(text.replaceAll("[^0-9.]", ""));
    }

    @Test
    void oneBadYearHitsAll() {
        EstimateFacts one = promised("North dairy");
        promised("South dairy");
        Document page = book("");

        double k = Math.floor(one.kwh());
        double r = 0.7;
        double mean = one.kwh() * (1 + one.yearShare() * Math.sqrt(r) * Normal.quantile(0.1));
        double own = one.kwh() * Math.hypot(one.yearShare() * Math.sqrt(1 - r), one.modelShare());
        double z = (k - mean) / own;
        double each = RATE * ((k - mean) * Normal.share(z) + own * Normal.density(z));
        assertThat(page.select("h1").text()).startsWith("If next year is a one-in-10 bad year, about $");
        assertThat(usd(page.select("h1").text().replaceAll(".*about ", ""))).isCloseTo(2 * each, within(1.0));
        assertThat(page.select("section[aria-labelledby=each] tbody tr")).hasSize(2);
        assertThat(page.select("section[aria-labelledby=weathers] tbody tr").text())
                .startsWith("Valley means 2");
    }

    @Test
    void aRarerYearAndMoreLikeWeatherCostMore() {
        promised("North dairy");
        promised("South dairy");
        double usual = owed("");
        assertThat(owed("?oneIn=50")).isGreaterThan(usual);
        assertThat(owed("?correlation=1")).isGreaterThan(usual);
        assertThat(owed("?correlation=0")).isLessThan(usual);
    }

    private double owed(String query) {
        return usd(book(query).select("h1").text().replaceAll(".*about ", ""));
    }

    @Test
    void whatIsNoQuestionIsRefusedAtItsFieldAndTheUsualOneAnswered() throws Exception {
        promised("North dairy");
        MvcTestResult answer = pages.get(branch.manager(), "/production?oneIn=never&correlation=7");
        assertThat(answer).hasStatus(422);
        Document page = Jsoup.parse(answer.getResponse().getContentAsString());
        assertThat(page.select("#oneIn").val()).isEqualTo("never");
        assertThat(page.select("#oneIn-wrong").text()).contains("as a number from 2 to 200 years");
        assertThat(page.select("#correlation-wrong").text()).contains("as a number from 0 to 1");
        assertThat(page.select("h1").text()).contains("one-in-10");
    }

    @Test
    void whatIsNotInTheSumIsNamedWithItsReason() {
        projects.aDairyGroundMount()
                .named("No terms yet")
                .in(branch)
                .reached(Stage.SIGNED)
                .build();
        Document page = book("");
        assertThat(page.select("h1").text()).isEqualTo("Production: no promise can be counted yet");
        assertThat(page.select("section[aria-labelledby=left]").text())
                .contains("No terms yet", "The terms of its guarantee are not written.");
    }

    /** Nobody has promised anything yet. */
    @Test
    void whatIsNotSignedIsNotInTheBook() {
        UUID project =
                projects.aDairyGroundMount().named("Not signed").in(branch).build();
        world.as(branch.manager(), () -> {
            transaction.executeWithoutResult(status -> estimates.of(project));
            editing.change(project, -1, new PromiseTerms(RATE, 0, 10, 1, 0.5, 0.5, 0, true, false, null));
            return project;
        });
        assertThat(book("").text()).doesNotContain("Not signed");
    }

    @Test
    void onlyManagersSeeTheBookAndItLeavesAsATable() {
        promised("North dairy");
        assertThat(pages.get(branch.projectManager(), "/production")).hasStatus(403);
        assertThat(pages.get(branch.designer(), "/production")).hasStatus(403);
        assertThat(pages.get(branch.manager(), "/production/export?oneIn=20&correlation=0.5"))
                .hasStatusOk()
                .bodyText()
                .startsWith("number,project,weather")
                .contains("North dairy");
    }

    @Test
    void theBookTakesAsManyQueriesWithThirtyPromisesAsWithOne() {
        promised("First");
        book("");
        int one = Queries.count(() -> pages.get(branch.manager(), "/production"));
        for (int i = 0; i < 30; i++) {
            promised("Dairy " + i);
        }
        assertThat(Queries.count(() -> pages.get(branch.manager(), "/production")))
                .isEqualTo(one)
                .isLessThanOrEqualTo(8);
    }
}
