package org.plumbrow.cutover.daylog;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.Arrays;
import java.util.List;
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
import org.plumbrow.database.BranchWall;
import org.plumbrow.web.Visitor;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.test.web.servlet.assertj.MvcTestResult;
import org.springframework.transaction.support.TransactionTemplate;

/** What a phone has kept of a day log, as the server takes it. */
@PlumbrowTest
class DayLogSendingTest {

    @Autowired
    TestWorld world;

    @Autowired
    TestPages pages;

    @Autowired
    TestClock clock;

    @Autowired
    CutoverFixture fixture;

    @Autowired
    JdbcClient jdbc;

    @Autowired
    TransactionTemplate transaction;

    private Ground ground;
    private UUID project;
    private Visitor pm;

    @BeforeEach
    void aLogThatIsOpen() {
        ground = fixture.ground();
        project = fixture.noticeGiven(ground, fixture.home(ground));
        pm = ground.branch().projectManager();
        clock.standAt("2027-03-26T12:00:00Z");
        post("", "service", "SINGLE_PHASE_120_240", "personInCharge", "Tamsin");
        post("/reversal-time", "neededBy", "12:30", "reason", "freezer", "version", "0");
        clock.pass(Duration.ofMinutes(30));
    }

    private MvcTestResult post(String suffix, String... fields) {
        return pages.post(pm, "/projects/" + project + "/day-log" + suffix, fields);
    }

    private MvcTestResult sends(UUID id, String suffix, String written, String sent, UUID person, String... fields) {
        String[] all = java.util.Arrays.copyOf(
                new String[] {
                    "sending",
                    id.toString(),
                    "entry",
                    id.toString(),
                    "person",
                    person.toString(),
                    "written",
                    written,
                    "sent",
                    sent
                },
                10 + fields.length);
        System.arraycopy(fields, 0, all, 10, fields.length);
        return post(suffix + "/sending", all);
    }

    private String stepOne() {
        MvcTestResult answer = pages.get(pm, "/projects/" + project + "/day-log");
        Document page = TestPages.read(answer);
        return page.select(".steps li").first().text();
    }

    @Test
    void aTapCountsBackFromTheServersClockAndBothTimesAreShownWhereThePhonesIsWrong() {
        // It is 8:30 am; the phone says 8:16, and was tapped twenty minutes ago.
        assertThat(sends(
                        UUID.randomUUID(),
                        "/steps/1/done",
                        "2027-03-26T11:56:00Z",
                        "2027-03-26T12:16:00Z",
                        pm.personId()))
                .hasStatusOk()
                .bodyText()
                .contains("\"stored\"");
        assertThat(stepOne()).contains("8:10 am").contains("the phone’s clock said 7:56 am, 14 min off");
    }

    @Test
    void theSameTapTwiceCountsOnce() {
        UUID id = UUID.randomUUID();
        for (String said : new String[] {"stored", "already"}) {
            assertThat(sends(id, "/steps/1/done", "2027-03-26T12:20:00Z", "2027-03-26T12:30:00Z", pm.personId()))
                    .hasStatusOk()
                    .bodyText()
                    .contains("\"" + said + "\"");
        }
        assertThat(stepOne()).contains("8:20 am").doesNotContain("two entries").doesNotContain("clock said");
    }

    @Test
    void aHoldPointIsNotJumpedByAPhoneWithoutSignal() {
        assertThat(sends(
                        UUID.randomUUID(),
                        "/steps/4/done",
                        "2027-03-26T12:20:00Z",
                        "2027-03-26T12:30:00Z",
                        pm.personId()))
                .hasStatus(422)
                .bodyText()
                .contains("Hold point H1 is not signed");
    }

    @Test
    void aReversalBeforeThePowerIsOffIsRefusedWithWhatToDo() {
        assertThat(sends(UUID.randomUUID(), "/reverse", "2027-03-26T12:20:00Z", "2027-03-26T12:30:00Z", pm.personId()))
                .hasStatus(422)
                .bodyText()
                .contains("The power is not off: there is nothing to reverse.");
    }

