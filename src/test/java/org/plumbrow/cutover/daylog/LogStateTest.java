package org.plumbrow.cutover.daylog;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** What a log says: order, corrections, two phones, the clock of the outage. */
class LogStateTest {

    @Test
    void theProcedureHasFourteenStepsAndFiveHoldPoints() {
        LogState state = LogScript.farm().state();
        assertThat(state.steps().stream().filter(step -> !step.hold())).hasSize(14);
        assertThat(state.steps().stream().filter(LogStep::hold))
                .extracting(LogStep::code)
                .containsExactly("H1", "H2", "H3", "H4", "H5");
    }

    @Test
    void thePlannedMinutesWithoutPowerAreThoseOfTheOutage() {
        int stepsFourToEleven = LogScript.home().state().steps().stream()
                .filter(step ->
                        !step.hold() && Integer.parseInt(step.code()) >= 4 && Integer.parseInt(step.code()) <= 11)
                .mapToInt(LogStep::typicalMinutes)
                .sum();
        assertThat(stepsFourToEleven).isEqualTo(75);
    }

    @Test
    void oneStandsAtTheFirstStepThatIsNotDone() {
        assertThat(LogScript.home().state().current().orElseThrow().code()).isEqualTo("1");
        assertThat(LogScript.home()
                        .goesWellUpTo("3")
                        .state()
                        .current()
                        .orElseThrow()
                        .code())
                .isEqualTo("H1");
        assertThat(LogScript.home()
                        .goesWellUpTo("11")
                        .state()
                        .current()
                        .orElseThrow()
                        .code())
                .isEqualTo("H5");
        assertThat(LogScript.home().goesWellUpTo("14").state().current()).isEmpty();
    }

    @Test
    void theClockRunsFromStepFourToTheCustomersSignature() {
        LogScript script = LogScript.home().goesWellUpTo("11");
        assertThat(script.state().outageMinutes()).isEmpty();
        script.sign(Hold.H5, Hold.Part.CUSTOMER, "Farm manager");
        LogState state = script.state();
        assertThat(state.powerOffAt()).isEqualTo(state.doneAt("4"));
        assertThat(state.powerOnAt()).isEqualTo(state.signedAt(Hold.H5));
        LogEntry off = state.of("4", EntryKind.DONE).get(0).entry();
        script.correct(off, Instant.parse("2027-03-26T13:00:59Z"), null);
        LogEntry signed = state.signatures(Hold.H5).get(0).entry();
        script.correct(signed, Instant.parse("2027-03-26T14:22:01Z"), null);
        assertThat(script.state().outageMinutes()).hasValue(82);
    }

    @Test
    void aCorrectionCountsAndBothStay() {
        LogScript script = LogScript.home().goesWellUpTo("4");
        LogEntry off = script.state().of("4", EntryKind.DONE).get(0).entry();
        Instant earlier = off.happenedAt().minusSeconds(300);
        script.correct(off, earlier, null);
        assertThat(script.state().powerOffAt()).contains(earlier);
        assertThat(script.state().entriesOf("4")).hasSize(2);
        assertThat(script.state().changesOf(off.id())).hasSize(1);
    }

    @Test
    void aReadingIsCorrectedByItsValue() {
        LogScript script = LogScript.home();
        LogEntry read = script.read("2", "A-N", "211");
        script.correct(read, read.happenedAt(), "121");
        assertThat(script.state().value("2", "A-N")).contains("121");
    }

    @Test
    void twoPhonesThatLogTheSameStepKeepBothAndTheFirstCounts() {
        LogScript script = LogScript.home();
        LogEntry first = script.done("1");
        script.done("1");
        assertThat(script.state().of("1", EntryKind.DONE)).hasSize(2);
        assertThat(script.state().doneAt("1")).contains(first.happenedAt());
    }

    @Test
    void afterAReversalTheClockStopsWhenThePowerIsBack() {
        LogScript script = LogScript.home().goesWellUpTo("7");
        script.reverse("7");
        assertThat(script.state().powerOnAt()).isEmpty();
        LogEntry on = script.powerOn("7");
        assertThat(script.state().powerOnAt()).contains(on.happenedAt());
        assertThat(script.state().outageMinutes()).isPresent();
    }

    @Test
    void theLatestReversalIsSaidWithItsReason() {
        LogScript script = LogScript.home();
        script.reversal("2027-03-26T12:30");
        ReversalTime reversal = script.state().reversal().orElseThrow();
        assertThat(reversal.latest().decideBy()).isEqualTo("2027-03-26T11:45");
        assertThat(reversal.why()).isEqualTo("milking");
    }

    @Test
    void theTextsNeverCallAnythingSafe() {
        Set<String> texts = LogScript.farm().state().steps().stream()
                .map(step -> step.words() + " " + step.what())
                .collect(Collectors.toSet());
        assertThat(texts)
                .noneMatch(text -> text.toLowerCase(java.util.Locale.ROOT).matches(".*\\bsafe\\b.*"));
    }
}
