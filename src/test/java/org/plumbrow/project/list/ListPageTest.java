package org.plumbrow.project.list;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import java.util.stream.IntStream;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.plumbrow.PlumbrowTest;
import org.plumbrow.Queries;
import org.plumbrow.TestPages;
import org.plumbrow.TestWorld;
import org.plumbrow.TestWorld.TestBranch;
import org.plumbrow.calc.duration.Milestone;
import org.plumbrow.database.BranchWall;
import org.plumbrow.database.Ids;
import org.plumbrow.project.Duty;
import org.plumbrow.project.ProjectFixture;
import org.plumbrow.project.ProjectOutlook;
import org.plumbrow.project.ProjectOutlook.AtTheGate;
import org.plumbrow.web.Visitor;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.web.servlet.assertj.MvcTestResult;
import org.springframework.transaction.support.TransactionTemplate;

/** The list of projects as a page: found, filtered, ordered, paged, counted. */
@PlumbrowTest
class ListPageTest {

    @Autowired
    TestWorld world;

    @Autowired
    TestPages pages;

    @Autowired
    ProjectFixture projects;

    @Autowired
    ProjectOutlook outlook;

    @Autowired
    TransactionTemplate transaction;

    private TestBranch branch;

    @BeforeEach
    void aBranch() {
        branch = world.branch();
    }

    @Test
    void whoActsSoonestStandsFirst() {
        UUID later = projects.aHomeRoof().named("Later").in(branch).build();
        UUID nobody = projects.aHomeRoof().named("Nobody").in(branch).build();
        UUID sooner = projects.aHomeRoof().named("Sooner").in(branch).build();
        tell(() -> {
            outlook.nextGate(
                    later, new AtTheGate(2, 9, "Rosa, permits", "Renew the ticket.", LocalDate.of(2027, 3, 9)));
            outlook.nextGate(sooner, new AtTheGate(1, 9, "Nell, Crew 2", "Test strings.", LocalDate.of(2027, 3, 2)));
        });
        assertThat(names(page(""))).containsExactly("Sooner", "Later", "Nobody");
        assertThat(page("").select("tbody tr").first().text()).contains("Nell, Crew 2", "Tue, Mar 2");
        assertThat(nobody).isNotNull();
    }

    @Test
    void aProjectIsFoundByTheBeginningOfItsWordsAndTheEndOfItsMeter() {
        projects.aDairyGroundMount()
                .named("Heron Marsh Dairy")
                .in(branch)
                .meters("55 120 448")
                .build();
        projects.aHomeRoof().named("Birch Lane").in(branch).meters("9981").build();
        assertThat(names(page("?q=her dai"))).containsExactly("Heron Marsh Dairy");
        assertThat(names(page("?q=20448"))).containsExactly("Heron Marsh Dairy");
        assertThat(names(page("?q=" + branch.code() + "-2027-002"))).containsExactly("Birch Lane");
        assertThat(names(page("?q=sedge hollow road"))).containsExactly("Heron Marsh Dairy");
        assertThat(page("?q=zzz").select("h1").text()).isEqualTo("No project is found");
        assertThat(page("?q=%25").select("h1").text()).isEqualTo("No project is found");
    }

    @Test
    void eachFilterNarrowsTheList() {
        Visitor other = world.person("Rosa", branch.id(), org.plumbrow.web.Role.PROJECT_MANAGER);
        UUID mine = projects.aHomeRoof().named("Mine").in(branch).build();
        UUID hers = projects.aHomeRoof()
                .named("Hers")
                .in(branch)
                .inCharge(Duty.PROJECT_MANAGER, other.personId(), "Rosa")
                .promised(Milestone.SYSTEM_ON, LocalDate.of(2027, 4, 1))
                .build();
        UUID crew = Ids.next();
        tell(() -> {
            outlook.planned(hers, LocalDate.of(2027, 4, 2));
            outlook.planned(mine, LocalDate.of(2027, 4, 2));
            outlook.crews(hers, List.of(new ProjectOutlook.BookedCrew(crew, "Crew 1")));
        });
        assertThat(names(page("?manager=me"))).containsExactly("Mine");
        assertThat(names(page("?manager=" + other.personId()))).containsExactly("Hers");
        assertThat(names(page("?late=yes"))).containsExactly("Hers");
        assertThat(names(page("?late=no"))).containsExactly("Mine");
        assertThat(names(page("?crew=" + crew))).containsExactly("Hers");
        assertThat(names(page("?stage=new"))).containsExactlyInAnyOrder("Hers", "Mine");
        assertThat(names(page("?stage=signed"))).isEmpty();
        assertThat(page("").select("h1").text()).isEqualTo("2 projects are under way, one late");
        assertThat(page("").select("#crew option").eachText()).containsExactly("any", "Crew 1");
    }

