package org.plumbrow.schedule.scenario;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.UUID;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.plumbrow.PlumbrowTest;
import org.plumbrow.Queries;
import org.plumbrow.TestPages;
import org.plumbrow.TestWorld;
import org.plumbrow.TestWorld.TestBranch;
import org.plumbrow.branch.BranchSettings;
import org.plumbrow.calc.duration.EquipmentKind;
import org.plumbrow.calc.duration.Milestone;
import org.plumbrow.crew.Crews;
import org.plumbrow.project.ProjectFixture;
import org.plumbrow.project.Stage;
import org.plumbrow.schedule.ScheduleFixture;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.web.servlet.assertj.MvcTestResult;

@PlumbrowTest
class ScenarioPagesTest {

    private static final String ALL = "/look-ahead/scenarios";
    private static final LocalDate TODAY = LocalDate.of(2027, 3, 1);

    @Autowired
    TestWorld world;

    @Autowired
    TestPages pages;

    @Autowired
    ProjectFixture projects;

    @Autowired
    ScheduleFixture schedule;

    @Autowired
    Crews crews;

    @Autowired
    BranchSettings settings;

    private TestBranch branch;
    private UUID crew;

    @BeforeEach
    void aPlannedBranch() {
        branch = world.branch();
        crew = schedule.crew(branch, "Crew 1");
        aProject("First");
        schedule.planned(branch);
    }

    @Test
    void aLostCrewIsLaidBesideThePlanAndMovesItsJobs() {
        String page = begun("Crew 1 ill");
        assertThat(away(page, "60")).hasStatus3xxRedirection();
        Document all = document(get(ALL));
        assertThat(all.select("h1").text()).isEqualTo("1 scenario beside the plan");
        assertThat(all.select("tbody tr")).hasSize(2);
        assertThat(all.select("tbody tr").last().text()).contains("Crew 1 ill", "Crew 1 is away 60 working days");
        assertThat(moved(all, 1)).isEqualTo("1");
        assertThat(moved(all, 0)).isEqualTo("0");
        Document one = document(get(page));
        assertThat(one.select("h1").text()).startsWith("Crew 1 ill: ");
        assertThat(one.select("#told ~ details").text())
                .contains("1 crew Crew 1, ", "1 customer First, ", "→")
                .doesNotContain("null");
    }

    @Test
    void whatHelpsIsAddedToWhatIsLostAndBothAreRecordedTogether() {
        String page = begun("Crew 1 ill, one hired");
        away(page, "60");
        assertThat(more(page, "Crew 2")).hasStatus3xxRedirection();
        Document one = document(get(page));
        assertThat(one.select("#otherwise ~ ul li").eachText())
                .satisfiesExactly(
                        first -> assertThat(first).contains("Crew 1 is away 60 working days"),
                        second -> assertThat(second).contains("Crew 2, a crew like Crew 1, from Mon, Mar 1"));
        assertThat(post(page + "/accept", "version", "2")).hasStatus3xxRedirection();
        world.as(branch.manager(), () -> {
            assertThat(crews.crews(branch.id(), TODAY)).extracting("name").contains("Crew 1", "Crew 2");
            assertThat(crews.crew(crew).orElseThrow().away()).singleElement().satisfies(away -> {
                assertThat(away.first().date()).isEqualTo(TODAY);
                assertThat(away.words()).contains("Crew 1 ill, one hired");
            });
            return null;
        });
        assertThat(get(page)).hasStatus(404);
    }

    @Test
    void oneThatCannotBeRecordedAsAWholeIsNotRecordedInPart() {
        String page = begun("Ill, and hired under a name that is taken");
        away(page, "5");
        more(page, "Crew 1");
        assertThat(post(page + "/accept", "version", "2")).hasStatus(422);
        world.as(branch.manager(), () -> {
            assertThat(crews.crew(crew).orElseThrow().away()).isEmpty();
            return null;
        });
    }

