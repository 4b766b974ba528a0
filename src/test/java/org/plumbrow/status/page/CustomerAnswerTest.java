package org.plumbrow.status.page;

import static org.assertj.core.api.Assertions.assertThat;

import biweekly.Biweekly;
import biweekly.component.VEvent;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.plumbrow.PlumbrowTest;
import org.plumbrow.TestClock;
import org.plumbrow.TestPages;
import org.plumbrow.TestWorld;
import org.plumbrow.cutover.CutoverFixture;
import org.plumbrow.cutover.CutoverFixture.Ground;
import org.plumbrow.cutover.OutageChoice;
import org.plumbrow.cutover.OutageFacts;
import org.plumbrow.cutover.OutagePlanning;
import org.plumbrow.cutover.Outages;
import org.plumbrow.notice.NoticeKind;
import org.plumbrow.notice.NoticeLine;
import org.plumbrow.notice.NoticeState;
import org.plumbrow.notice.Outbox;
import org.plumbrow.project.JournalReader;
import org.plumbrow.status.CustomerAnswers;
import org.plumbrow.status.StatusFixture;
import org.plumbrow.web.Visitor;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.web.servlet.assertj.MockMvcTester;
import org.springframework.test.web.servlet.assertj.MvcTestResult;

/** The customer answers to the day of the outage, and takes it into the own calendar. */
@PlumbrowTest
class CustomerAnswerTest {

    @Autowired
    MockMvcTester mvc;

    @Autowired
    TestWorld world;

    @Autowired
    TestPages pages;

    @Autowired
    TestClock clock;

    @Autowired
    CutoverFixture cutovers;

    @Autowired
    StatusFixture status;

    @Autowired
    OutagePlanning planning;

    @Autowired
    Outages outages;

    @Autowired
    CustomerAnswers answers;

    @Autowired
    JournalReader journal;

    @Autowired
    Outbox outbox;

    private Ground ground;
    private UUID project;
    private Visitor pm;
    private String link;

    @BeforeEach
    void aBookedOutage() {
        ground = cutovers.ground();
        project = cutovers.noticeGiven(ground, cutovers.dairy(ground));
        pm = ground.branch().projectManager();
        link = status.link(ground.branch(), project);
    }

    private MvcTestResult answer(String... fields) {
        var request = mvc.post().uri(link + "/answer");
        for (int i = 0; i < fields.length; i += 2) {
            request.param(fields[i], fields[i + 1]);
        }
        return request.exchange();
    }

    private Document page() throws Exception {
        return Jsoup.parse(mvc.get().uri(link).exchange().getResponse().getContentAsString());
    }

    private OutageFacts window() {
        return world.as(pm, () -> outages.live(project).orElseThrow());
    }

    private List<NoticeLine> letters() {
        return world.as(pm, () -> outbox.ofProject(project)).stream()
                .filter(line -> line.kind() == NoticeKind.STAFF)
                .toList();
    }

    @Test
    void oneTapSaysThatTheDayWorksAndThePageSaysItBack() throws Exception {
        MvcTestResult said = answer("day", "2027-03-26", "answer", "works");
        assertThat(said).hasStatus(302).hasRedirectedUrl(link + "#answer");
        assertThat(said.getResponse().getHeaders("Set-Cookie")).isEmpty();
        assertThat(window().customerAnswer()).isNotNull();
        assertThat(window().customerAnswer().agrees()).isTrue();
        assertThat(window().customerAnswer().by()).isEqualTo("the customer's page");
        assertThat(page().select("#answer").text())
                .contains("You told us on Monday, March 1: this day works. Thank you.");
        assertThat(letters()).singleElement().satisfies(letter -> {
            assertThat(letter.subject()).isEqualTo("Sedge Hollow Dairy: Fri, Mar 26 works for the customer");
            assertThat(letter.toName()).isEqualTo("Tamsin");
            assertThat(letter.toAddress()).isEqualTo(pm.email());
        });
    }

    @Test
    void aNoNeedsAReasonAndEverythingTypedStays() {
        MvcTestResult refused = answer("day", "2027-03-26", "answer", "not", "reason", " ", "name", "Marit Ash");
        assertThat(refused)
                .hasStatus(422)
                .bodyText()
                .contains("Write why the day does not work")
                .contains("value=\"Marit Ash\"")
                .contains("<title>Error: ")
                .contains("aria-invalid=\"true\"");
        assertThat(window().customerAnswer()).isNull();
        assertThat(answer("day", "2027-03-26", "answer", "not", "reason", "x".repeat(201)))
                .hasStatus(422)
                .bodyText()
                .contains("At most 200 letters fit here.")
                .contains("x".repeat(201));
        assertThat(answer("day", "2027-03-26")).hasStatus(422).bodyText().contains("Press one of the two buttons");
    }

    @Test
    void aNoIsKeptInTheirWordsTheJournalSaysThatItCameAndNotWhoOrWhy() throws Exception {
        assertThat(answer("day", "2027-03-26", "answer", "not", "reason", "The vet comes", "name", "Marit Ash"))
                .hasStatus(302);
        List<CustomerAnswers.Answer> kept = world.as(pm, () -> answers.of(project));
        assertThat(kept).singleElement().satisfies(one -> {
            assertThat(one.agrees()).isFalse();
            assertThat(one.reason()).isEqualTo("The vet comes");
            assertThat(one.name()).isEqualTo("Marit Ash");
            assertThat(one.day()).isEqualTo(CutoverFixture.FRIDAY_26);
        });
        String line = world.as(pm, () -> journal.newest(project, 1)).get(0).toString();
        assertThat(line)
                .contains("The day of the outage does not work for the customer.")
                .contains("Customer's page")
                .doesNotContain("vet")
                .doesNotContain("Marit");
        assertThat(page().select("#answer").text()).contains("this day does not work. We will call you.");
        MvcTestResult desk = pages.get(pm, "/projects/" + project + "/customer");
        assertThat(desk)
                .hasStatusOk()
                .bodyText()
                .contains("The outage on Fri, Mar 26 does not work for the customer</h1>");
        assertThat(letters())
                .singleElement()
                .satisfies(letter -> assertThat(letter.subject()).contains("does not work for the customer"));
    }

