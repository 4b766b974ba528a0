package org.plumbrow.cutover.daylog;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowable;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.concurrent.Callable;
import java.util.concurrent.Executors;
import java.util.function.Supplier;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.plumbrow.PlumbrowTest;
import org.plumbrow.TestClock;
import org.plumbrow.TestWorld;
import org.plumbrow.calc.calendar.ClockWords;
import org.plumbrow.calc.electrical.Service;
import org.plumbrow.cutover.CutoverFixture;
import org.plumbrow.cutover.CutoverFixture.Ground;
import org.plumbrow.cutover.OutageFacts;
import org.plumbrow.cutover.OutageState;
import org.plumbrow.cutover.Outages;
import org.plumbrow.cutover.daylog.LogPen.Said;
import org.plumbrow.database.BranchWall;
import org.plumbrow.database.Ids;
import org.plumbrow.web.NotForYourRole;
import org.plumbrow.web.NotFound;
import org.plumbrow.web.Refusal;
import org.plumbrow.web.Visitor;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.dao.DataIntegrityViolationException;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.transaction.support.TransactionTemplate;

/** Writing the log of a day: what is kept, what is refused, who may, and what others then see. */
@PlumbrowTest
class DayLogBookTest {

    private static final Map<String, String> VOLTS = Map.of("A-N", "121", "B-N", "122", "A-B", "243");

    @Autowired
    TestWorld world;

    @Autowired
    TestClock clock;

    @Autowired
    CutoverFixture fixture;

    @Autowired
    DayLogBook book;

    @Autowired
    LogSteps steps;

    @Autowired
    LogHolds holds;

    @Autowired
    LogChanges changes;

    @Autowired
    LogReversal reversal;

    @Autowired
    LogRows rows;

    @Autowired
    Outages outages;

    @Autowired
    JdbcClient jdbc;

    @Autowired
    TransactionTemplate transaction;

    private Ground ground;
    private UUID project;

    @BeforeEach
    void aHomeWithItsOutage() {
        ground = fixture.ground();
        project = fixture.noticeGiven(ground, fixture.home(ground));
        clock.standAt("2027-03-26T12:00:00Z"); // 8:00 am
    }

    private <T> T asPm(Supplier<T> work) {
        return world.as(ground.branch().projectManager(), work);
    }

    private void open() {
        assertThat(asPm(() -> book.open(project, Service.SINGLE_PHASE_120_240, "Tamsin")))
                .isEmpty();
    }

    private LogState state() {
        return reading(() -> {
            DayLog log = rows.latest(project).orElseThrow();
            return new LogState(rows.steps(log.id()), rows.entries(log.id()));
        });
    }

    private DayLog log() {
        return reading(() -> rows.latest(project).orElseThrow());
    }

    private <T> T reading(Supplier<T> work) {
        return asPm(() -> transaction.execute(status -> work.get()));
    }

    private OutageFacts window() {
        return asPm(() -> outages.ofProject(project).get(0));
    }

    private Said done(String step, Map<String, String> typed, String... stays) {
        clock.pass(java.time.Duration.ofMinutes(5));
        Map<String, String> why = new HashMap<>();
        List.of(stays).forEach(quantity -> why.put(quantity, "the utility knows"));
        return asPm(() -> steps.done(project, new LogSteps.Work(Ids.next(), step, typed, why, null)));
    }

    private Said sign(Hold hold, Hold.Part part, String name) {
        return asPm(() -> holds.sign(project, new LogHolds.Signing(Ids.next(), hold, part, name, "their trade", null)));
    }

    private void setReversal() {
        assertThat(asPm(() -> reversal.latest(
                                project,
                                new LogReversal.Setting(Ids.next(), LocalTime.of(12, 30), null, null, null, "freezer")))
                        .isStored())
                .isTrue();
    }

    private static List<String> sentences(Said said) {
        return said.refusals().stream().map(Refusal::sentence).toList();
    }

    /** The whole legal road up to and with this step, five minutes each. */
    private void goesWellUpTo(String last) {
        open();
        setReversal();
        for (LogStep step : state().steps()) {
            if (step.applies()) {
                pass(step);
            }
            if (step.code().equals(last)) {
                return;
            }
        }
    }

