package org.plumbrow.cutover.daylog;

import static org.assertj.core.api.Assertions.assertThat;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.plumbrow.PlumbrowTest;
import org.plumbrow.Queries;
import org.plumbrow.TestClock;
import org.plumbrow.TestPages;
import org.plumbrow.TestWorld;
import org.plumbrow.calc.electrical.Service;
import org.plumbrow.cutover.CutoverFixture;
import org.plumbrow.cutover.CutoverFixture.Ground;
import org.plumbrow.evidence.MadeUpPhoto;
import org.plumbrow.web.Visitor;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.mock.web.MockMultipartFile;
import org.springframework.test.web.servlet.assertj.MockMvcTester;
import org.springframework.test.web.servlet.assertj.MvcTestResult;

/** The day log as somebody taps through it on the phone. */
@PlumbrowTest
class DayLogPagesTest {

    @Autowired
    MockMvcTester mvc;

    @Autowired
    TestWorld world;

    @Autowired
    TestPages pages;

    @Autowired
    TestClock clock;

    @Autowired
    CutoverFixture fixture;

    @Autowired
    org.plumbrow.cutover.OutagePlanning planning;

    private Ground ground;
    private UUID project;
    private Visitor pm;

    @BeforeEach
    void aHomeOnTheMorningOfItsOutage() {
        ground = fixture.ground();
        project = fixture.noticeGiven(ground, fixture.home(ground));
        pm = ground.branch().projectManager();
        clock.standAt("2027-03-26T12:00:00Z");
    }

    private Document page(String suffix) {
        MvcTestResult answer = pages.get(pm, "/projects/" + project + "/day-log" + suffix);
        assertThat(answer).hasStatusOk();
        return TestPages.read(answer);
    }

    private MvcTestResult post(String suffix, String... fields) {
        clock.pass(java.time.Duration.ofMinutes(4));
        return pages.post(pm, "/projects/" + project + "/day-log" + suffix, fields);
    }

    private void open() {
        assertThat(post("", "service", "SINGLE_PHASE_120_240", "personInCharge", "Tamsin"))
                .hasStatus3xxRedirection();
    }

    private void passes(String step) {
        List<String> fields = new ArrayList<>();
        Map<String, String> usual = LogScript.usual(new Readings(Service.SINGLE_PHASE_120_240, false, false), step);
        usual.forEach((quantity, value) -> fields.addAll(List.of("r." + quantity, value)));
        assertThat(post("/steps/" + step + "/done", fields.toArray(String[]::new)))
                .as("step " + step)
                .hasStatus3xxRedirection();
    }

    private void signs(String hold, String part, String name) {
        assertThat(post(
                        "/holds/" + hold + "/sign",
                        "part",
                        part,
                        "name",
                        name,
                        "trade",
                        "their trade",
                        "isHere",
                        "yes"))
                .hasStatus3xxRedirection();
    }

    private void upToH1() {
        open();
        assertThat(post("/reversal-time", "neededBy", "12:30", "reason", "freezer"))
                .hasStatus3xxRedirection();
        List.of("1", "2", "3").forEach(this::passes);
    }

    private void upToPowerOff() {
        upToH1();
        signs("H1", "PERSON_IN_CHARGE", "Tamsin");
        signs("H1", "CUSTOMER", "Perrin Ash");
        passes("4");
    }

    private void fromPowerOffToTheEnd() {
        List.of("5", "6").forEach(this::passes);
        signs("H2", "ELECTRICIAN", "Sil");
        List.of("7", "8").forEach(this::passes);
        signs("H3", "SECOND_PERSON", "Jory");
        List.of("9", "10").forEach(this::passes);
        signs("H4", "ELECTRICIAN", "Sil");
        passes("11");
        signs("H5", "CUSTOMER", "Perrin Ash");
        List.of("13", "14").forEach(this::passes);
    }

