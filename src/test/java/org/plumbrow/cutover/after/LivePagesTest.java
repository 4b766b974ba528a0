package org.plumbrow.cutover.after;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.UUID;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.plumbrow.PlumbrowTest;
import org.plumbrow.Queries;
import org.plumbrow.TestClock;
import org.plumbrow.TestPages;
import org.plumbrow.TestWorld;
import org.plumbrow.cutover.CutoverFixture;
import org.plumbrow.cutover.CutoverFixture.Ground;
import org.plumbrow.cutover.daylog.CutoverRoad;
import org.plumbrow.cutover.daylog.DayTaps;
import org.plumbrow.web.Visitor;
import org.springframework.beans.factory.annotation.Autowired;

/** The office follows the day as taps arrive. */
@PlumbrowTest
class LivePagesTest {

    @Autowired
    TestWorld world;

    @Autowired
    TestPages pages;

    @Autowired
    TestClock clock;

    @Autowired
    CutoverFixture fixture;

    @Autowired
    CutoverRoad road;

    @Autowired
    DayTaps taps;

    private Ground ground;
    private UUID project;
    private Visitor pm;

    @BeforeEach
    void aHomeOnTheMorningOfItsOutage() {
        ground = fixture.ground();
        project = fixture.noticeGiven(ground, fixture.home(ground));
        pm = ground.branch().projectManager();
        clock.standAt("2027-03-26T12:28:00Z");
    }

    private Document page(String address) {
        var answer = pages.get(pm, address);
        assertThat(answer).hasStatusOk();
        return TestPages.read(answer);
    }

    private Document live() {
        return page("/projects/" + project + "/outage/live");
    }

    @Test
    void beforeTheLogIsOpenItSaysWhatIsPlanned() {
        Document page = live();
        assertThat(page.select("h1").text())
                .isEqualTo("Power off planned Fri, Mar 26 at 9:00 am; the day log is not open yet");
        assertThat(page.select("#main").attr("hx-trigger")).isEqualTo("every 5s");
        assertThat(page.select("a:contains(Look again)")).hasSize(1);
    }

    @Test
    void whileThePowerIsOffItSaysSinceWhenWhatIsLateAndWhatWasHeardLast() {
        taps.upTo(pm, project, "5");
        clock.pass(Duration.ofMinutes(7));
        Document page = live();
        assertThat(page.select("h1").text()).isEqualTo("The power is off since 8:48 am: 11 min");
        assertThat(page.text())
                .contains("11 min of 90 min planned")
                .contains("Latest reversal 11:45 am, in 2 h 46 min (the freezer)")
                .contains("Step 5, Tamsin, here at 8:52 am by the server written with signal, on the page")
                .contains("Expected back between 10:18 am and 10:48 am, an estimate")
                .doesNotContain("Nothing was heard");
        assertThat(page.select("tr[aria-current=step] th").text()).contains("Prove absence of voltage");
        assertThat(page.select("h1")).hasSize(1);
    }

    @Test
    void aPhoneThatIsSilentAndALatestMinuteThatHasPassedAreSaid() {
        taps.upTo(pm, project, "5");
        clock.pass(Duration.ofMinutes(16));
        assertThat(live().select(".note-risk").text()).startsWith("Nothing was heard for 16 min.");
        clock.pass(Duration.ofHours(3));
        assertThat(live().select(".note-trouble").text())
                .startsWith("The latest minute to reverse, 11:45 am, has passed (the freezer).");
    }

    @Test
    void onceTheLogIsClosedThePageAsksNoMore() {
        taps.upTo(pm, project, "14");
        taps.close(pm, project);
        Document page = live();
        assertThat(page.select("h1").text()).startsWith("Cutover done Fri, Mar 26: the power was off for ");
        assertThat(page.select("[hx-get]")).isEmpty();
    }

    @Test
    void allOfTodayStandOnOnePageAndTakeTheSameQueriesForOneAndForMore() {
        taps.upTo(pm, project, "4");
        page("/cutovers/today");
        int one = Queries.count(() -> page("/cutovers/today"));
        for (int i = 0; i < 3; i++) {
            UUID other = fixture.home(ground);
            road.windowOfToday(other, ground.branch().id());
            taps.upTo(pm, other, "3");
        }
        assertThat(Queries.count(() -> page("/cutovers/today"))).isEqualTo(one).isLessThanOrEqualTo(9);
        assertThat(page("/cutovers/today").select("h1").text()).isEqualTo("4 cutovers today; the power is off at 1");
        assertThat(page("/cutovers/today").select("section")).hasSize(4);
    }

    @Test
    void aDayWithoutAnOutageSaysSo() {
        clock.standAt("2027-03-24T12:28:00Z");
        assertThat(page("/cutovers/today").select("h1").text()).isEqualTo("No cutover today");
    }
}