    private void pass(LogStep step) {
        switch (step.code()) {
            case "H1" -> {
                stored(sign(Hold.H1, Hold.Part.PERSON_IN_CHARGE, "Tamsin"));
                stored(sign(Hold.H1, Hold.Part.CUSTOMER, "Perrin Ash"));
            }
            case "H2" -> stored(sign(Hold.H2, Hold.Part.ELECTRICIAN, "Sil"));
            case "H3" -> stored(sign(Hold.H3, Hold.Part.SECOND_PERSON, "Jory"));
            case "H4" -> stored(sign(Hold.H4, Hold.Part.ELECTRICIAN, "Sil"));
            case "H5" -> stored(sign(Hold.H5, Hold.Part.CUSTOMER, "Perrin Ash"));
            default -> stored(done(step.code(), usual(step.code())));
        }
    }

    private static void stored(Said said) {
        assertThat(sentences(said)).isEmpty();
    }

    private static Map<String, String> usual(String step) {
        Map<String, String> dead = new HashMap<>(Map.of("live-before", "121", "live-after", "121"));
        List.of("A-N", "B-N", "A-B", "A-G", "B-G").forEach(pair -> dead.put("dead-" + pair, "0"));
        return switch (step) {
            case "2", "10", "14" -> VOLTS;
            case "5" -> Map.of("locks", "3");
            case "6" -> dead;
            case "7" -> Map.of("lugs", "6", "torque", "275 in·lb, tool 14");
            case "8" -> Map.of("insulation", "550");
            case "13" -> Map.of("array", "LOCKED_OPEN");
            default -> Map.of();
        };
    }

    @Test
    void aDayThatGoesWellEndsTheOutageWithItsMinutes() {
        goesWellUpTo("14");
        assertThat(asPm(() -> book.close(project))).isEmpty();
        // Step 4 at 8:20, step 11 at 8:55, H5 in the same minute
        assertThat(window().state()).isEqualTo(OutageState.DONE);
        assertThat(window().actualMinutes()).contains(35);
        assertThat(log().outcome()).isEqualTo(DayLog.Outcome.DONE);
    }

    @Test
    void theLogOpensOnTheDayNotBefore() {
        clock.standAt("2027-03-25T20:00:00Z");
        assertThat(asPm(() -> book.open(project, Service.SINGLE_PHASE_120_240, "Tamsin")))
                .get()
                .extracting(Refusal::sentence)
                .isEqualTo("The log opens on the day of the outage. If the day has changed, move the window first.");
    }

    @Test
    void openingTwiceIsOneLog() {
        open();
        UUID first = log().id();
        open();
        assertThat(log().id()).isEqualTo(first);
    }

    @Test
    void noStepIsWrittenBehindAnUnsignedHoldPoint() {
        goesWellUpTo("3");
        assertThat(sentences(done("4", Map.of())))
                .containsExactly("Hold point H1 is not signed. Nobody goes on to step 4 without it.");
        assertThat(sentences(done("9", Map.of())))
                .containsExactly("Hold point H1 is not signed. Nobody goes on to step 9 without it.");
        assertThat(state().doneAt("4")).isEmpty();
    }

    @Test
    void aHoldPointIsNotPassedByATap() {
        goesWellUpTo("3");
        assertThat(sentences(done("H1", Map.of())))
                .containsExactly("Hold point H1 is passed by signatures, not by a tap.");
        assertThat(sentences(sign(Hold.H2, Hold.Part.ELECTRICIAN, "Sil")))
                .contains("Hold point H1 is not signed: ready to lose power.");
    }

    @Test
    void whoSignsHasANameAndATrade() {
        goesWellUpTo("3");
        Said said = asPm(() ->
                holds.sign(project, new LogHolds.Signing(Ids.next(), Hold.H1, Hold.Part.CUSTOMER, " ", "", null)));
        assertThat(said.refusals()).extracting(Refusal::field).containsExactly("name", "trade");
        stored(sign(Hold.H1, Hold.Part.CUSTOMER, "Perrin Ash"));
        assertThat(sentences(sign(Hold.H1, Hold.Part.CUSTOMER, "Perrin Ash"))).hasSize(1);
        assertThat(sentences(sign(Hold.H1, Hold.Part.ELECTRICIAN, "Sil"))).hasSize(1);
        assertThat(state().signedAt(Hold.H1)).isEmpty();
    }