    /** As the phone of this person keeps and sends it, ten minutes ago. */
    private MvcTestResult keptBy(Visitor who, UUID id, String suffix, String... fields) {
        Visitor before = pm;
        pm = who;
        try {
            return sends(id, suffix, "2027-03-26T12:20:00Z", "2027-03-26T12:30:00Z", who.personId(), fields);
        } finally {
            pm = before;
        }
    }

    @Test
    void theLeadOfTheCrewThatTheOutageNamesSendsFromThePhoneToo() {
        assertThat(keptBy(ground.branch().crewLead(), UUID.randomUUID(), "/steps/1/done"))
                .hasStatusOk();
        assertThat(stepOne()).contains("8:20 am, Jory");
    }

    @Test
    void anEntryIsCorrectedAndTakenBackFromThePhoneByTheIdThatThePhoneGaveIt() {
        UUID tap = UUID.randomUUID();
        assertThat(keptBy(pm, tap, "/steps/1/done")).hasStatusOk();
        String entry = "/entries/" + tap;
        assertThat(keptBy(pm, UUID.randomUUID(), entry, "at", "08:10", "reason", "by the photo", "version", "0"))
                .hasStatusOk()
                .bodyJson()
                .extractingPath("$.version")
                .isEqualTo(1);
        assertThat(stepOne()).contains("8:10 am").contains("by the photo");
        assertThat(keptBy(pm, UUID.randomUUID(), entry, "at", "08:11", "reason", "no", "version", "0"))
                .hasStatus(422)
                .bodyText()
                .contains("Somebody else");
        assertThat(keptBy(pm, UUID.randomUUID(), entry + "/take-back", "reason", "Not done yet"))
                .hasStatusOk();
        assertThat(stepOne()).contains("Not done yet taken back");
        assertThat(keptBy(pm, UUID.randomUUID(), "/entries/nothing", "reason", "no"))
                .hasStatus(404);
    }

    @Test
    void whoCameAndLeftAndANearMissComeFromThePhone() {
        UUID came = UUID.randomUUID();
        assertThat(keptBy(pm, came, "/people", "name", "Perrin", "role", "owner"))
                .hasStatusOk();
        assertThat(keptBy(pm, UUID.randomUUID(), "/people", "name", "", "role", "owner"))
                .hasStatus(422);
        assertThat(keptBy(pm, UUID.randomUUID(), "/people/" + came + "/left")).hasStatusOk();
        assertThat(keptBy(
                        pm,
                        UUID.randomUUID(),
                        "/near-miss",
                        "happened",
                        "a lug fell",
                        "couldHave",
                        "a short",
                        "done",
                        "a tray for parts"))
                .hasStatusOk();
    }

    @Test
    void aLogIsOpenedAndItsReversalTimeSetFromThePhoneAndClosedOnlyWhenEverythingIsDone() {
        clock.standAt(TestClock.START);
        ground = fixture.ground();
        pm = ground.branch().projectManager();
        project = fixture.noticeGiven(ground, fixture.home(ground));
        clock.standAt("2027-03-26T12:30:00Z");
        assertThat(keptBy(pm, UUID.randomUUID(), "", "service", "DELTA_240", "personInCharge", ""))
                .hasStatus(422)
                .bodyText()
                .contains("Write the name of the person in charge.");
        UUID opened = UUID.randomUUID();
        for (String said : new String[] {"stored", "already"}) {
            assertThat(keptBy(pm, opened, "", "service", "DELTA_240", "personInCharge", "Tamsin"))
                    .hasStatusOk()
                    .bodyText()
                    .contains(said);
        }
        assertThat(keptBy(
                        pm, UUID.randomUUID(), "/reversal-time", "neededBy", "12:30", "reason", "milk", "version", "0"))
                .hasStatusOk();
        assertThat(keptBy(
                        pm, UUID.randomUUID(), "/reversal-time", "neededBy", "12:00", "reason", "milk", "version", "0"))
                .hasStatus(422)
                .bodyText()
                .contains("Somebody else set the latest reversal time meanwhile.");
        assertThat(keptBy(pm, UUID.randomUUID(), "/close"))
                .hasStatus(422)
                .bodyText()
                .contains("Step 1 is not done yet");
    }