    @Test
    void theDayIsTappedThroughFromOpeningToClosing() {
        assertThat(page("").select("button").text()).contains("Open the day log");
        upToPowerOff();
        Document off = page("");
        assertThat(off.select("h1")).hasSize(1);
        assertThat(off.select(".clock dd").first().text()).startsWith("0:00");
        assertThat(off.select("#step").text()).isEqualTo("Lock and tag every source");
        assertThat(off.select(".thumbs .done").text()).isEqualTo("Step 5 is done");
        fromPowerOffToTheEnd();
        assertThat(page("").select(".thumbs .done").text()).isEqualTo("Close the log");
        assertThat(post("/close")).hasStatus3xxRedirection();
        Document closed = page("");
        assertThat(closed.select(".thumb")).isEmpty();
        assertThat(closed.text())
                .contains("Does not apply: no generator here")
                .contains("signed by Perrin Ash, their trade");
        assertThat(closed.select("[style]")).isEmpty();
    }

    @Test
    void whatAFinishedDayTookIsLearnedForTheNextOneOfItsKind() {
        upToPowerOff();
        fromPowerOffToTheEnd();
        assertThat(post("/close")).hasStatus3xxRedirection();
        UUID next = fixture.home(ground);
        MvcTestResult answer = pages.get(pm, "/projects/" + next + "/outage");
        assertThat(answer)
                .hasStatusOk()
                .bodyText()
                .contains("Finished outages of this kind with this utility: 1. They make the expected minutes ×");
    }

    @Test
    void theLogIsAlwaysLightUnlessItIsDimmed() {
        open();
        assertThat(page("").select("html").hasClass("day")).isTrue();
        assertThat(page("?night=true").select("html").hasClass("night")).isTrue();
    }

    @Test
    void aReadingOutsideItsLimitsIsAskedAboutAtItsFieldAndEverythingTypedStays() {
        open();
        passes("1");
        MvcTestResult answer =
                post("/steps/2/done", "r.A-N", "131", "r.B-N", "121 V", "r.A-B", "252", "r.main-a", "40");
        assertThat(answer).hasStatus(422);
        Document asked = TestPages.read(answer);
        assertThat(asked.select("#r-A-N-w").text()).startsWith("Leg A to neutral: 131.0 V is outside 110 to 127 V.");
        assertThat(asked.select("#r-B-N").val()).isEqualTo("121 V");
        assertThat(asked.select("a[href=#r-A-N]")).hasSize(1);
        assertThat(page("").select("#r-A-N").val()).isEqualTo("131");
        String[] again = {"r.A-N", "131", "r.B-N", "121", "r.A-B", "252", "stays.A-N", ""};
        assertThat(post("/steps/2/done", again)).as("not explained").hasStatus(422);
        again[7] = "the utility knows and comes today";
        assertThat(post("/steps/2/done", again)).hasStatus3xxRedirection();
        assertThat(page("").text()).contains("Stays: the utility knows and comes today");
    }

    @Test
    void aWordInsteadOfAReadingIsRefusedAtItsField() {
        open();
        passes("1");
        MvcTestResult answer = post("/steps/2/done", "r.A-N", "many", "r.B-N", "121");
        assertThat(answer).hasStatus(422);
        Document page = TestPages.read(answer);
        assertThat(page.select("#r-A-N-w").text()).isEqualTo("Leg A to neutral: write a number from 0 to 1000 V.");
        assertThat(page.select("#r-A-N").val()).isEqualTo("many");
        assertThat(page.select("#r-B-N").val()).isEqualTo("121");
    }

    @Test
    void theLogCanBePutOnTheHomeScreenWithItsIcons() {
        open();
        Document page = page("");
        assertThat(page.select("link[rel=manifest]").attr("crossorigin")).isEqualTo("use-credentials");
        String address = page.select("link[rel=manifest]").attr("href");
        assertThat(address).isEqualTo(base() + "/manifest");
        var manifest = getAs(pm, "/manifest");
        assertThat(manifest).hasStatusOk().hasContentType("application/manifest+json");
        assertThat(manifest).bodyJson().extractingPath("$.start_url").isEqualTo(base());
        assertThat(manifest).bodyJson().extractingPath("$.scope").isEqualTo(base());
        assertThat(manifest).bodyJson().extractingPath("$.display").isEqualTo("standalone");
        assertThat(manifest)
                .bodyJson()
                .extractingPath("$.icons[*].sizes")
                .asArray()
                .contains("192x192", "512x512");
        for (String icon : List.of("/icon-192.png", "/icon-512.png", "/icon-maskable-512.png", "/icon-180.png")) {
            assertThat(mvc.get().uri(icon).exchange()).hasStatusOk().hasContentType("image/png");
        }
    }

