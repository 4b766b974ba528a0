package org.plumbrow.status.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.plumbrow.PlumbrowTest;
import org.plumbrow.Queries;
import org.plumbrow.TestClock;
import org.plumbrow.TestWorld;
import org.plumbrow.calc.calendar.HalfDay;
import org.plumbrow.calc.duration.ActivityCode;
import org.plumbrow.cutover.CutoverFixture;
import org.plumbrow.cutover.CutoverFixture.Ground;
import org.plumbrow.cutover.OutageChoice;
import org.plumbrow.cutover.OutagePlanning;
import org.plumbrow.cutover.Outages;
import org.plumbrow.cutover.daylog.DayTaps;
import org.plumbrow.database.BranchWall;
import org.plumbrow.project.ProjectCourse;
import org.plumbrow.project.Stage;
import org.plumbrow.schedule.ScheduleFixture;
import org.plumbrow.schedule.activity.Pin;
import org.plumbrow.schedule.activity.Progress;
import org.plumbrow.schedule.plan.Plans;
import org.plumbrow.schedule.plan.Publishing;
import org.plumbrow.status.CustomerLinks;
import org.plumbrow.status.StatusFixture;
import org.plumbrow.web.Visitor;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.test.web.servlet.assertj.MockMvcTester;
import org.springframework.test.web.servlet.assertj.MvcTestResult;

/** The page behind the private link, as a customer reads it. */
@PlumbrowTest
class CustomerPageTest {

    private static final LocalDate MONDAY_1 = LocalDate.of(2027, 3, 1);

    @Autowired
    MockMvcTester mvc;

    @Autowired
    TestWorld world;

    @Autowired
    TestClock clock;

    @Autowired
    CutoverFixture cutovers;

    @Autowired
    ScheduleFixture schedule;

    @Autowired
    StatusFixture status;

    @Autowired
    OutagePlanning planning;

    @Autowired
    Outages outages;

    @Autowired
    ProjectCourse course;

    @Autowired
    CustomerLinks links;

    @Autowired
    DayTaps taps;

    @Autowired
    Publishing publishing;

    @Autowired
    Plans plans;

    @Autowired
    JdbcClient jdbc;

    @Autowired
    Progress progress;

    private Ground ground;
    private UUID project;
    private Visitor pm;
    private String link;

    @BeforeEach
    void aDairyWithALink() {
        ground = cutovers.ground();
        project = cutovers.dairy(ground);
        pm = ground.branch().projectManager();
        link = status.link(ground.branch(), project);
    }

    private MvcTestResult get(String address) {
        return mvc.get().uri(address).exchange();
    }

    private Document page() throws Exception {
        MvcTestResult answer = get(link);
        assertThat(answer).hasStatusOk();
        return Jsoup.parse(answer.getResponse().getContentAsString());
    }

