package org.plumbrow.schedule.lookahead;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import java.util.concurrent.CompletableFuture;
import java.util.stream.Stream;
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
import org.plumbrow.calc.duration.EquipmentKind;
import org.plumbrow.calc.duration.Milestone;
import org.plumbrow.project.ProjectFixture;
import org.plumbrow.project.Stage;
import org.plumbrow.schedule.ScheduleFixture;
import org.plumbrow.web.Visitor;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.web.servlet.assertj.MvcTestResult;

/** The crew calendar: a work is moved with its effect shown first, settled in the plan, released, and taken back. */
@PlumbrowTest
class CrewCalendarTest {

    @Autowired
    TestWorld world;

    @Autowired
    TestPages pages;

    @Autowired
    ProjectFixture projects;

    @Autowired
    ScheduleFixture schedule;

    private TestBranch branch;
    private UUID second;
    private UUID project;

    @BeforeEach
    void aPlannedBranch() {
        branch = world.branch();
        schedule.crew(branch, "Crew 1");
        second = schedule.crew(branch, "Crew 2");
        schedule.machine(branch, "Post driver", EquipmentKind.POST_DRIVER);
        project = aProject("Hatch Ridge", LocalDate.of(2027, 4, 30));
        schedule.planned(branch);
    }

    private UUID aProject(String name, LocalDate promised) {
        UUID id = projects.aDairyGroundMount()
                .named(name)
                .promised(Milestone.SYSTEM_ON, promised)
                .in(branch)
                .build();
        schedule.reach(branch, id, Stage.PERMITTED, LocalDate.of(2027, 2, 16));
        return id;
    }

    @Test
    void everyWorkIsABarWithAShapeAndWordsInTheRowOfItsCrew() {
        Document page = read("/look-ahead/crews?from=2027-03-29", branch.manager());
        Element racking = bar(page, "racking");
        assertThat(racking.closest("tr").attr("data-name")).startsWith("Crew");
        assertThat(racking.select("use").attr("href")).startsWith("#m-");
        assertThat(racking.text()).contains("Hatch Ridge, racking, ", "planned, promise");
        assertThat(page.text()).contains("Post driver", "Weather outdoors", "takes nothing");
        assertThat(page.select(".hand").text()).contains("Crew 1", "Week from", "Hatch Ridge, racking");
    }

    @Test
    void aProjectManagerSeesTheCalendarAndMovesNothing() {
        Document page = read("/look-ahead/crews", branch.projectManager());
        assertThat(page.select("#crews a.job")).isNotEmpty();
        assertThat(page.select("[data-moves], [data-move], script[src*=crew-calendar]"))
                .isEmpty();
        assertThat(get(racking() + "/move", branch.projectManager())).hasStatus(403);
    }

    @Test
    void theEffectOnEveryPromiseIsShownAndNothingIsSaved() {
        aProject("Orchard Lane", LocalDate.of(2027, 6, 30));
        schedule.planned(branch);
        MvcTestResult effect = get(racking() + "/effect?day=2027-05-10&half=MORNING", branch.manager());
        assertThat(effect)
                .hasStatusOk()
                .bodyText()
                .contains(
                        "Racking, Hatch Ridge, Mon, May 10 to ",
                        "1 promise breaks",
                        "Nothing is saved yet.",
                        "Orchard Lane");
        Document page = Jsoup.parse(body(effect));
        assertThat(page.select("table tbody tr").first().text()).contains("Hatch Ridge", "breaks by");
        assertThat(read(racking() + "/move", branch.manager()).text()).contains("no, the plan decides");
    }

    @Test
    void whatIsAcceptedIsKeptByThePlanAndCanBeReleased() {
        assertThat(accept("2027-03-22", second, 0)).hasStatus3xxRedirection();
        schedule.planned(branch);
        Document page = read("/look-ahead/crews?from=2027-03-22", branch.manager());
        Element racking = bar(page, "racking");
        assertThat(racking.classNames()).contains("job-settled");
        assertThat(racking.text()).contains("Mon, Mar 22", "start settled by hand");
        assertThat(racking.closest("tr").attr("data-name")).isEqualTo("Crew 2");
        assertThat(page.select("a[href=/look-ahead/publish]")).hasSize(1);
        assertThat(page.text()).contains("Last move: Racking, Hatch Ridge: settled on Mon, Mar 22, morning, Crew 2");
        assertThat(read(racking() + "/effect?day=2027-03-24&half=MORNING", branch.manager())
                        .text())
                .contains("Whoever was told needs to hear of it, as this start was settled before: told the farm");

        assertThat(post(racking() + "/release", "version", version())).hasStatus3xxRedirection();
        assertThat(read(racking() + "/move", branch.manager()).text()).contains("no, the plan decides");
        assertThat(read("/look-ahead/crews", branch.manager()).text())
                .contains("Last move: Racking, Hatch Ridge: left to the plan");
    }

    @Test
    void theLastMoveIsTakenBackOnceAndThenTheOneBefore() {
        accept("2027-03-22", second, 0);
        accept("2027-03-24", second, 1);
        assertThat(undo(2)).hasStatus3xxRedirection();
        assertThat(read(racking() + "/move", branch.manager()).text())
                .contains("Settled on Mon, Mar 22: told the farm");
        assertThat(undo(2)).hasStatus(409).bodyText().contains("Nothing was taken back");
        assertThat(read("/look-ahead/crews", branch.manager()).text()).doesNotContain("Take this move back");
        assertThat(undo(1)).hasStatus(409);
    }

