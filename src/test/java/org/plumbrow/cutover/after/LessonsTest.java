package org.plumbrow.cutover.after;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.UUID;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.plumbrow.PlumbrowTest;
import org.plumbrow.TestClock;
import org.plumbrow.TestPages;
import org.plumbrow.TestWorld;
import org.plumbrow.cutover.CutoverFixture;
import org.plumbrow.cutover.CutoverFixture.Ground;
import org.plumbrow.cutover.Outages;
import org.plumbrow.cutover.daylog.DayTaps;
import org.plumbrow.web.Visitor;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.web.servlet.assertj.MvcTestResult;

/** What is learned from a day: by people in words, by the house in minutes. */
@PlumbrowTest
class LessonsTest {

    @Autowired
    TestWorld world;

    @Autowired
    TestPages pages;

    @Autowired
    TestClock clock;

    @Autowired
    CutoverFixture fixture;

    @Autowired
    Outages outages;

    @Autowired
    DayTaps taps;

    private Ground ground;
    private UUID project;
    private Visitor pm;
    private String lessons;

    @BeforeEach
    void aHomeWithADayToCome() {
        ground = fixture.ground();
        project = fixture.noticeGiven(ground, fixture.home(ground));
        pm = ground.branch().projectManager();
        UUID window = world.as(pm, () -> outages.live(project).orElseThrow().id());
        lessons = "/projects/" + project + "/outage/lessons/" + window;
        clock.standAt("2027-03-26T12:28:00Z");
    }

    private void theDayIsDone() {
        taps.upTo(pm, project, "14");
        taps.close(pm, project);
    }

    private MvcTestResult write(Visitor who, String well, String next, String version) {
        return pages.post(who, lessons, "wentWell", well, "nextTime", next, "version", version);
    }

    private Document page(String address) {
        var answer = pages.get(pm, address);
        assertThat(answer).hasStatusOk();
        return TestPages.read(answer);
    }

    @Test
    void whatIsWrittenIsShownBeforeTheNextDayOfTheSameKindAndOfNoOther() {
        theDayIsDone();
        assertThat(write(pm, "The spare lugs were there.", "Bring two lamps.", "-1"))
                .hasStatus3xxRedirection();
        assertThat(write(ground.branch().manager(), "", "Call the day before.", "-1"))
                .hasStatus3xxRedirection();
        assertThat(page(lessons).select("main h2").eachText()).hasSize(3);
        UUID next = fixture.home(ground);
        for (String where : new String[] {"/outage/hours", "/outage/readiness"}) {
            assertThat(page("/projects/" + next + where).text())
                    .contains("To do otherwise next time: Bring two lamps. What went well: The spare lugs were there.")
                    .contains("Call the day before.");
            assertThat(page("/projects/" + fixture.dairy(ground) + where).text())
                    .doesNotContain("Bring two lamps.")
                    .contains("Nobody has written a lesson");
        }
    }

    @Test
    void beforeTheDayNothingIsWrittenAndTooMuchIsRefusedWithWhatWasTyped() {
        assertThat(write(pm, "Fine.", "", "-1")).hasStatus(422);
        theDayIsDone();
        assertThat(write(pm, "", "", "-1")).hasStatus(422);
        MvcTestResult long501 = write(pm, "Fine, and so on.", "x".repeat(501), "-1");
        assertThat(long501).hasStatus(422);
        assertThat(long501).bodyText().contains("Fine, and so on.").contains("at most 500 characters");
    }

    @Test
    void whoWroteMeanwhileIsLaidBeside() {
        theDayIsDone();
        assertThat(write(pm, "First.", "", "-1")).hasStatus3xxRedirection();
        assertThat(write(pm, "Second.", "", "0")).hasStatus3xxRedirection();
        assertThat(write(pm, "From an old page.", "", "0"))
                .hasStatus(409)
                .bodyText()
                .contains("Second.");
    }

    @Test
    void learnedMinutesAreOpenedToTheDaysTheyComeFrom() {
        theDayIsDone();
        Document page = page("/projects/" + fixture.home(ground) + "/outage/learned");
        assertThat(page.select("h1").text()).contains("learned from 1 day; ");
        assertThat(page.select("tbody tr")).hasSize(1);
        assertThat(page.select("tbody tr").text()).contains("Alder Lane 12").contains("48 min");
        // (3 × 1 + 48/60) / 4 = 0.95, by hand; the home's table says 60 minutes
        assertThat(page.select("dd.total").text()).isEqualTo("× 0.95");
    }
}