    @Test
    void theStepThatDoesNotApplyIsNotWritten() {
        goesWellUpTo("11");
        assertThat(sentences(done("12", Map.of()))).containsExactly("Step 12 does not apply: no generator here.");
    }

    @Test
    void aReadingOutsideItsLimitsIsKeptAndAskedAboutUntilItIsReadTwice() {
        open();
        done("1", Map.of());
        Map<String, String> low = Map.of("A-N", "113", "B-N", "113", "A-B", "227");
        Said asked = done("2", low);
        assertThat(sentences(asked)).hasSize(3).first().asString().contains("It is kept. Read it again.");
        assertThat(state().value("2", "A-N")).contains("113");
        assertThat(state().doneAt("2")).isEmpty();
        Said again = done("2", low, "A-N", "B-N", "A-B");
        stored(again);
        assertThat(state().doneAt("2")).isPresent();
        assertThat(state().of("2", EntryKind.STAYS)).hasSize(3);
    }

    @Test
    void aNewValueIsAskedAboutAnewThoughTheOldOneWasToStay() {
        open();
        done("1", Map.of());
        done("2", Map.of("A-N", "113", "B-N", "121", "A-B", "240"));
        assertThat(sentences(done("2", Map.of("A-N", "112", "B-N", "121", "A-B", "240"), "A-N")))
                .hasSize(1);
        assertThat(state().doneAt("2")).isEmpty();
    }

    @Test
    void noExplanationMakesAVoltageOnADeadConductorGood() {
        goesWellUpTo("5");
        Map<String, String> live = new HashMap<>(usual("6"));
        live.put("dead-A-B", "48");
        done("6", live);
        assertThat(sentences(done("6", live, "dead-A-B")))
                .containsExactly(
                        "Leg A to leg B shows 48.0 V: voltage is present. Stop, and look for a second source.");
        assertThat(state().doneAt("6")).isEmpty();
        assertThat(state().of("6", EntryKind.STAYS)).isEmpty();
        stored(done("6", usual("6")));
    }

    @Test
    void anExplanationOfThreeHundredCharactersIsTheLongest() {
        open();
        done("1", Map.of());
        Map<String, String> low = Map.of("A-N", "113", "B-N", "121", "A-B", "240");
        done("2", low);
        assertThat(asPm(() -> steps.done(
                                project, new LogSteps.Work(Ids.next(), "2", low, Map.of("A-N", "x".repeat(301)), null)))
                        .isStored())
                .isFalse();
        assertThat(asPm(() -> steps.done(
                                project, new LogSteps.Work(Ids.next(), "2", low, Map.of("A-N", "x".repeat(300)), null)))
                        .isStored())
                .isTrue();
    }

    @Test
    void twoPhonesThatReadTheSameAtOnceKeepBothReadingsAndAreToldOfEachOther() {
        open();
        done("1", Map.of());
        done("2", Map.of("A-N", "121"));
        Map<String, String> seen = Map.of("A-N", "121", "B-N", "", "A-B", "");
        Said first = asPm(() -> steps.read(project, twoRead(Map.of("A-N", "121", "B-N", "122"), seen)));
        stored(first);
        Said second = asPm(() -> steps.done(project, twoRead(Map.of("A-N", "121", "B-N", "119", "A-B", "241"), seen)));
        assertThat(second.meanwhile()).isTrue();
        assertThat(sentences(second))
                .containsExactly("Leg B to neutral: Tamsin wrote 122 V at " + clockOf("2", "B-N")
                        + ", you 119 V. Both are kept. Read it again and send what is right.");
        assertThat(state().of("2", EntryKind.READING)).hasSize(4);
        assertThat(state().value("2", "A-B")).contains("241");
        assertThat(state().doneAt("2")).isEmpty();
    }

    @Test
    void whatOnlyRepeatsAnOlderReadingDoesNotReplaceTheNewerOne() {
        open();
        done("1", Map.of());
        done("2", Map.of("A-N", "121"));
        Map<String, String> seen = Map.of("A-N", "121", "B-N", "", "A-B", "");
        stored(asPm(() -> steps.read(project, twoRead(Map.of("A-N", "118"), seen))));
        stored(asPm(() -> steps.done(project, twoRead(Map.of("A-N", "121", "B-N", "122", "A-B", "240"), seen))));
        assertThat(state().value("2", "A-N")).contains("118");
    }