    @Test
    void aMachineThatIsAwayMovesWhatNeedsItAndOneMoreMovesItBack() {
        UUID driver = schedule.machine(branch, "Post driver", EquipmentKind.POST_DRIVER);
        schedule.planned(branch);
        String page = begun("Driver broken");
        assertThat(change(page, "MACHINE_AWAY", "machine", driver, "days", "70"))
                .hasStatus3xxRedirection();
        assertThat(moved(document(get(page)), 1)).isEqualTo("1");
        assertThat(change(page, "MACHINE_MORE", "machine", driver, "name", "Hired driver"))
                .hasStatus3xxRedirection();
        assertThat(moved(document(get(page)), 1)).isEqualTo("0");
        assertThat(post(page + "/accept", "version", "2")).hasStatus3xxRedirection();
        world.as(branch.manager(), () -> {
            var machines = crews.of(branch.id(), TODAY).equipment();
            assertThat(machines).extracting("name").contains("Hired driver");
            assertThat(machines).filteredOn("id", driver).flatExtracting("away").hasSize(1);
            return null;
        });
    }

    @Test
    void saturdaysBringWorkForwardAndOfficesStillCountTheirOwnDays() {
        String page = begun("Saturdays");
        assertThat(change(page, "SATURDAYS", "days", "8")).hasStatus3xxRedirection();
        assertThat(moved(document(get(page)), 1)).isEqualTo("1");
        assertThat(document(get(page)).text()).contains("Crews work on 8 Saturdays from Mon, Mar 1");
        assertThat(post(page + "/accept", "version", "1")).hasStatus3xxRedirection();
        world.as(branch.manager(), () -> {
            assertThat(settings.facts(branch.id()).workDays().alsoWorked())
                    .hasSize(8)
                    .contains(LocalDate.of(2027, 3, 6), LocalDate.of(2027, 4, 24));
            assertThat(settings.facts(branch.id()).calendar().alsoWorked()).isEmpty();
            return null;
        });
        schedule.planned(branch);
        assertThat(document(get("/look-ahead/crews?from=2027-03-01")).text()).contains("Mar 6");
        assertThat(document(get("/settings/days/worked")).select("h1").text()).isEqualTo("8 days off are worked");
        assertThat(post("/settings/days/worked/off", "day", "2027-03-06")).hasStatus3xxRedirection();
        assertThat(document(get("/settings/days/worked")).select("h1").text()).isEqualTo("7 days off are worked");
        assertThat(post("/settings/days/worked", "day", "2027-03-06", "why", "after all"))
                .hasStatus3xxRedirection();
        assertThat(post("/settings/days/worked", "day", "", "why", "")).hasStatus(422);
    }

    @Test
    void aWorkIsGivenToAnotherCrewAndSettledThere() {
        UUID other = schedule.crew(branch, "Crew 2");
        schedule.planned(branch);
        String page = begun("Racking to Crew 2");
        String form = page + "/changes/new?kind=WORK_GIVEN";
        String work =
                document(get(form)).select("select[name=work] option").get(1).attr("value");
        assertThat(change(page, "WORK_GIVEN", "work", work, "crew", other, "firstDay", "2027-03-08"))
                .hasStatus3xxRedirection();
        assertThat(document(get(page)).text()).contains("goes to Crew 2, beginning Mon, Mar 8");
        assertThat(post(page + "/accept", "version", "1")).hasStatus3xxRedirection();
        assertThat(document(get("/look-ahead/crews")).text()).contains("settled on Mon, Mar 8, morning, Crew 2");
    }

    @Test
    void aJobIsNoProjectYetAndThePageSaysHowItBecomesOne() {
        String page = begun("A barn");
        assertThat(change(page, "NEW_JOB", "mounting", "GROUND", "kwDc", "99")).hasStatus3xxRedirection();
        Document one = document(get(page));
        assertThat(one.select("form[action$=/accept] button")).isEmpty();
        assertThat(one.text()).contains("it comes into the plan when its project is opened and signed");
        assertThat(post(page + "/accept", "version", "1")).hasStatus(422);
        Document form = document(get(one.select("#jobs ~ p a").attr("href")));
        assertThat(form.select("input[name=systemKwDc]").val()).isEqualTo("99");
        assertThat(form.select("select[name^=arrays] option[selected]").val()).isEqualTo("GROUND");
    }

