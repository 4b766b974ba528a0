package org.plumbrow.schedule.scenario;

import static org.assertj.core.api.Assertions.assertThat;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;

import java.io.UnsupportedEncodingException;
import java.time.LocalDate;
import java.util.UUID;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.plumbrow.PlumbrowTest;
import org.plumbrow.Queries;
import org.plumbrow.TestWorld;
import org.plumbrow.TestWorld.TestBranch;
import org.plumbrow.calc.duration.Milestone;
import org.plumbrow.crew.Crews;
import org.plumbrow.project.ProjectFixture;
import org.plumbrow.project.Stage;
import org.plumbrow.schedule.ScheduleFixture;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.web.servlet.assertj.MockMvcTester;
import org.springframework.test.web.servlet.assertj.MvcTestResult;

@PlumbrowTest
class ScenarioPagesTest {

    private static final String ALL = "/look-ahead/scenarios";
    private static final LocalDate TODAY = LocalDate.of(2027, 3, 1);

    @Autowired
    TestWorld world;

    @Autowired
    ProjectFixture projects;

    @Autowired
    ScheduleFixture schedule;

    @Autowired
    Crews crews;

    @Autowired
    MockMvcTester mvc;

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
        String page = added("CREW_AWAY", "Crew 1 ill", "60");
        Document all = document(get(ALL));
        assertThat(all.select("h1").text()).isEqualTo("1 scenario beside the plan");
        assertThat(all.select("tbody tr")).hasSize(2);
        assertThat(all.select("tbody tr").last().text()).contains("Crew 1 ill", "Crew 1 is away 60 working days");
        assertThat(all.select("tbody tr").last().select("td").get(3).text()).isEqualTo("1");
        assertThat(all.select("tbody tr").first().select("td").get(3).text()).isEqualTo("0");
        assertThat(document(get(page)).select("h1").text()).startsWith("Crew 1 ill: ");
    }

    @Test
    void acceptingALostCrewRecordsItsAbsenceAndTakesTheScenarioAway() {
        String page = added("CREW_AWAY", "Crew 1 ill", "5");
        assertThat(post(page + "/accept", "version", "0")).hasStatus3xxRedirection();
        world.as(branch.manager(), () -> {
            assertThat(crews.crew(crew).orElseThrow().away()).singleElement().satisfies(away -> {
                assertThat(away.first().date()).isEqualTo(TODAY);
                assertThat(away.last().date()).isEqualTo(LocalDate.of(2027, 3, 5));
            });
            return null;
        });
        assertThat(get(page)).hasStatus(404);
    }

    @Test
    void acceptingOneMoreCrewAddsIt() {
        String page = added("CREW_MORE", "Crew 2", "");
        assertThat(post(page + "/accept", "version", "0")).hasStatus3xxRedirection();
        world.as(branch.manager(), () -> {
            assertThat(crews.crews(branch.id(), TODAY)).extracting("name").contains("Crew 1", "Crew 2");
            return null;
        });
    }

    @Test
    void aJobIsPlannedButNotAccepted() {
        assertThat(post(ALL + "/new", "name", "A barn", "kind", "NEW_JOB", "mounting", "GROUND", "kwDc", "99"))
                .hasStatus3xxRedirection();
        String page = document(get(ALL)).select("tbody th a").attr("href");
        assertThat(document(get(page)).select("form[action$=/accept]")).isEmpty();
        assertThat(post(page + "/accept", "version", "0")).hasStatus(422);
    }

    @Test
    void whatCannotBeReadIsSaidAtItsFieldAndAnOldVersionIsAConflict() {
        assertThat(post(ALL + "/new", "name", "x", "kind", "CREW_AWAY", "crew", "", "firstDay", "", "days", "many"))
                .hasStatus(422)
                .bodyText()
                .contains("Choose one of the list.", "Choose a first day from today on.", "value=\"many\"");
        String page = added("CREW_AWAY", "Crew 1 ill", "5");
        assertThat(change(page, "0", "7")).hasStatus3xxRedirection();
        assertThat(change(page, "0", "9")).hasStatus(409);
        assertThat(post(page + "/accept", "version", "0")).hasStatus(409);
        assertThat(post(page + "/throw-away", "version", "1")).hasStatus3xxRedirection();
        assertThat(get(page)).hasStatus(404);
    }

    @Test
    void aNameIsTakenOnce() {
        added("CREW_MORE", "Crew 2", "");
        assertThat(add("CREW_MORE", "Crew 2", ""))
                .hasStatus(422)
                .bodyText()
                .contains("Another scenario of the branch has this name.");
    }

    @Test
    void theNumberOfQueriesDoesNotGrowWithTheProjects() {
        added("CREW_AWAY", "Crew 1 ill", "5");
        int before = Queries.count(() -> get(ALL));
        for (int more = 0; more < 3; more++) {
            aProject("More " + more);
        }
        schedule.planned(branch);
        assertThat(Queries.count(() -> get(ALL))).isEqualTo(before);
    }

    private MvcTestResult add(String kind, String name, String days) {
        return post(
                ALL + "/new",
                "name",
                name,
                "kind",
                kind,
                "crew",
                crew.toString(),
                "firstDay",
                TODAY.toString(),
                "days",
                days);
    }

    private String added(String kind, String name, String days) {
        MvcTestResult answer = add(kind, name, days);
        assertThat(answer).hasStatus3xxRedirection();
        return answer.getResponse().getRedirectedUrl();
    }

    private MvcTestResult change(String page, String version, String days) {
        return post(
                page,
                "version",
                version,
                "name",
                "Crew 1 ill",
                "kind",
                "CREW_AWAY",
                "crew",
                crew.toString(),
                "firstDay",
                TODAY.toString(),
                "days",
                days);
    }

    private MvcTestResult post(String address, String... fields) {
        var request = mvc.post().uri(address).with(csrf()).with(world.signedIn(branch.manager()));
        for (int at = 0; at < fields.length; at += 2) {
            request = request.param(fields[at], fields[at + 1]);
        }
        return request.exchange();
    }

    private MvcTestResult get(String address) {
        return mvc.get().uri(address).with(world.signedIn(branch.manager())).exchange();
    }

    private static Document document(MvcTestResult answer) {
        assertThat(answer).hasStatusOk();
        try {
            return Jsoup.parse(answer.getResponse().getContentAsString());
        } catch (UnsupportedEncodingException never) {
            throw new IllegalStateException(never);
        }
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