    private LogSteps.Work twoRead(Map<String, String> typed, Map<String, String> seen) {
        return new LogSteps.Work(Ids.next(), "2", typed, Map.of(), null, seen, "");
    }

    private String clockOf(String step, String quantity) {
        LogEntry first = state().of(step, EntryKind.READING).stream()
                .map(LogState.Effective::entry)
                .filter(entry -> quantity.equals(entry.quantity()))
                .findFirst()
                .orElseThrow();
        return ClockWords.of(
                first.storedAt().atZone(java.time.ZoneId.of("America/New_York")).toLocalTime());
    }

    @Test
    void theNightBehindALateStartBelongsToTheDay() {
        LogMoment late = new LogMoment(
                java.time.Instant.parse("2027-03-27T05:00:00Z"),
                java.time.LocalDateTime.of(2027, 3, 26, 23, 0),
                java.time.ZoneId.of("America/New_York"));
        assertThat(late.on(LocalTime.of(0, 15))).isEqualTo("2027-03-27T04:15:00Z");
        assertThat(late.on(LocalTime.of(22, 40))).isEqualTo("2027-03-27T02:40:00Z");
        assertThat(late.isLater()).isFalse();
    }

    @Test
    void aTapOnALaterDayNeedsItsTime() {
        clock.standAt("2027-03-29T14:00:00Z");
        open();
        assertThat(sentences(done("1", Map.of())))
                .containsExactly("This log tells of Fri, Mar 26. Write at what time it was.");
        assertThat(state().doneAt("1")).isEmpty();
    }

    @Test
    void theLeadOfTheCrewWritesAndTheLeadOfAnotherDoesNot() {
        open();
        LogSteps.Work tap = new LogSteps.Work(Ids.next(), "1", Map.of(), Map.of(), null);
        stored(world.as(ground.branch().crewLead(), () -> steps.done(project, tap)));
        Ground other = fixture.ground();
        UUID elsewhere = fixture.home(other);
        assertThatThrownBy(() -> world.as(
                        other.branch().crewLead(),
                        () -> steps.done(elsewhere, new LogSteps.Work(Ids.next(), "1", Map.of(), Map.of(), null))))
                .isInstanceOf(NotForYourRole.class);
    }

    @Test
    void aSecondSignatureForTheSamePartIsNotTakenAndTellsWhoSigned() {
        goesWellUpTo("6");
        stored(sign(Hold.H2, Hold.Part.ELECTRICIAN, "Sil"));
        Said second = sign(Hold.H2, Hold.Part.ELECTRICIAN, "Nell");
        assertThat(second.meanwhile()).isTrue();
        assertThat(sentences(second))
                .first()
                .asString()
                .startsWith("Sil has signed H2 as licensed electrician already");
    }

    @Test
    void anOutageThatWasMovedOnTheMorningIsNotLoggedAnyMore() {
        open();
        done("1", Map.of());
        BranchWall.everywhere(() -> transaction.executeWithoutResult(status -> jdbc.sql(
                        "update outage_window set state = 'CANCELLED', state_reason = 'Storm' where project_id = ?")
                .param(project)
                .update()));
        assertThat(sentences(done("2", VOLTS)))
                .containsExactly("This outage was moved or cancelled. Its log is not written any more.");
    }

    @Test
    void whoDidItIsKeptBesideWhoWroteIt() {
        open();
        stored(asPm(() -> steps.done(
                project, new LogSteps.Work(Ids.next(), "1", Map.of(), Map.of(), null, Map.of(), "Sil, electrician"))));
        LogState.Effective one = state().of("1", EntryKind.DONE).get(0);
        assertThat(one.value()).isEqualTo("Sil, electrician");
        assertThat(one.entry().byName()).isNotEqualTo("Sil, electrician");
    }

    @Test
    void whatIsNoValueIsRefusedAndNothingIsStored() {
        open();
        done("1", Map.of());
        assertThat(sentences(done("2", Map.of("A-N", "a hundred", "B-N", "122"))))
                .containsExactly("Leg A to neutral: write a number from 0 to 1000 V.");
        assertThat(state().value("2", "B-N")).isEmpty();
    }