    private static final String[] READ = {"r.A-N", "121", "r.B-N", "122", "r.A-B", "243"};
    private static final String[] PUT_RIGHT = {
        "r.A-N",
        "121",
        "r.B-N",
        "122",
        "r.A-B",
        "243",
        "fix.1.id",
        UUID.randomUUID().toString(),
        "fix.1.at",
        "2027-03-26T12:24:00Z",
        "fix.1.of",
        "A-N",
        "fix.1.was",
        "12",
        "fix.1.why",
        "typed wrong"
    };

    private static String[] with(String[] fields, int at, String value) {
        String[] other = fields.clone();
        other[at] = value;
        return other;
    }

    private String steps() {
        return pages.page(pm, "/projects/" + project + "/day-log")
                .select(".steps")
                .text();
    }

    private List<String> kept(String kind) {
        return BranchWall.everywhere(() -> transaction.execute(status ->
                jdbc.sql("""
                select coalesce(e.value, '') || ' at ' || to_char(e.phone_time, 'HH24:MI') || ' ' || coalesce(e.reason, '')
                  from day_log_entry e join day_log l on l.id = e.day_log_id
                 where l.project_id = ? and e.kind = ? and e.step = '2' order by e.number
                """).params(project, kind).query(String.class).list()));
    }

    @Test
    void aReadingPutRightOnThePhoneStandsBesideTheFirstWithBothTimesOfThePhone() {
        keptBy(pm, UUID.randomUUID(), "/steps/1/done");
        UUID tap = UUID.randomUUID();
        for (String said : new String[] {"stored", "already"}) {
            assertThat(keptBy(pm, tap, "/steps/2/done", PUT_RIGHT))
                    .hasStatusOk()
                    .bodyText()
                    .contains(said);
        }
        assertThat(steps())
                .contains("121 V (corrected), 122 V, 243 V")
                .contains("(was Leg A to neutral: 12 V)")
                .contains("typed wrong");
        assertThat(kept("READING")).hasSize(3).first().asString().startsWith("12 at ");
        assertThat(kept("CORRECTED"))
                .hasSize(1)
                .first()
                .asString()
                .startsWith("121 at ")
                .contains("24 typed wrong");
    }

    /** The answer was lost, and what the phone held for not sent was put right there. */
    @Test
    void aTapThatHadComeAndIsPutRightThenIsCorrectedInTheLog() {
        keptBy(pm, UUID.randomUUID(), "/steps/1/done");
        UUID tap = UUID.randomUUID();
        assertThat(keptBy(pm, tap, "/steps/2/done", with(READ, 1, "119"))).hasStatusOk();
        for (int i = 0; i < 2; i++) {
            assertThat(keptBy(pm, tap, "/steps/2/done", with(PUT_RIGHT, 13, "119")))
                    .hasStatusOk()
                    .bodyText()
                    .contains("already");
        }
        assertThat(steps()).contains("121 V (corrected), 122 V, 243 V").contains("(was Leg A to neutral: 119 V)");
        assertThat(kept("READING")).hasSize(3);
        assertThat(kept("CORRECTED")).hasSize(1);
        assertThat(keptBy(pm, tap, "/steps/2/done", with(PUT_RIGHT, 1, "lots")))
                .hasStatus(422)
                .bodyText()
                .contains("write a number");
    }