    @Test
    void aShutHoldPointSaysWhatIsMissingAndOffersNoSignature() {
        open();
        List.of("1", "2", "3").forEach(this::passes);
        Document page = page("");
        assertThat(page.select("#step").text()).isEqualTo("Ready to lose power");
        assertThat(page.text()).contains("The latest reversal time is not set.");
        assertThat(page.select("#sign-form")).isEmpty();
        assertThat(post("/holds/H1/sign", "part", "CUSTOMER", "name", "Perrin", "trade", "owner", "isHere", "yes"))
                .hasStatus(422);
    }

    @Test
    void jumpingAHoldPointByAddressIsRefused() {
        open();
        assertThat(post("/steps/9/done")).hasStatus(422).bodyText().contains("Hold point H1 is not signed.");
    }

    @Test
    void reversingTakesOneTapAndAReasonLater() {
        upToPowerOff();
        Document running = page("");
        assertThat(running.select(".thumbs .reverse:not([hidden])").text()).isEqualTo("Reverse now");
        assertThat(running.select(".thumbs .reverse").attr("form")).isEqualTo("reverse-form");
        assertThat(running.select("form#reverse-form").attr("action")).endsWith("/day-log/reverse");
        assertThat(post("/reverse")).hasStatus3xxRedirection();
        assertThat(page("").select(".now:not([hidden]) .way li")).hasSize(6);
        assertThat(page("").select(".now p.soft:contains(Begun)").text()).isEqualTo("Begun at 8:36 am.");
        assertThat(page("").select(".thumbs .done").text()).isEqualTo("The line side is read");
        assertThat(post("/power-on")).hasStatus(422).bodyText().contains("not read since the reversal began");
        Document back = page("");
        assertThat(back.select("#on-form").hasAttr("hidden")).isTrue();
        assertThat(back.select("#back-form input[data-least]").eachAttr("name"))
                .containsExactly("r.A-N", "r.B-N", "r.A-B");
        assertThat(post("/steps/10/readings", "r.A-N", "131", "r.B-N", "122", "r.A-B", "243"))
                .hasStatus3xxRedirection();
        assertThat(page("").select("#back-against").text()).contains("The loads stay off");
        assertThat(page("").select("#back-form #r-A-N").val()).isEqualTo("131");
        assertThat(post("/steps/10/readings", "r.A-N", "121")).hasStatus3xxRedirection();
        assertThat(page("").select("#back-form")).isEmpty();
        assertThat(page("").select(".now:not([hidden])").text()).contains("Leg A to neutral: 121 V, before");
        assertThat(page("").select(".thumbs .done").text()).isEqualTo("The power is back on");
        assertThat(post("/power-on")).hasStatus3xxRedirection();
        assertThat(post("/close")).hasStatus(422).bodyText().contains("Write first why it was reversed.");
        assertThat(post("/reverse-reason", "reason", "A bolt sheared")).hasStatus3xxRedirection();
        assertThat(post("/close")).hasStatus3xxRedirection();
        assertThat(page("").text()).contains("Reversed; the power was off for 20 min.");
    }