    @Test
    void theLastAnswerCountsAndBothAreKept() {
        answer("day", "2027-03-26", "answer", "works");
        clock.pass(java.time.Duration.ofMinutes(5));
        answer("day", "2027-03-26", "answer", "not", "reason", "The vet comes");
        assertThat(window().customerAnswer().agrees()).isFalse();
        assertThat(world.as(pm, () -> answers.of(project)))
                .extracting(CustomerAnswers.Answer::agrees)
                .containsExactly(false, true);
        assertThat(letters())
                .as("the letter that still waits is overtaken")
                .hasSize(2)
                .satisfiesExactlyInAnyOrder(
                        old -> assertThat(old.state()).isEqualTo(NoticeState.WITHDRAWN),
                        now -> assertThat(now.state()).isEqualTo(NoticeState.WAITING));
    }

    @Test
    void theSameAnswerTwiceIsOneAnswer() {
        answer("day", "2027-03-26", "answer", "works");
        answer("day", "2027-03-26", "answer", "works");
        assertThat(world.as(pm, () -> answers.of(project))).hasSize(1);
        assertThat(letters()).hasSize(1);
    }

    @Test
    void anAnswerToADayThatIsNoLongerTheDayDoesNotCountForTheNewOne() {
        OutageChoice later =
                new OutageChoice(LocalDate.of(2027, 4, 1), CutoverFixture.NINE, 90, ground.crewId(), null, null);
        world.as(
                pm,
                () -> assertThat(planning.move(project, window().version(), later, "The utility asked"))
                        .isEmpty());
        assertThat(answer("day", "2027-03-26", "answer", "works"))
                .hasStatus(409)
                .bodyText()
                .contains("The day has changed since you opened this page.")
                .contains("Thursday, April 1");
        assertThat(answer("day", "next week", "answer", "works")).hasStatus(409);
        assertThat(window().customerAnswer()).isNull();
    }

    @Test
    void nobodyCanFillTheOutboxThroughALink() {
        for (int n = 0; n < 20; n++) {
            assertThat(answer("day", "2027-03-26", "answer", "not", "reason", "Reason " + n))
                    .hasStatus(302);
        }
        assertThat(answer("day", "2027-03-26", "answer", "works"))
                .hasStatus(409)
                .bodyText()
                .contains("You have answered many times. Call us instead.");
    }

    @Test
    void aLinkOfAnotherProjectAnswersNothingHere() {
        UUID other = cutovers.home(ground);
        link = status.link(ground.branch(), other);
        assertThat(answer("day", "2027-03-26", "answer", "works")).hasStatus(409);
        assertThat(window().customerAnswer()).isNull();
    }

    private VEvent calendar() throws Exception {
        MvcTestResult file = mvc.get().uri(link + "/power-off.ics").exchange();
        assertThat(file).hasStatusOk();
        assertThat(file.getResponse().getHeader("Cache-Control")).contains("no-store");
        return Biweekly.parse(file.getResponse().getContentAsString())
                .first()
                .getEvents()
                .get(0);
    }

    @Test
    void theAppointmentGoesIntoACalendarMovesAlongAndIsTakenBack() throws Exception {
        VEvent first = calendar();
        assertThat(first.getSummary().getValue()).isEqualTo("Power off");
        assertThat(first.getDateStart().getValue().toInstant()).isEqualTo(Instant.parse("2027-03-26T13:00:00Z"));
        assertThat(first.getDateEnd().getValue().toInstant()).isEqualTo(Instant.parse("2027-03-26T15:00:00Z"));
        assertThat(first.getDescription().getValue()).contains("Milk: be done with milking.");
        OutageChoice later =
                new OutageChoice(LocalDate.of(2027, 4, 1), CutoverFixture.NINE, 90, ground.crewId(), null, null);
        world.as(
                pm,
                () -> assertThat(planning.move(project, window().version(), later, "The utility asked"))
                        .isEmpty());
        VEvent moved = calendar();
        assertThat(moved.getUid().getValue()).isEqualTo(first.getUid().getValue());
        assertThat(moved.getSequence().getValue())
                .isGreaterThan(first.getSequence().getValue());
        assertThat(moved.getDateStart().getValue().toInstant()).isEqualTo(Instant.parse("2027-04-01T13:00:00Z"));
        assertThat(moved.getStatus()).isNull();
    }

    @Test
    void aCancelledAppointmentIsTakenOutOfTheCalendarByTheSameFile() throws Exception {
        VEvent first = calendar();
        world.as(
                pm,
                () -> assertThat(planning.cancel(project, window().version(), "Gear is late"))
                        .isEmpty());
        VEvent gone = calendar();
        assertThat(gone.getStatus().isCancelled()).isTrue();
        assertThat(gone.getUid().getValue()).isEqualTo(first.getUid().getValue());
        assertThat(gone.getSequence().getValue())
                .isGreaterThan(first.getSequence().getValue());
    }

    @Test
    void withoutAnAppointmentThereIsNoFile() {
        link = status.link(ground.branch(), cutovers.home(ground));
        assertThat(mvc.get().uri(link + "/power-off.ics")).hasStatus(404);
    }
}
