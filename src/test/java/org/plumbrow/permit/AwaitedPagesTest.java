package org.plumbrow.permit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import java.util.UUID;
import java.util.stream.Stream;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.plumbrow.PlumbrowTest;
import org.plumbrow.Queries;
import org.plumbrow.TestPages;
import org.plumbrow.TestWorld;
import org.plumbrow.TestWorld.TestBranch;
import org.plumbrow.project.ProjectFixture;
import org.plumbrow.project.Projects;
import org.plumbrow.project.Stage;
import org.plumbrow.project.gate.GateLook;
import org.plumbrow.project.gate.Gates;
import org.plumbrow.project.gate.ItemState;
import org.plumbrow.project.gate.ItemView;
import org.plumbrow.web.Visitor;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.web.servlet.assertj.MvcTestResult;

/** What a project waits for and who owes it; today is Monday, March 1, 2027. */
@PlumbrowTest
class AwaitedPagesTest {

    @Autowired
    TestWorld world;

    @Autowired
    TestPages pages;

    @Autowired
    ProjectFixture projects;

    @Autowired
    Gates gates;

    @Autowired
    AwaitedBook book;

    @Autowired
    Projects facts;

    private TestBranch branch;
    private UUID project;

    @BeforeEach
    void aDairy() {
        branch = world.branch();
        project = projects.aDairyGroundMount().in(branch).build();
    }

    private MvcTestResult get(String path, Visitor who) {
        return pages.get(who, path);
    }

    private Document page(String path) {
        MvcTestResult answer = get(path, branch.projectManager());
        assertThat(answer).hasStatusOk();
        Document page = TestPages.read(answer);
        assertThat(page.select("h1")).hasSize(1);
        return page;
    }

    private MvcTestResult post(String suffix, String... fields) {
        return pages.post(branch.projectManager(), "/projects/" + project + "/waits" + suffix, fields);
    }

    private MvcTestResult delivery(String suffix, String version, String... more) {
        String[] fields = {
            "kind", "MODULES_DELIVERY", "owedBy", "SUPPLIER", "owedName", "Alder Supply", "version", version
        };
        return post(suffix, with(fields, more));
    }

    private Awaited only() {
        List<Awaited> all = world.as(branch.projectManager(), () -> book.at(new GateLook(facts.facts(project))));
        assertThat(all).hasSize(1);
        return all.get(0);
    }

    @Test
    void whatIsLateStandsOnTopWithItsDaysAndWhatIsExpected() {
        assertThat(delivery("/new", "-1", "sentOn", "2027-02-01", "promisedOn", "2027-02-24"))
                .hasStatus3xxRedirection();
        Document page = page("/projects/" + project + "/waits");
        assertThat(page.selectFirst("h1").text()).contains("1 wait overdue");
        assertThat(page.selectFirst("table.fold tbody tr").text())
                .contains("Delivery of modules", "Alder Supply", "Overdue, 5 days", "by the branch’s table");
        assertThat(page("/projects/" + project + "/waits/" + only().id())
                        .selectFirst("h1")
                        .text())
                .isEqualTo("Delivery of modules: Alder Supply, 5 days over");
        Document all = page("/waits");
        assertThat(all.selectFirst("h1").text()).isEqualTo("1 wait is overdue, 1 open");
        assertThat(all.select("section h2").eachText()).contains("Alder Supply");
    }

    @Test
    void whatCameTeachesHowLongItsSupplierTakes() {
        assertThat(delivery("/new", "-1", "sentOn", "2027-02-01", "receivedOn", "2027-02-12"))
                .hasStatus3xxRedirection();
        assertThat(page("/projects/" + project + "/waits")
                        .select("table.fold tbody tr")
                        .text())
                .contains("Fri, Feb 12");
        Document all = page("/waits");
        assertThat(all.select("#learned ~ table tbody tr").text()).contains("Alder Supply", "1", "9 to 9");
        assertThat(all.selectFirst("h1").text()).isEqualTo("Nothing is overdue, 0 open");
    }

    /** The range of one answer is worked by hand in LeadTimeLearningTest; five and one answers leave 5/6 = 83 %. */
    @Test
    void thePageOfAWaitSaysWhichDaysThePlanTakes() {
        delivery("/new", "-1", "sentOn", "2027-02-01");
        String path = "/projects/" + project + "/waits/" + only().id();
        assertThat(page(path).select("section[aria-labelledby=used]").text())
                .contains("days before any answer", "No answers yet", "100 % of the middle");
        delivery("/" + only().id(), "0", "sentOn", "2027-02-01", "promisedOn", "2027-03-10");
        assertThat(page(path).select("section[aria-labelledby=used] > p").text())
                .contains("goes by the promised day");
        delivery("/" + only().id(), "1", "sentOn", "2027-02-01", "receivedOn", "2027-02-12");
        assertThat(page(path).select("section[aria-labelledby=used]").text())
                .contains("It came", "1 answer", "9.0", "83 % of the middle");
    }

    @Test
    void whatCannotBeSoIsRefusedAtItsFieldAndKept() {
        MvcTestResult early = delivery("/new", "-1", "sentOn", "2027-02-10", "receivedOn", "2027-02-09");
        assertThat(early).hasStatus(422);
        Document page = TestPages.read(early);
        assertThat(page.selectFirst("#receivedOn-wrong").text()).contains("before it was asked for");
        assertThat(page.selectFirst("#owedName").val()).isEqualTo("Alder Supply");
        assertThat(delivery("/new", "-1", "sentOn", "2027-03-02")).hasStatus(422);
        assertThat(delivery("/new", "-1", "result", "PASSED")).hasStatus(422);
        assertThat(post("/new", "version", "-1")).hasStatus(422);
    }