    @Test
    void aReversalBegunByMistakeIsTakenBackInPlainWordsAndTheWorkGoesOn() {
        upToPowerOff();
        assertThat(page("").select(".now:not([hidden]) #step").text()).isEqualTo("Lock and tag every source");
        post("/reverse");
        assertThat(page("").select(".now:not([hidden]) summary").text()).contains("Begun by mistake");
        assertThat(post("/reverse-mistake"))
                .hasStatus(422)
                .bodyText()
                .contains("Write why it was begun, 1 to 300 characters.");
        assertThat(post("/reverse-mistake", "mistake", "Hit by the glove")).hasStatus3xxRedirection();
        Document again = page("");
        assertThat(again.select(".now:not([hidden]) #step").text()).isEqualTo("Lock and tag every source");
        assertThat(again.select(".steps").text()).contains("reversed. Hit by the glove taken back");
        assertThat(again.select(".thumbs .reverse:not([hidden])")).hasSize(1);
        assertThat(post("/reverse-mistake", "mistake", "again"))
                .hasStatus(422)
                .bodyText()
                .contains("Nothing is being reversed now.");
    }

    @Test
    void anEntryIsCorrectedOnItsOwnPageAndTakenBackThere() {
        open();
        passes("1");
        String change = page("").select(".steps a[href*=/entries/]").attr("href");
        String suffix = change.substring(change.indexOf("/entries/"));
        assertThat(page(suffix).select("h1").text()).isEqualTo("Step 1: change an entry");
        assertThat(post(suffix, "at", "07:55", "reason", "")).hasStatus(422);
        assertThat(post(suffix, "at", "quarter past", "reason", "by the photo"))
                .hasStatus(422)
                .bodyText()
                .contains("Write the time like 09:05.");
        assertThat(post(suffix, "at", "7:55 am", "reason", "by the photo")).hasStatus3xxRedirection();
        assertThat(page("").select(".steps li").first().text())
                .contains("7:55 am")
                .contains("by the photo");
        assertThat(post(suffix + "/take-back", "reason", "not everybody was there"))
                .hasStatus3xxRedirection();
        assertThat(page("").select("#step").text()).isEqualTo("Brief everybody");
        assertThat(page("").text()).contains("taken back");
    }

    @Test
    void aPhotoIsKeptWithItsStep() {
        open();
        passes("1");
        MvcTestResult answer = mvc.post()
                .multipart()
                .uri("/projects/" + project + "/day-log/steps/2/photo")
                .file(new MockMultipartFile("photo", "lugs.jpg", "image/jpeg", MadeUpPhoto.jpeg(160, 120)))
                .with(world.signedIn(pm))
                .with(csrf())
                .exchange();
        assertThat(answer).hasStatus3xxRedirection();
        assertThat(page("").text()).contains("One photo kept; add another");
        assertThat(page("").select(".steps a[href^=/evidence/]")).hasSize(1);
    }

    @Test
    void whatIsWrongIsKeptAtTheStep() {
        open();
        assertThat(post("/wrong", "text", "")).hasStatus(422);
        assertThat(post("/wrong", "text", "Meter base is cracked")).hasStatus3xxRedirection();
        assertThat(page("").text()).contains("something is wrong: Meter base is cracked");
    }

    @Test
    void thePageTakesAFixedNumberOfQueriesHoweverLongTheLog() {
        open();
        page("");
        int short_ = Queries.count(() -> page(""));
        List.of("1", "2", "3").forEach(this::passes);
        assertThat(Queries.count(() -> page(""))).isEqualTo(short_).isLessThanOrEqualTo(14);
    }

    @Test
    void beforeTheDayAndWithoutAnOutageThePageSaysSo() {
        clock.standAt("2027-03-25T12:00:00Z");
        assertThat(page("").text()).contains("The outage is on Fri, Mar 26 (tomorrow), power off at 9:00 am.");
        Ground elsewhere = fixture.ground();
        UUID other = fixture.home(elsewhere);
        var answer = pages.get(elsewhere.branch().projectManager(), "/projects/" + other + "/day-log");
        assertThat(answer).bodyText().contains("No outage is booked at Alder Lane 12");
    }

    private String base() {
        return "/projects/" + project + "/day-log";
    }

    private MvcTestResult getAs(Visitor visitor, String suffix) {
        return pages.get(visitor, base() + suffix);
    }

    @Test
    void theCrewsLeadIsLetInADesignerIsNotAndAnotherBranchFindsNothing() throws Exception {
        open();
        assertThat(getAs(ground.branch().crewLead(), ""))
                .hasStatusOk()
                .bodyText()
                .contains("href=\"/cutovers\"");
        assertThat(getAs(ground.branch().designer(), "")).hasStatus(403);
        assertThat(getAs(world.branch().projectManager(), "")).hasStatus(404);
    }