    @Test
    void whatSomebodyElseMovedMeanwhileIsToldAndWhatWasTypedStays() {
        assertThat(accept("2027-03-22", second, 0)).hasStatus3xxRedirection();
        MvcTestResult late = pages.post(
                branch.manager(),
                "/projects/" + project + "/schedule/modules/fix",
                "version",
                "0",
                "lastMove",
                "0",
                "day",
                "2027-03-30",
                "reason",
                "told the neighbour");
        assertThat(late)
                .hasStatus(409)
                .bodyText()
                .contains("Somebody moved work", "Racking, Hatch Ridge: settled on Mon, Mar 22", "told the neighbour");
        assertThat(Jsoup.parse(body(late))
                        .select("form[action$=/fix] [name=lastMove]")
                        .val())
                .isEqualTo("1");
    }

    @Test
    void ofTwoWhoAcceptAtTheSameMomentOneIsTold() {
        List<Integer> answers = Stream.of("racking", "modules")
                .map(work -> CompletableFuture.supplyAsync(() -> pages.post(
                                branch.manager(),
                                "/projects/" + project + "/schedule/" + work + "/fix",
                                "version",
                                "0",
                                "lastMove",
                                "0",
                                "day",
                                "2027-03-30",
                                "reason",
                                "told the farm")
                        .getResponse()
                        .getStatus()))
                .toList()
                .stream()
                .map(CompletableFuture::join)
                .toList();
        assertThat(answers).containsExactlyInAnyOrder(302, 409);
    }

    @Test
    void whatHasBegunIsNeitherMovedNorItsMoveTakenBack() {
        assertThat(accept("2027-03-22", second, 0)).hasStatus3xxRedirection();
        assertThat(pages.post(branch.projectManager(), racking() + "/record", "version", "1", "started", "2027-03-01"))
                .hasStatus3xxRedirection();
        assertThat(read("/look-ahead/crews", branch.manager()).text()).doesNotContain("Take this move back");
        assertThat(undo(1)).hasStatus(409);
        assertThat(get(racking() + "/effect?day=2027-03-24", branch.manager()))
                .hasStatus(422)
                .bodyText()
                .contains("What has begun goes on where it is");
    }

    @Test
    void whatCannotBeIsSaidAtItsFieldAndTheRestStays() {
        MvcTestResult stranger = accept("2027-03-22", UUID.fromString("0197a000-0000-7000-8000-000000000000"), 0);
        assertThat(stranger)
                .hasStatus(422)
                .bodyText()
                .contains("This crew does not work on that day.", "told the farm", "2027-03-22");
        assertThat(get(racking() + "/effect?day=2027-02-01", branch.manager()))
                .hasStatus(422)
                .bodyText()
                .contains("Mon, Feb 1 has passed; today is Mon, Mar 1.");
        assertThat(get(racking() + "/effect?day=2035-02-01", branch.manager()))
                .hasStatus(422)
                .bodyText()
                .contains("Choose a day within two years.");
        assertThat(get(racking() + "/effect?day=2027-03-22&crewId=nobody", branch.manager()))
                .hasStatus(422)
                .bodyText()
                .contains("Choose one of the crews.");
    }

    @Test
    void theNumberOfQueriesDoesNotGrowWithTheJobs() {
        read("/look-ahead/crews?plan=draft", branch.manager());
        aProject("More", LocalDate.of(2027, 6, 30));
        schedule.planned(branch);
        int withTwo = Queries.count(() -> read("/look-ahead/crews", branch.manager()));
        String move = racking() + "/effect?day=2027-05-10&half=MORNING";
        int effectWithTwo = Queries.count(() -> read(move, branch.manager()));
        for (int more = 0; more < 5; more++) {
            aProject("Even more " + more, LocalDate.of(2027, 7, 30));
        }
        schedule.planned(branch);
        assertThat(Queries.count(() -> read("/look-ahead/crews", branch.manager())))
                .isEqualTo(withTwo);
        assertThat(Queries.count(() -> read(move, branch.manager()))).isEqualTo(effectWithTwo);
    }

    private String racking() {
        return "/projects/" + project + "/schedule/racking";
    }

    private String version() {
        return read(racking() + "/move", branch.manager())
                .select("form[action$=/release] [name=version]")
                .val();
    }

    private MvcTestResult accept(String day, UUID crew, int lastMove) {
        return pages.post(
                branch.manager(),
                racking() + "/fix",
                "version",
                Integer.toString(lastMove),
                "lastMove",
                Integer.toString(lastMove),
                "day",
                day,
                "half",
                "MORNING",
                "crewId",
                crew.toString(),
                "reason",
                "told the farm");
    }

    private MvcTestResult undo(long move) {
        return post("/look-ahead/crews/undo", "move", Long.toString(move));
    }

    private MvcTestResult post(String address, String field, String value) {
        return pages.post(branch.manager(), address, field, value);
    }

    private static Element bar(Document page, String work) {
        return page.select("#crews tr[data-crew] a.job").stream()
                .filter(bar -> bar.text().contains(", " + work + ","))
                .findFirst()
                .orElseThrow(() -> new AssertionError(page.select("#crews").text()));
    }

    private Document read(String address, Visitor who) {
        MvcTestResult answer = get(address, who);
        assertThat(answer).hasStatusOk();
        return Jsoup.parse(body(answer));
    }

    private MvcTestResult get(String address, Visitor who) {
        return pages.get(who, address);
    }

    private static String body(MvcTestResult answer) {
        try {
            return answer.getResponse().getContentAsString();
        } catch (java.io.UnsupportedEncodingException e) {
            throw new IllegalStateException(e);
        }
    }
}