    @Test
    void theOrderIsInTheAddressAndTheHeadSaysSo() {
        projects.aHomeRoof().named("Birch").in(branch).build();
        projects.aHomeRoof().named("alder").in(branch).build();
        Document byName = page("?sort=name");
        assertThat(names(byName)).containsExactly("alder", "Birch");
        assertThat(byName.select("th[aria-sort=ascending]").text()).isEqualTo("Project");
        assertThat(names(page("?sort=number"))).containsExactly("alder", "Birch");
        assertThat(names(page("?sort=nonsense&page=-3&manager=x"))).containsExactly("Birch", "alder");
    }

    @Test
    void fiftyStandOnAPage() {
        IntStream.range(0, 51).forEach(n -> projects.aHomeRoof().in(branch).build());
        assertThat(names(page(""))).hasSize(50);
        assertThat(names(page("?page=2"))).hasSize(1);
        assertThat(page("?page=2").select("nav[aria-label=Pages]").text()).contains("51 to 51 of 51");
    }

    @Test
    void thePageTakesTheSameQueriesForOneProjectAsForMany() {
        projects.aHomeRoof().in(branch).build();
        Queries few = Queries.during(() -> page(""));
        IntStream.range(0, 20).forEach(n -> projects.aHomeRoof().in(branch).build());
        Queries many = Queries.during(() -> page("?q=alder"));
        assertThat(few.selects().stream().filter(sql -> sql.contains("project_line l")))
                .hasSize(2);
        assertThat(many.selects()).hasSameSizeAs(few.selects());
        assertThat(few.selects()).hasSize(7);
    }

    @Test
    void aCrewLeadSeesOnlyWhereTheCrewIsBooked() {
        projects.aHomeRoof().in(branch).build();
        assertThat(Jsoup.parse(body(get("/projects", branch.crewLead())))
                        .select("h1")
                        .text())
                .isEqualTo("No project is under way");
    }

    @Test
    void aProjectOfAnotherBranchIsNeverInTheList() {
        projects.aHomeRoof().named("Elsewhere").in(world.branch()).build();
        assertThat(names(page("?q=elsewhere"))).isEmpty();
    }

    @Test
    void theListLeavesAsATableWithoutFormulas() {
        projects.aHomeRoof().named("=HYPERLINK(\"x\")").in(branch).build();
        MvcTestResult answer = get("/projects/export?sort=name", branch.projectManager());
        assertThat(answer)
                .hasStatusOk()
                .headers()
                .hasValue(
                        "Content-Disposition", "attachment; filename=\"projects.csv\"; filename*=UTF-8''projects.csv");
        String csv = body(answer);
        assertThat(csv.lines().findFirst().orElseThrow()).startsWith("number,name,place,stage");
        assertThat(csv)
                .contains(branch.code()
                        + "-2027-001,\"'=HYPERLINK(\"\"x\"\")\",\"12 Alder Lane, Quillback\",New,under way,9.2");
        assertThat(get("/projects/export", branch.designer())).hasStatus(403);
    }

    private void tell(Runnable what) {
        BranchWall.everywhere(() -> transaction.executeWithoutResult(status -> what.run()));
    }

    private Document page(String query) {
        return Jsoup.parse(body(get("/projects" + query, branch.projectManager())));
    }

    private MvcTestResult get(String address, Visitor visitor) {
        return pages.get(visitor, address);
    }

    private static String body(MvcTestResult answer) {
        assertThat(answer).hasStatusOk();
        try {
            return answer.getResponse().getContentAsString();
        } catch (java.io.UnsupportedEncodingException e) {
            throw new IllegalStateException(e);
        }
    }

    private static List<String> names(Document page) {
        return page.select("tbody th a").eachText();
    }
}