    @Test
    void readingsCanBeSavedOneByOne() {
        open();
        done("1", Map.of());
        asPm(() -> steps.read(project, new LogSteps.Work(Ids.next(), "2", Map.of("A-N", "121"), Map.of(), null)));
        assertThat(state().value("2", "A-N")).contains("121");
        assertThat(sentences(done("2", Map.of("B-N", "122")))).containsExactly("Leg A to leg B: not read yet.");
        stored(done("2", Map.of("A-B", "243")));
    }

    @Test
    void aTimeIsCorrectedWithAReasonAndTheMinutesFollow() {
        goesWellUpTo("H5");
        LogEntry off = state().of("4", EntryKind.DONE).get(0).entry();
        Said without = asPm(() -> changes.correct(
                project, new LogChanges.Correction(Ids.next(), off.id(), LocalTime.of(8, 10), null, " ")));
        assertThat(without.refusals()).extracting(Refusal::field).containsExactly("reason");
        Said said = asPm(() -> changes.correct(
                project,
                new LogChanges.Correction(
                        Ids.next(), off.id(), LocalTime.of(8, 10), null, "by the clock in the barn")));
        stored(said);
        assertThat(window().actualMinutes()).contains(45);
        assertThat(state().entriesOf("4")).hasSize(2);
    }

    @Test
    void powerCannotBeBackBeforeItWentOff() {
        goesWellUpTo("H5");
        LogEntry signed = state().signatures(Hold.H5).get(0).entry();
        Said said = asPm(() -> changes.correct(
                project, new LogChanges.Correction(Ids.next(), signed.id(), LocalTime.of(8, 1), null, "typed wrong")));
        assertThat(sentences(said)).containsExactly("The power would be back (8:01 am) before it went off (8:20 am).");
    }

    @Test
    void aTimeToComeIsNotLogged() {
        open();
        Said said = asPm(
                () -> steps.done(project, new LogSteps.Work(Ids.next(), "1", Map.of(), Map.of(), LocalTime.of(9, 0))));
        assertThat(sentences(said)).containsExactly("9:00 am is still to come. Write a time that has passed.");
    }

    @Test
    void aTapIsTakenBackUntilAHoldPointStandsOnIt() {
        goesWellUpTo("5");
        LogEntry five = state().of("5", EntryKind.DONE).get(0).entry();
        stored(asPm(() -> changes.takeBack(project, Ids.next(), five.id(), "one lock missing")));
        assertThat(state().doneAt("5")).isEmpty();
        LogEntry three = state().of("3", EntryKind.DONE).get(0).entry();
        assertThat(sentences(asPm(() -> changes.takeBack(project, Ids.next(), three.id(), "too early"))))
                .containsExactly(
                        "Hold point H1 is signed: people have relied on this step. Correct its time, or reverse.");
    }

    @Test
    void theSameEntrySentTwiceIsStoredOnce() {
        open();
        UUID id = Ids.next();
        LogSteps.Work work = new LogSteps.Work(id, "1", Map.of(), Map.of(), null);
        stored(asPm(() -> steps.done(project, work)));
        stored(asPm(() -> steps.done(project, work)));
        assertThat(state().of("1", EntryKind.DONE)).hasSize(1);
    }

    @Test
    void twoPhonesThatLogTheSameStepAtOnceKeepBothEntries() throws Exception {
        open();
        Visitor lead = ground.branch().manager();
        Callable<Boolean> tap = () -> world.as(
                lead,
                () -> steps.done(project, new LogSteps.Work(Ids.next(), "1", Map.of(), Map.of(), null))
                        .isStored());
        var pool = Executors.newFixedThreadPool(2);
        try {
            for (var one : pool.invokeAll(List.of(tap, tap))) {
                assertThat(one.get()).isTrue();
            }
        } finally {
            pool.shutdown();
        }
        assertThat(state().of("1", EntryKind.DONE))
                .extracting(one -> one.entry().number())
                .doesNotHaveDuplicates()
                .hasSize(2);
    }