    @Test
    void whatIsPutRightToTheSameIsNoCorrection() {
        keptBy(pm, UUID.randomUUID(), "/steps/1/done");
        assertThat(keptBy(pm, UUID.randomUUID(), "/steps/2/done", with(PUT_RIGHT, 13, "121")))
                .hasStatusOk();
        assertThat(kept("READING")).hasSize(3);
        assertThat(kept("CORRECTED")).isEmpty();
    }

    /** It was outside its limits, so that the step was not done by it: put right, the same tap does it. */
    @Test
    void aTapThatWasAskedAboutIsDoneOncePutRight() {
        keptBy(pm, UUID.randomUUID(), "/steps/1/done");
        UUID tap = UUID.randomUUID();
        assertThat(keptBy(pm, tap, "/steps/2/done", with(READ, 1, "12"))).hasStatus(422);
        assertThat(keptBy(pm, tap, "/steps/2/done", PUT_RIGHT)).hasStatusOk();
        assertThat(steps()).contains("121 V (corrected), 122 V, 243 V").contains("(was Leg A to neutral: 12 V)");
        assertThat(kept("READING")).hasSize(3);
    }

    private void upToTheFirstHoldPoint() {
        keptBy(pm, UUID.randomUUID(), "/steps/1/done");
        keptBy(pm, UUID.randomUUID(), "/steps/2/done", READ);
        keptBy(pm, UUID.randomUUID(), "/steps/3/done");
    }

    private MvcTestResult signs(String part, String name, String... more) {
        String[] fields =
                Arrays.copyOf(new String[] {"part", part, "name", name, "trade", "their trade"}, 6 + more.length);
        System.arraycopy(more, 0, fields, 6, more.length);
        return keptBy(pm, UUID.randomUUID(), "/holds/H1/sign", fields);
    }

    @Test
    void whoIsNotOnSiteDoesNotSignFromAPhoneUnlessItSaysThatTheyAreHere() {
        upToTheFirstHoldPoint();
        assertThat(signs("PERSON_IN_CHARGE", "Perrin"))
                .hasStatus(422)
                .bodyText()
                .contains("\"isHere\"")
                .contains("Perrin is not among the people on site (Tamsin).");
        assertThat(signs("PERSON_IN_CHARGE", "Tamsin")).hasStatusOk();
        assertThat(signs("CUSTOMER", "Perrin", "isHere", "yes")).hasStatusOk();
    }

    /** The phone went by the list that it had; the signature weighs more than what another phone wrote meanwhile. */
    @Test
    void whomThePhoneHadOnItsListSignsAlsoWhereAnotherPhoneWroteThatTheyLeft() {
        upToTheFirstHoldPoint();
        signs("PERSON_IN_CHARGE", "Tamsin");
        UUID came = UUID.randomUUID();
        keptBy(pm, came, "/people", "name", "Perrin", "role", "owner");
        keptBy(pm, UUID.randomUUID(), "/people/" + came + "/left");
        assertThat(signs("CUSTOMER", "perrin")).hasStatusOk();
        assertThat(post("/holds/H2/sign", "part", "ELECTRICIAN", "name", "Sil", "trade", "electrician"))
                .hasStatus(422);
    }

    @Test
    void nobodySendsInAnothersName() {
        assertThat(sends(
                        UUID.randomUUID(),
                        "/wrong",
                        "2027-03-26T12:20:00Z",
                        "2027-03-26T12:30:00Z",
                        UUID.randomUUID(),
                        "text",
                        "A near miss"))
                .hasStatus(403)
                .bodyText()
                .contains("not-theirs");
    }

    @Test
    void whatLacksItsNumberOrItsTimeIsRefusedOrHappensNow() {
        assertThat(post("/steps/1/done/sending")).hasStatus(422);
        assertThat(sends(UUID.randomUUID(), "/steps/1/done", "", "yesterday", pm.personId()))
                .hasStatusOk();
        assertThat(stepOne()).contains("8:30 am");
    }
}