    private String headline() throws Exception {
        return page().select("h1").text();
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            SIGNED       | Your project has begun. Next, we come to measure.                      | Measured
            SURVEYED     | We have measured. Now we draw your system.                             | Drawn
            DESIGNED     | Your system is drawn. Now we wait for the permits.                     | Permitted
            PERMITTED    | The permits are here. Next, we build.                                  | Built
            INSTALLED    | Your system is built. Next, we connect it.                             | Connected
            CUTOVER      | Your system is connected. It waits for a yes from the power company.   | Switched on
            COMMISSIONED | Your solar system is switched on.                                      |
            """)
    void eachStageHasItsOwnSentenceAndItsPlaceInTheRow(Stage stage, String headline, String next) throws Exception {
        schedule.reach(ground.branch(), project, stage, MONDAY_1);
        Document page = page();
        assertThat(page.select("h1")).hasSize(1);
        assertThat(page.select("h1").text()).isEqualTo(headline);
        assertThat(page.select(".path li")).hasSize(7);
        assertThat(page.select(".path li.driven")).hasSize(stage.ordinal() + 1);
        assertThat(page.select(".path li.next b").text()).isEqualTo(next == null ? "" : next);
        assertThat(page.select(".path li.driven").last().text())
                .contains("done")
                .contains("Mar 1");
        assertThat(ReadingLevel.ofPage(page)).as("reading level").isLessThan(7);
    }

    @Test
    void aProjectBeforeItsFirstGateHasAPageToo() throws Exception {
        assertThat(headline()).isEqualTo("We are getting your project ready.");
        assertThat(page().select(".path li.next b").text()).isEqualTo("Signed");
    }

    @Test
    void thePowerCutIsTheFirstThingThatIsSaid() throws Exception {
        cutovers.booked(ground, project);
        Document page = page();
        assertThat(page.select("h1").text())
                .isEqualTo("Your power will be off on Friday, March 26, from 9:00 to about 10:30 in the morning.");
        assertThat(page.select(".when").text())
                .contains("Plan for 1 hour 30 minutes to 2 hours without power")
                .contains("If the weather is bad Tuesday, March 30, 9:00 in the morning")
                .contains("Questions Tamsin");
        assertThat(page.select("#before").text()).isEqualTo("Before that day");
        assertThat(page.text())
                .contains("Milk: be done with milking.")
                .contains("At home: keep the fridge and the freezer shut.")
                .contains("Generator: let it run some days before")
                .contains("Does someone need power for their health?")
                .doesNotContain("Birds:")
                .doesNotContain("Pigs:")
                .doesNotContain("Greenhouse:");
        assertThat(ReadingLevel.ofPage(page)).isLessThan(7);
    }

    @ParameterizedTest
    @CsvSource({
        "POULTRY, Birds:",
        "SWINE, Pigs:",
        "DAIRY, Milk:",
        "COLD_STORE, Cold store:",
        "GREENHOUSE, Greenhouse:",
        "HOME, At home:"
    })
    void whatToDoBeforeDependsOnWhatIsThere(String load, String lead) throws Exception {
        schedule.inBranch(
                ground.branch(),
                () -> jdbc.sql("update project_site set loads = ?, generator = false where project_id = ?")
                        .params(load, project)
                        .update());
        cutovers.booked(ground, project);
        Document page = page();
        List<String> leads = page.select("#before ~ ul b").eachText();
        assertThat(leads)
                .containsExactly(
                        "Does someone need power for their health?",
                        "The evening before:",
                        lead,
                        "Just before we start:",
                        "When we come:",
                        "The electric panel:");
        assertThat(ReadingLevel.ofPage(page)).isLessThan(7);
    }

    @Test
    void aDayThatIsOnlyHeldIsNotTold() throws Exception {
        world.as(pm, () -> planning.hold(project, cutovers.friday(ground)));
        assertThat(page().text()).doesNotContain("March 26").doesNotContain("power will be off");
    }

    @Test
    void onTheDayBeforeAndOnTheDayItSaysTomorrowAndToday() throws Exception {
        cutovers.booked(ground, project);
        clock.standAt("2027-03-25T20:00:00Z");
        assertThat(headline())
                .isEqualTo(
                        "Tomorrow, Friday, March 26, your power will be off, from 9:00 to about 10:30 in the morning.");
        clock.standAt("2027-03-26T12:00:00Z");
        assertThat(headline()).isEqualTo("Today your power will be off, from 9:00 to about 10:30 in the morning.");
    }

    private void powerWas(String off, String on, boolean finished) {
        world.as(pm, () -> {
            UUID window = outages.live(project).orElseThrow().id();
            outages.powerWas(
                    window, java.time.Instant.parse(off), on == null ? null : java.time.Instant.parse(on), finished);
        });
    }

    @Test
    void whileThePowerIsOffItSaysSinceWhenAndWhenItComesBack() throws Exception {
        cutovers.noticeGiven(ground, project);
        powerWas("2027-03-26T13:02:00Z", null, false);
        clock.standAt("2027-03-26T13:30:00Z");
        Document page = page();
        assertThat(page.select("h1").text()).isEqualTo("Your power is off now.");
        assertThat(page.select(".when").text())
                .contains("Off since 9:02 in the morning")
                .contains("We expect it back between 10:32 in the morning and 11:02 in the morning");
        assertThat(page.select("#before").text()).isEqualTo("While the power is off");
        assertThat(page.text()).contains("do not touch it, even if it looks dead");
        assertThat(page.select("form")).isEmpty();
        assertThat(ReadingLevel.ofPage(page)).isLessThan(7);
    }

    @Test
    void asTapsArriveItSaysInPlainWordsWhatHappensAndAsksAgainWhileItIsOpen() throws Exception {
        cutovers.noticeGiven(ground, project);
        clock.standAt("2027-03-26T12:28:00Z");
        assertThat(page().select("#now").attr("hx-trigger")).isEqualTo("every 15s");
        taps.upTo(pm, project, "2");
        assertThat(page().select(".when").text()).contains("What happens now Our crew is with you and gets ready.");
        taps.tap(pm, project, "3", "H2");
        Document page = page();
        assertThat(page.select("h1").text()).isEqualTo("Your power is off now.");
        assertThat(page.select(".when").text()).contains("The crew puts in the new wires and tests them.");
        assertThat(page.select("#now").attr("hx-get")).startsWith("/s/");
        assertThat(page.text()).doesNotContainIgnoringCase("safe").doesNotContain("Sil ", "Step ", "121");
        assertThat(ReadingLevel.ofPage(page)).isLessThan(7);
        taps.tap(pm, project, "7", "9");
        assertThat(page().select(".when").text()).contains("may start on their own: stay away from them");
        taps.tap(pm, project, "10", "14");
        Document back = page();
        assertThat(back.select("h1").text()).isEqualTo("Your power is back.");
        assertThat(back.select("[hx-get]")).isEmpty();
    }

    @Test
    void aPageThatAsksAgainDoesNotCountAsOpened() throws Exception {
        page();
        mvc.get().uri(link).header("HX-Request", "true").exchange();
        assertThat(schedule.<Long>inBranch(
                        ground.branch(),
                        () -> jdbc.sql("select sum(opens) from customer_visit where project_id = ?")
                                .param(project)
                                .query(Long.class)
                                .single()))
                .isEqualTo(1);
    }

    @Test
    void theDayInTheRowOfPostsIsNoGuessOnceItIsTold() throws Exception {
        schedule.reach(ground.branch(), project, Stage.INSTALLED, MONDAY_1);
        cutovers.booked(ground, project);
        assertThat(page().select(".path li.next").text()).isEqualTo("Connectednext, Mar 26");
        assertThat(page().text()).doesNotContain("We think of");
    }

    @Test
    void whatToDoInAnEmergencyIsSaidOnceThereIsSomethingToShutOff() throws Exception {
        schedule.reach(ground.branch(), project, Stage.DESIGNED, MONDAY_1);
        assertThat(page().text()).contains("We will mark the shut-off").doesNotContain("In an emergency");
        schedule.reach(ground.branch(), project, Stage.INSTALLED, MONDAY_1);
        assertThat(page().text())
                .contains("Ask us where the shut-off of your system is.")
                .contains("In an emergency: call 911, then us.")
                .contains("Wires from the panels stay live in daylight");
    }

    @Test
    void anOutageThatTakesLongerThanToldSaysSo() throws Exception {
        cutovers.noticeGiven(ground, project);
        powerWas("2027-03-26T13:02:00Z", null, false);
        clock.standAt("2027-03-26T15:03:00Z");
        assertThat(headline()).isEqualTo("Your power is still off. It takes longer than planned.");
    }

    @Test
    void aLogThatNobodyEndedDoesNotSayThatThePowerIsOffForWeeks() throws Exception {
        cutovers.noticeGiven(ground, project);
        powerWas("2027-03-26T13:02:00Z", null, false);
        clock.standAt("2027-03-28T13:02:00Z");
        assertThat(headline()).isEqualTo("We are getting your project ready.");
    }

    @Test
    void onceThePowerIsBackItSaysHowLongItWasOffUntilTheDayIsOver() throws Exception {
        cutovers.noticeGiven(ground, project);
        powerWas("2027-03-26T13:02:00Z", "2027-03-26T14:20:00Z", true);
        clock.standAt("2027-03-26T15:00:00Z");
        Document page = page();
        assertThat(page.select("h1").text()).isEqualTo("Your power is back.");
        assertThat(page.select(".when").text())
                .contains("It was off 1 hour 18 minutes, from 9:02 to 10:20 in the morning");
        clock.standAt("2027-03-27T15:00:00Z");
        assertThat(headline()).doesNotContain("power");
    }

    @Test
    void aDayThatWasReversedSaysThatThePowerIsBackAndThatThereWillBeAnotherDay() throws Exception {
        cutovers.noticeGiven(ground, project);
        powerWas("2027-03-26T13:02:00Z", "2027-03-26T14:20:00Z", false);
        world.as(
                pm,
                () -> schedule.inBranch(ground.branch(), () -> {
                    UUID window = outages.live(project).orElseThrow().id();
                    outages.reversed(window, "A lug was too small.", pm.actor());
                    return window;
                }));
        clock.standAt("2027-03-26T15:00:00Z");
        Document page = page();
        assertThat(page.select("h1").text()).isEqualTo("Your power is back. We could not finish today.");
        assertThat(page.text()).contains("find a new day with you").doesNotContain("lug");
    }

    @Test
    void aMovedDayNamesTheOneThatWasToldBefore() throws Exception {
        cutovers.noticeGiven(ground, project);
        world.as(pm, () -> {
            long version = outages.live(project).orElseThrow().version();
            OutageChoice later =
                    new OutageChoice(LocalDate.of(2027, 4, 1), CutoverFixture.NINE, 90, ground.crewId(), null, null);
            assertThat(planning.move(project, version, later, "The utility asked"))
                    .isEmpty();
        });
        Document page = page();
        assertThat(page.select("h1").text()).contains("on Thursday, April 1,");
        assertThat(page.text())
                .contains("We told you Friday, March 26 before. That day no longer holds.")
                .doesNotContain("The utility asked");
    }

    @Test
    void aCancelledDayIsTakenBackAsClearlyAsItWasTold() throws Exception {
        cutovers.noticeGiven(ground, project);
        world.as(pm, () -> {
            long version = outages.live(project).orElseThrow().version();
            assertThat(planning.cancel(project, version, "Gear is late")).isEmpty();
        });
        Document page = page();
        assertThat(page.select("h1").text()).isEqualTo("Your power stays on. We will not cut it on Friday, March 26.");
        assertThat(page.text()).doesNotContain("Gear is late");
        assertThat(page.select("a[href$=power-off.ics]").text()).isEqualTo("Take the power cut out of my calendar");
    }

    @Test
    void onHoldAndCalledOffAreSaidInPlainWordsWithoutTheReason() throws Exception {
        schedule.reach(ground.branch(), project, Stage.SIGNED, MONDAY_1);
        world.as(pm, () -> course.hold(project, course.course(project).version(), "Loan fell through", null));
        Document held = page();
        assertThat(held.select("h1").text()).isEqualTo("Your project is on hold.");
        assertThat(held.text()).contains("We will call you before we go on.").doesNotContain("Loan");
        assertThat(held.select(".path li.next")).isEmpty();
        assertThat(held.text()).as("no day is told that could move").doesNotContain("Days can move");
        world.as(pm, () -> course.callOff(project, course.course(project).version(), "Sold the farm"));
        Document off = page();
        assertThat(off.select("h1").text()).isEqualTo("We have stopped the work on your project.");
        assertThat(off.text()).doesNotContain("Sold");
        assertThat(ReadingLevel.ofPage(off)).isLessThan(7);
    }

    @Test
    void datesAreThePublishedPlansAndADraftIsNotSeen() throws Exception {
        schedule.crew(ground.branch(), "Crew 1");
        schedule.reach(ground.branch(), project, Stage.SIGNED, MONDAY_1);
        schedule.planned(ground.branch());
        String published = page().select(".one").text();
        assertThat(published).containsPattern("We plan to be there by [A-Z][a-z]+day, March \\d+\\.");
        Pin later = new Pin(HalfDay.morning(LocalDate.of(2027, 5, 10)), Optional.empty(), "The farmer is away");
        schedule.inBranch(ground.branch(), () -> {
            progress.fixUnchecked(project, ActivityCode.SURVEY, later, pm.actor());
            return project;
        });
        schedule.planned(ground.branch());
        UUID draft = draft();
        assertThat(page().select(".one").text()).as("the draft says May 10").isEqualTo(published);
        world.as(
                ground.branch().manager(),
                () -> assertThat(publishing.publish(ground.branch().id(), draft))
                        .isEmpty());
        assertThat(page().select(".one").text()).contains("We plan to be there by Monday, May 10.");
        assertThat(page().text()).doesNotContain("The farmer is away").doesNotContain("Crew 1");
        // nobody went: a planned day that has passed is not told as one to come
        clock.standAt("2027-05-12T13:00:00Z");
        assertThat(page().text()).doesNotContain("We plan to be there by").doesNotContain("May 10");
    }

    private UUID draft() {
        return BranchWall.within(
                ground.branch().id(),
                () -> plans.draftHead(ground.branch().id()).orElseThrow().id());
    }

    @Test
    void aLinkThatIsWrongOrEndedIsAPlainPageThatSaysWhomToAsk() throws Exception {
        world.as(pm, () -> links.end(project, status.contact(ground.branch(), project)));
        MvcTestResult ended = get(link);
        MvcTestResult wrong = get("/s/0123456789abcdefghjkmnpqrstvwxyz");
        assertThat(ended).hasStatus(404);
        assertThat(wrong).hasStatus(404);
        assertThat(ended.getResponse().getContentAsString())
                .isEqualTo(wrong.getResponse().getContentAsString())
                .contains("Ask the person who gave it to you for a new one.")
                .doesNotContain("Sedge");
        assertThat(get("/s")).hasStatus(404);
        assertThat(get(link + "/journal")).hasStatus(404);
        assertThat(get(link + "/papers/99999999999999")).hasStatus(404);
    }

    @Test
    void aNewLinkEndsTheOldOneAndAPersonWhoLeftTakesTheirsAlong() throws Exception {
        String second = status.link(ground.branch(), project);
        assertThat(get(link)).hasStatus(404);
        assertThat(get(second)).hasStatusOk();
    }

    @Test
    void noCookieNoCacheNoReferrerNoIndex() {
        MvcTestResult answer = get(link);
        assertThat(answer.getResponse().getHeader("Cache-Control")).contains("no-store");
        assertThat(answer.getResponse().getHeader("Referrer-Policy")).isEqualTo("no-referrer");
        assertThat(answer.getResponse().getHeader("X-Robots-Tag")).contains("noindex");
        assertThat(answer.getResponse().getHeader("Content-Security-Policy")).contains("script-src 'self'");
        assertThat(answer.getResponse().getHeaders("Set-Cookie")).isEmpty();
        assertThat(answer.getRequest().getSession(false)).isNull();
    }

    @Test
    void thePageNeedsNoScriptAndNoInlineStyle() throws Exception {
        Document page = page();
        assertThat(page.select("script")).isEmpty();
        assertThat(page.select("[style]")).isEmpty();
        assertThat(page.select("style")).isEmpty();
    }

    @Test
    void thePageTakesAFixedNumberOfQueries() {
        cutovers.booked(ground, project);
        get(link);
        assertThat(Queries.count(() -> assertThat(get(link)).hasStatusOk())).isLessThanOrEqualTo(14);
    }
}