    @Test
    void aReversedDayIsOverAndAnotherWindowIsToBeFound() {
        goesWellUpTo("7");
        stored(asPm(() -> reversal.reverse(project, Ids.next())));
        assertThat(sentences(done("8", Map.of("insulation", "550"))))
                .containsExactly("The work is being reversed. Say when the power is back on.");
        assertThat(asPm(() -> book.close(project)))
                .get()
                .extracting(Refusal::sentence)
                .isEqualTo("Say first when the power was back on.");
        clock.pass(java.time.Duration.ofMinutes(20));
        lineSideRead(VOLTS);
        stored(asPm(() -> reversal.powerOn(project, Ids.next(), null)));
        assertThat(asPm(() -> book.close(project)))
                .get()
                .extracting(Refusal::sentence)
                .isEqualTo("Write first why it was reversed.");
        stored(asPm(() -> reversal.reason(project, Ids.next(), "A bolt sheared.")));
        assertThat(asPm(() -> book.close(project))).isEmpty();
        assertThat(window().state()).isEqualTo(OutageState.CANCELLED);
        assertThat(window().stateReason()).isEqualTo("Reversed on the day: A bolt sheared.");
        assertThat(window().actualMinutes()).isPresent();
        assertThat(asPm(() -> outages.live(project))).isEmpty();
    }

    @Test
    void whatWasBegunByMistakeLeavesNoReasonBehindAndCannotBeTakenBackOnceThePowerIsBack() {
        goesWellUpTo("7");
        stored(asPm(() -> reversal.reverse(project, Ids.next())));
        stored(asPm(() -> reversal.reason(project, Ids.next(), "A bolt sheared.")));
        stored(asPm(() -> reversal.begunByMistake(project, Ids.next(), "Hit by the glove")));
        stored(done("8", Map.of("insulation", "550")));
        stored(asPm(() -> reversal.reverse(project, Ids.next())));
        assertThat(state().reverseReason()).isEmpty();
        lineSideRead(VOLTS);
        stored(asPm(() -> reversal.powerOn(project, Ids.next(), null)));
        assertThat(sentences(asPm(() -> reversal.begunByMistake(project, Ids.next(), "no"))))
                .containsExactly(LogReversal.POWER_IS_BACK);
        LogEntry standing = state().of(EntryKind.REVERSE).get(0).entry();
        assertThat(sentences(asPm(() -> changes.takeBack(project, Ids.next(), standing.id(), "no"))))
                .containsExactly(LogReversal.POWER_IS_BACK);
    }

    private void lineSideRead(Map<String, String> volts) {
        stored(asPm(() -> steps.read(project, new LogSteps.Work(Ids.next(), "10", volts, Map.of(), null))));
    }

    private List<String> againstPower() {
        return sentences(asPm(() -> reversal.powerOn(project, Ids.next(), null)));
    }

    /** 126 V is the end of Range A of 120 V, as before; 127 lies outside it. */
    @Test
    void noLoadReturnsBeforeTheLineSideIsReadAndHoldsItsLimits() {
        goesWellUpTo("7");
        stored(asPm(() -> reversal.reverse(project, Ids.next())));
        assertThat(againstPower()).hasSize(3).allMatch(no -> no.endsWith("not read since the reversal began."));
        lineSideRead(Map.of("A-N", "127", "B-N", "122", "A-B", "243"));
        assertThat(againstPower())
                .singleElement()
                .asString()
                .endsWith("Before the work it lay inside. The loads stay off: the utility opens again.");
        assertThat(state().powerOnAt()).isEmpty();
        lineSideRead(Map.of("A-N", "126", "B-N", "122", "A-B", "248"));
        stored(asPm(() -> reversal.powerOn(project, Ids.next(), null)));
    }

    @Test
    void whatWasReadBeforeTheReversalDoesNotCountForTheWayBack() {
        goesWellUpTo("10");
        assertThat(state().value("10", "A-N")).isPresent();
        stored(asPm(() -> reversal.reverse(project, Ids.next())));
        assertThat(state().value("10", "A-N")).isEmpty();
        assertThat(againstPower()).hasSize(3);
        lineSideRead(VOLTS);
        assertThat(state().of("10", EntryKind.READING)).hasSize(6);
        stored(asPm(() -> reversal.powerOn(project, Ids.next(), null)));
    }