    @Test
    void whatStandsBesideAJobIsRecordedAndTheJobStays() {
        String page = begun("A barn, and one hired");
        assertThat(change(page, "NEW_JOB", "mounting", "GROUND", "kwDc", "99")).hasStatus3xxRedirection();
        assertThat(more(page, "Crew 2")).hasStatus3xxRedirection();
        assertThat(post(page + "/accept", "version", "2"))
                .hasStatus3xxRedirection()
                .hasRedirectedUrl(page);
        assertThat(document(get(page)).select("#otherwise ~ ul li").eachText())
                .singleElement()
                .asString()
                .contains("one more job, 99 kW");
        assertThat(post(page + "/accept", "version", "2")).hasStatus(409);
    }

    @Test
    void whatCannotBeReadIsSaidAtItsFieldAndAnOldVersionIsAConflict() {
        String page = begun("Crew 1 ill");
        assertThat(post(page + "/changes/new", "kind", "CREW_AWAY", "crew", "", "firstDay", "", "days", "many"))
                .hasStatus(422)
                .bodyText()
                .contains("Choose one of the list.", "Choose a first day from today on", "value=\"many\"");
        away(page, "5");
        assertThat(post(page, "version", "0", "name", "Ill")).hasStatus(409);
        assertThat(post(page, "version", "1", "name", "")).hasStatus(422);
        assertThat(post(page, "version", "1", "name", "Ill")).hasStatus3xxRedirection();
        assertThat(post(page + "/accept", "version", "1")).hasStatus(409);
        String out = document(get(page)).select("form[action$=/take-out]").attr("action");
        assertThat(post(out, "version", "1")).hasStatus(409);
        assertThat(post(out, "version", "2")).hasStatus3xxRedirection();
        assertThat(document(get(page)).text()).contains("Nothing yet. Add what is:");
        assertThat(post(page + "/throw-away", "version", "3")).hasStatus3xxRedirection();
        assertThat(get(page)).hasStatus(404);
    }

    @Test
    void aNameIsTakenOnceAndNotLeftOut() {
        begun("Crew 2");
        assertThat(post(ALL + "/new", "name", "Crew 2"))
                .hasStatus(422)
                .bodyText()
                .contains("Another scenario of the branch has this name.", "value=\"Crew 2\"");
        assertThat(post(ALL + "/new", "name", "")).hasStatus(422);
    }

    @Test
    void theNumberOfQueriesDoesNotGrowWithTheProjects() {
        away(begun("Crew 1 ill"), "5");
        int before = Queries.count(() -> get(ALL));
        for (int more = 0; more < 3; more++) {
            aProject("More " + more);
        }
        schedule.planned(branch);
        assertThat(Queries.count(() -> get(ALL))).isEqualTo(before);
    }

    private String begun(String name) {
        MvcTestResult answer = post(ALL + "/new", "name", name);
        assertThat(answer).hasStatus3xxRedirection();
        return answer.getResponse().getRedirectedUrl();
    }

    private MvcTestResult away(String page, String days) {
        return change(page, "CREW_AWAY", "crew", crew, "days", days);
    }

    private MvcTestResult more(String page, String name) {
        return change(page, "CREW_MORE", "crew", crew, "name", name);
    }

    /** From today on, where no other first day is given. */
    private MvcTestResult change(String page, String kind, Object... fields) {
        List<String> all = new ArrayList<>(List.of("kind", kind));
        Arrays.stream(fields).map(Object::toString).forEach(all::add);
        if (!all.contains("firstDay")) {
            all.addAll(List.of("firstDay", TODAY.toString()));
        }
        return post(page + "/changes/new", all.toArray(String[]::new));
    }

    private static String moved(Document page, int line) {
        return page.select("table.fold tbody tr").get(line).select("td").get(3).text();
    }

    private MvcTestResult post(String address, String... fields) {
        return pages.post(branch.manager(), address, fields);
    }

    private MvcTestResult get(String address) {
        return pages.get(branch.manager(), address);
    }

    private static Document document(MvcTestResult answer) {
        assertThat(answer).hasStatusOk();
        return TestPages.read(answer);
    }

    private void aProject(String name) {
        UUID project = projects.aDairyGroundMount()
                .named(name)
                .promised(Milestone.SYSTEM_ON, LocalDate.of(2027, 7, 30))
                .in(branch)
                .build();
        schedule.reach(branch, project, Stage.PERMITTED, LocalDate.of(2027, 2, 16));
    }
}