    @Test
    void twoWhoOpenTheLogAtOnceHaveOneLog() throws Exception {
        var pool = java.util.concurrent.Executors.newFixedThreadPool(2);
        try {
            java.util.concurrent.Callable<Integer> opening =
                    () -> post("", "service", "SINGLE_PHASE_120_240", "personInCharge", "Tamsin")
                            .getResponse()
                            .getStatus();
            for (var one : pool.invokeAll(List.of(opening, opening))) {
                assertThat(one.get()).isEqualTo(302);
            }
        } finally {
            pool.shutdown();
        }
        assertThat(page("").select("#others")).isEmpty();
    }

    @Test
    void aReadingThatSomebodyChangedMeanwhileIsAnsweredWithBoth() {
        open();
        passes("1");
        post("/steps/2/readings", "r.A-N", "122", "seen.A-N", "");
        MvcTestResult answer = post("/steps/2/done", "r.A-N", "119", "seen.A-N", "", "r.B-N", "121", "r.A-B", "242");
        assertThat(answer).hasStatus(409);
        Document both = TestPages.read(answer);
        assertThat(both.select("#r-A-N-w").text())
                .contains("Tamsin wrote 122 V")
                .contains("you 119 V");
        assertThat(both.select("#r-A-N").val()).isEqualTo("119");
        assertThat(both.select("input[name=seen.A-N]").val()).isEqualTo("119");
        assertThat(both.select(".steps").text())
                .contains("Leg A to neutral: 122 V")
                .contains("Leg A to neutral: 119 V");
    }

    @Test
    void aCorrectionOfWhatSomebodyCorrectedMeanwhileShowsTheirsBesideYours() {
        open();
        passes("1");
        String change = page("").select(".steps a[href*=/entries/]").attr("href");
        String suffix = change.substring(change.indexOf("/entries/"));
        String seen = page(suffix).select("input[name=version]").val();
        assertThat(post(suffix, "at", "07:55", "reason", "by the photo", "version", seen))
                .hasStatus3xxRedirection();
        MvcTestResult answer = post(suffix, "at", "07:50", "reason", "by my watch", "version", seen);
        assertThat(answer).hasStatus(409);
        Document conflict = TestPages.read(answer);
        assertThat(conflict.select("input[name=at]").eachAttr("value")).containsExactly("07:55", "07:50");
        String now = conflict.select("input[name=version]").val();
        assertThat(post(suffix, "at", "07:50", "reason", "by my watch", "version", now))
                .hasStatus3xxRedirection();
        assertThat(page("").select(".steps li").first().text()).contains("7:50 am");
    }

    @Test
    void theLatestReversalThatSomebodySetMeanwhileIsShownBesideYours() {
        open();
        post("/reversal-time", "neededBy", "12:30", "reason", "freezer", "version", "0");
        MvcTestResult answer = post("/reversal-time", "neededBy", "11:30", "reason", "guests", "version", "0");
        assertThat(answer).hasStatus(409).bodyText().contains("Yours: guests").contains("Theirs: freezer");
        assertThat(post("/reversal-time", "neededBy", "11:30", "reason", "guests", "version", "1"))
                .hasStatus3xxRedirection();
        assertThat(page("").text()).contains("The latest reversal is 10:45 am");
    }

    @Test
    void everyWrongFieldOfThePageIsNamedAndKeepsWhatWasTyped() {
        open();
        MvcTestResult answer = post("/reversal-time", "neededBy", "", "reason", "", "undoMinutes", "half an hour");
        assertThat(answer).hasStatus(422);
        Document page = Jsoup.parse(body(answer));
        assertThat(page.select(".wrong").eachAttr("id"))
                .containsExactly("r-neededBy-w", "r-reason-w", "r-undoMinutes-w");
        assertThat(page.select("#r-undoMinutes").val()).isEqualTo("half an hour");
        assertThat(page.select("#r-reason").attr("aria-invalid")).isEqualTo("true");
    }