    @Test
    void nothingIsReversedWhileThePowerIsOn() {
        goesWellUpTo("3");
        assertThat(sentences(asPm(() -> reversal.reverse(project, Ids.next()))))
                .containsExactly(
                        "The power is not off: there is nothing to reverse. Move or cancel the window instead.");
    }

    @Test
    void theLatestReversalDoesNotPrecedeTheStart() {
        open();
        Said said = asPm(() -> reversal.latest(
                project, new LogReversal.Setting(Ids.next(), LocalTime.of(9, 44), null, null, null, "chicks")));
        assertThat(sentences(said))
                .containsExactly(
                        "The latest reversal (8:59 am) lies before the start (9:00 am). Not possible without a generator.");
        stored(asPm(() -> reversal.latest(
                project, new LogReversal.Setting(Ids.next(), LocalTime.of(9, 45), null, null, null, "chicks"))));
    }

    @Test
    void aClosedLogTakesCorrectionsOnly() {
        goesWellUpTo("14");
        asPm(() -> book.close(project));
        assertThat(sentences(done("14", Map.of())))
                .containsExactly("This log is closed. What is wrong in it can be corrected, with a reason.");
        LogEntry last = state().of("14", EntryKind.DONE).get(0).entry();
        stored(asPm(() -> changes.correct(
                project, new LogChanges.Correction(Ids.next(), last.id(), LocalTime.of(8, 50), null, "clock"))));
    }

    @Test
    void aLogIsNotClosedBeforeEverythingIsDone() {
        goesWellUpTo("H5");
        assertThat(asPm(() -> book.close(project)))
                .get()
                .extracting(Refusal::sentence)
                .isEqualTo("Step 13 is not done yet: array.");
    }

    @Test
    void aDesignerDoesNotWriteAndAnotherBranchDoesNotSeeIt() {
        open();
        LogSteps.Work work = new LogSteps.Work(Ids.next(), "1", Map.of(), Map.of(), null);
        assertThatThrownBy(() -> world.as(ground.branch().designer(), () -> steps.done(project, work)))
                .isInstanceOf(NotForYourRole.class);
        assertThatThrownBy(() -> world.as(world.branch().projectManager(), () -> steps.done(project, work)))
                .isInstanceOf(NotFound.class);
    }

    @Test
    void theJournalTellsOfTheDayWithoutTheCustomersName() {
        goesWellUpTo("H1");
        List<String> lines = BranchWall.everywhere(() -> transaction.execute(status -> jdbc.sql(
                        "select sentence from project_journal where project_id = ? and kind like 'daylog.%' order by number")
                .param(project)
                .query(String.class)
                .list()));
        assertThat(lines)
                .contains(
                        "Day log opened.",
                        "Day log: step 1 (Brief everybody) is done, 8:05 am.",
                        "Day log: hold point H1 is signed by the customer, or who decides for the farm or home, 8:15 am.")
                .noneMatch(line -> line.contains("Perrin"));
    }

    @Test
    void entriesAreOnlyEverAdded() {
        goesWellUpTo("H1");
        for (String breach : List.of(
                "update day_log_entry set happened_at = now()",
                "delete from day_log_entry",
                "update day_log_signature set name = 'Somebody else'",
                "delete from day_log_signature",
                "update day_log_step set why_not = 'not today'",
                "truncate day_log_entry cascade")) {
            assertThat(catchThrowable(() -> BranchWall.everywhere(() -> transaction.executeWithoutResult(
                            status -> jdbc.sql(breach).update()))))
                    .as(breach)
                    .isInstanceOf(DataIntegrityViolationException.class);
        }
    }

    @Test
    void theDayIsTheWindowsDayAlsoWhenItIsWrittenUpLater() {
        clock.standAt("2027-03-29T14:00:00Z");
        open();
        stored(asPm(() ->
                steps.done(project, new LogSteps.Work(Ids.next(), "1", Map.of(), Map.of(), LocalTime.of(8, 20)))));
        assertThat(LocalDate.ofInstant(
                        state().doneAt("1").orElseThrow(),
                        ground.branch()
                                .projectManager()
                                .branch(ground.branch().id())
                                .orElseThrow()
                                .zone()))
                .isEqualTo(CutoverFixture.FRIDAY_26);
    }
}