    @Test
    void whatHasToBePutRightIsAskedForAgainWithTheSameWords() {
        assertThat(post(
                        "/new",
                        "kind",
                        "INSPECTION",
                        "about",
                        "house 2",
                        "owedBy",
                        "US",
                        "version",
                        "-1",
                        "sentOn",
                        "2027-02-01",
                        "receivedOn",
                        "2027-02-03",
                        "result",
                        "CORRECTION"))
                .hasStatus3xxRedirection();
        assertThat(page("/projects/" + project + "/waits/" + only().id())
                        .select("section[aria-labelledby=used]")
                        .text())
                .contains("does not end the wait");
        String again = page("/projects/" + project + "/waits")
                .select("table.fold a:contains(ask again)")
                .attr("href");
        Document form = page(again);
        assertThat(form.select("#about").val()).isEqualTo("house 2");
        assertThat(form.select("#kind option[selected]").val()).isEqualTo("INSPECTION");
        assertThat(form.select("#sentOn").val()).isEmpty();
        assertThat(form.select("input[name=version]").val()).isEqualTo("-1");
        post("/new", "kind", "INSPECTION", "about", "house 2", "owedBy", "US", "version", "-1", "sentOn", "2027-02-08");
        assertThat(page("/projects/" + project + "/waits").select("a:contains(ask again)"))
                .isEmpty();
    }

    @Test
    void theGateToTheCutoverReadsTheInspectionOfTheServiceSide() throws Exception {
        assertThat(inspectionState()).isEqualTo(ItemState.OPEN);
        String[] inspection = {
            "kind", "SERVICE_INSPECTION", "owedBy", "US", "sentOn", "2027-02-08", "receivedOn", "2027-02-12"
        };
        assertThat(post("/new", with(inspection, "result", "CORRECTION", "version", "-1")))
                .hasStatus3xxRedirection();
        assertThat(inspectionState()).isEqualTo(ItemState.BROKEN);
        assertThat(post("/" + only().id(), with(inspection, "result", "PASSED", "version", "0")))
                .hasStatus3xxRedirection();
        ItemView passed = serviceInspection();
        assertThat(passed.state())
                .as("the certificate itself is still asked for")
                .isEqualTo(ItemState.OPEN);
        assertThat(passed.finding().sentence())
                .isEqualTo(
                        "Inspection of the service side: came Fri, Feb 12, 2027; the paper itself is not named there.");
    }

    private ItemState inspectionState() {
        return serviceInspection().state();
    }

    private ItemView serviceInspection() {
        return world.as(branch.projectManager(), () -> gates.view(project, Stage.CUTOVER)).items().stream()
                .filter(item -> item.code().equals("cutover.4"))
                .findFirst()
                .orElseThrow();
    }

    private static String[] with(String[] fields, String... more) {
        return Stream.concat(Arrays.stream(fields), Arrays.stream(more)).toArray(String[]::new);
    }

    @Test
    void aClearTicketNeedsItsLastDay() {
        String[] ticket = {
            "kind",
            "LOCATE",
            "owedBy",
            "LOCATE_SERVICE",
            "owedName",
            "One-call center",
            "sentOn",
            "2027-02-15",
            "receivedOn",
            "2027-02-18",
            "result",
            "CLEAR",
            "version",
            "-1"
        };
        assertThat(post("/new", ticket)).hasStatus(422);
        assertThat(post("/new", with(ticket, "expiresOn", "2027-03-15"))).hasStatus3xxRedirection();
        assertThat(only().isClearOn(java.time.LocalDate.of(2027, 2, 17))).isFalse();
        assertThat(only().isClearOn(java.time.LocalDate.of(2027, 2, 18))).isTrue();
        assertThat(only().isClearOn(java.time.LocalDate.of(2027, 3, 15))).isTrue();
        assertThat(only().isClearOn(java.time.LocalDate.of(2027, 3, 16))).isFalse();
    }

    @Test
    void whoeverIsSlowerSeesTheirsBesideYours() throws Exception {
        delivery("/new", "-1", "sentOn", "2027-02-01");
        String one = "/" + only().id();
        assertThat(delivery(one, "0", "sentOn", "2027-02-01", "promisedOn", "2027-03-10"))
                .hasStatus3xxRedirection();
        MvcTestResult slower = delivery(one, "0", "sentOn", "2027-02-01", "promisedOn", "2027-03-20");
        assertThat(slower).hasStatus(409);
        assertThat(slower.getResponse().getContentAsString()).contains("2027-03-10", "2027-03-20");
        assertThat(page("/projects/" + project + "/journal").text()).contains("promised for");
    }

    @Test
    void bothPagesReadTheSameHoweverMuchIsAwaited() {
        delivery("/new", "-1", "sentOn", "2027-02-01");
        String path = "/projects/" + project + "/waits";
        page(path);
        long few = Queries.count(() -> get(path, branch.projectManager()));
        long fewOfAll = Queries.count(() -> get("/waits", branch.projectManager()));
        for (int at = 0; at < 6; at++) {
            delivery("/new", "-1", "about", "lot " + at, "sentOn", "2027-02-01");
        }
        assertThat(Queries.count(() -> get(path, branch.projectManager()))).isEqualTo(few);
        assertThat(Queries.count(() -> get("/waits", branch.projectManager()))).isEqualTo(fewOfAll);
    }
}