    @Test
    void aRefusedSignatureKeepsNameAndTradeAndTheTimeStaysATime() {
        upToH1();
        signs("H1", "PERSON_IN_CHARGE", "Tamsin");
        MvcTestResult answer = post("/holds/H1/sign", "part", "CUSTOMER", "name", "Tamsin", "trade", "owner");
        assertThat(answer).hasStatus(422);
        Document page = Jsoup.parse(body(answer));
        assertThat(page.select("#r-name").val()).isEqualTo("Tamsin");
        assertThat(page.select("#r-trade").val()).isEqualTo("owner");
        assertThat(page.select("#r-at").val()).isEmpty();
        assertThat(page.select("#r-name-w").text()).contains("each for themselves");
    }

    @Test
    void theClockIsWrittenByTheServer() {
        upToPowerOff();
        clock.pass(java.time.Duration.ofMinutes(47));
        Document off = page("");
        assertThat(off.select("#off").text()).isEqualTo("0:47");
        assertThat(off.select("#left").text()).isEqualTo("2:26");
        assertThat(off.select("#clock").attr("data-off")).isEqualTo("2027-03-26T12:32:00Z");
        assertThat(off.select(".clock svg").attr("aria-label")).isEqualTo("8:32 am to 11:45 am: 47 minutes gone");
    }

    @Test
    void theLogOfAReversedDayStaysToBeReadWhenAnotherWindowIsBooked() {
        upToPowerOff();
        post("/reverse");
        post("/steps/10/readings", "r.A-N", "121", "r.B-N", "122", "r.A-B", "243");
        post("/power-on");
        post("/reverse-reason", "reason", "A bolt sheared");
        post("/close");
        clock.standAt("2027-03-27T12:00:00Z");
        world.as(
                pm,
                () -> assertThat(planning.book(
                                project,
                                new org.plumbrow.cutover.OutageChoice(
                                        java.time.LocalDate.of(2027, 4, 16),
                                        CutoverFixture.NINE,
                                        90,
                                        ground.crewId(),
                                        null,
                                        null)))
                        .isEmpty());
        Document fresh = page("");
        assertThat(fresh.text()).contains("The outage is on Fri, Apr 16");
        String old = fresh.select("#others ~ ul a").attr("href");
        Document past = page(old.substring(base().length()));
        assertThat(past.text()).contains("Why it was reversed: A bolt sheared").contains("not done");
        assertThat(past.select("form")).isEmpty();
        assertThat(past.select(".thumb, a[href*=/entries/]")).isEmpty();
    }

    @Test
    void writtenUpLaterEachTimeIsAskedForAtItsField() {
        clock.standAt("2027-03-29T12:00:00Z");
        open();
        assertThat(page("").select("details:has(#r-at)").hasAttr("open")).isTrue();
        MvcTestResult answer = post("/steps/1/done");
        assertThat(answer).hasStatus(422);
        assertThat(Jsoup.parse(body(answer)).select("#r-at-w").text())
                .isEqualTo("This log tells of Fri, Mar 26. Write at what time it was.");
        assertThat(post("/steps/1/done", "at", "08:20", "who", "Sil, electrician"))
                .hasStatus3xxRedirection();
        assertThat(page("").select(".steps li").first().text()).contains("8:20 am, Sil, electrician");
    }

    @Test
    void nothingOnThePageSaysThatSomethingMayBeTouched() {
        upToPowerOff();
        List.of("5", "6").forEach(this::passes);
        signs("H2", "ELECTRICIAN", "Sil");
        String text = page("").text();
        assertThat(text.toLowerCase(java.util.Locale.ROOT))
                .doesNotContain("safe")
                .doesNotContain("may be worked on");
        assertThat(text).contains("never says that equipment may be touched");
    }

    private static String body(MvcTestResult answer) {
        try {
            return answer.getResponse().getContentAsString();
        } catch (java.io.UnsupportedEncodingException e) {
            throw new IllegalStateException(e);
        }
    }
}
