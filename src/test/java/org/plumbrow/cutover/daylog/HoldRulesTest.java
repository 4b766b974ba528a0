package org.plumbrow.cutover.daylog;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** Each hold point opens only when everything before it is done, read and within its limits. */
class HoldRulesTest {

    @ParameterizedTest
    @EnumSource(Hold.class)
    void aDayThatGoesWellOpensEachHoldPoint(Hold hold) {
        assertThat(LogScript.home().goesWellUpTo(stepBefore(hold, false)).against(hold))
                .isEmpty();
        assertThat(LogScript.farm().goesWellUpTo(stepBefore(hold, true)).against(hold))
                .isEmpty();
    }

    private static String stepBefore(Hold hold, boolean generator) {
        return switch (hold) {
            case H1 -> "3";
            case H2 -> "6";
            case H3 -> "8";
            case H4 -> "10";
            case H5 -> generator ? "12" : "11";
        };
    }

    @ParameterizedTest
    @CsvSource({"H1,2,Step 3", "H2,5,Step 6", "H3,7,Step 8", "H4,9,Step 10", "H5,H4,Step 11"})
    void aStepThatIsNotDoneKeepsItShutAndIsNamed(Hold hold, String last, String named) {
        assertThat(LogScript.home().goesWellUpTo(last).against(hold))
                .singleElement()
                .asString()
                .startsWith(named + " is not done yet");
    }

    @Test
    void noHoldPointIsJumped() {
        assertThat(LogScript.home().goesWellUpTo("6").against(Hold.H3))
                .contains("Hold point H2 is not signed: locked, tagged, tested: live, dead, live.");
    }

    @Test
    void bothSignaturesOfH1AreNeeded() {
        LogScript script = LogScript.home().goesWellUpTo("3");
        script.sign(Hold.H1, Hold.Part.PERSON_IN_CHARGE, "Tamsin");
        assertThat(script.state().unsigned(Hold.H1)).containsExactly(Hold.Part.CUSTOMER);
        assertThat(script.state().signedAt(Hold.H1)).isEmpty();
        script.sign(Hold.H1, Hold.Part.CUSTOMER, "Farm manager");
        assertThat(script.state().signedAt(Hold.H1)).isPresent();
    }

    @Test
    void onePersonCannotSignH1Twice() {
        LogScript script = LogScript.home().goesWellUpTo("3");
        script.sign(Hold.H1, Hold.Part.PERSON_IN_CHARGE, "Tamsin");
        HoldRules rules = new HoldRules(script.state(), script.readings());
        assertThat(rules.againstName(Hold.H1, Hold.Part.CUSTOMER, " tamsin ")).isPresent();
        assertThat(rules.againstName(Hold.H1, Hold.Part.CUSTOMER, "Farm manager"))
                .isEmpty();
    }

    @Test
    void whoDidTheWorkDoesNotCheckIt() {
        LogScript script = LogScript.home().goesWellUpTo("8");
        HoldRules rules = new HoldRules(script.state(), script.readings());
        assertThat(rules.againstName(Hold.H3, Hold.Part.SECOND_PERSON, "SIL"))
                .contains("SIL did the work and signed H2. Another qualified person checks it and signs here.");
        assertThat(rules.againstName(Hold.H3, Hold.Part.SECOND_PERSON, "Jory")).isEmpty();
    }

    @Test
    void h1NeedsTheLatestReversalTime() {
        LogScript script = LogScript.home();
        for (var pair : script.readings().service().pairs()) {
            script.read("2", pair.code(), pair.to().equals("N") ? "121" : "242");
        }
        script.done("1");
        script.done("2");
        script.done("3");
        assertThat(script.against(Hold.H1))
                .containsExactly(
                        "The latest reversal time is not set. The person in charge sets it and tells everybody.");
        script.reversal("2027-03-26T12:30");
        assertThat(script.against(Hold.H1)).isEmpty();
    }

    @Test
    void h1StopsAtAPossibleOpenNeutral() {
        LogScript script = LogScript.home().goesWellUpTo("3");
        script.read("2", "A-N", "131");
        script.read("2", "B-N", "109");
        assertThat(script.against(Hold.H1)).singleElement().asString().contains("the neutral may be open");
    }

    @ParameterizedTest
    @CsvSource({"2.0,true", "2.1,false"})
    void h2NeedsEveryPairDead(String volts, boolean opens) {
        LogScript script = LogScript.home().goesWellUpTo("6");
        script.read("6", "dead-A-G", volts);
        assertThat(script.against(Hold.H2).isEmpty()).isEqualTo(opens);
    }

    @ParameterizedTest
    @CsvSource({"90,true", "89.9,false"})
    void h2NeedsATesterThatIsProvedAfterwards(String volts, boolean opens) {
        LogScript script = LogScript.home().goesWellUpTo("6");
        script.read("6", Readings.LIVE_AFTER, volts);
        assertThat(script.against(Hold.H2).isEmpty()).isEqualTo(opens);
    }

    @ParameterizedTest
    @CsvSource({"1.0,true", "0.99,false"})
    void h3NeedsTheLeastInsulation(String megohms, boolean opens) {
        LogScript script = LogScript.home().goesWellUpTo("8");
        script.read("8", Readings.INSULATION, megohms);
        assertThat(script.against(Hold.H3).isEmpty()).isEqualTo(opens);
    }

    @Test
    void h4RefusesAVoltageOutsideRangeAThatWasInsideBefore() {
        LogScript script = LogScript.home().goesWellUpTo("10");
        script.read("10", "A-B", "252");
        assertThat(script.against(Hold.H4)).isEmpty();
        script.read("10", "A-B", "252.1");
        assertThat(script.against(Hold.H4)).singleElement().asString().endsWith("Open again and reverse.");
        script.read("2", "A-B", "252.1");
        assertThat(script.against(Hold.H4)).isEmpty();
    }

    @Test
    void h4RefusesAnotherRotation() {
        LogScript script = LogScript.farm().goesWellUpTo("10");
        script.read("10", Readings.ROTATION, "CBA");
        assertThat(script.against(Hold.H4))
                .containsExactly("The phases turn CBA; before the work they turned ABC. Open again and reverse.");
    }

    @Test
    void aReadingThatIsMissingIsNamed() {
        LogScript script = LogScript.home().goesWellUpTo("H3");
        script.done("9");
        script.read("10", "A-N", "121");
        script.read("10", "B-N", "121");
        script.done("10");
        assertThat(script.against(Hold.H4)).containsExactly("Step 10: \"Leg A to leg B\" is not read.");
    }

    @Test
    void aStepTakenBackShutsItAgain() {
        LogScript script = LogScript.home().goesWellUpTo("10");
        script.takeBack(script.state().of("9", EntryKind.DONE).get(0).entry());
        assertThat(script.against(Hold.H4)).singleElement().asString().startsWith("Step 9 is not done yet");
    }

    @Test
    void withoutAGeneratorStepTwelveDoesNotApply() {
        assertThat(LogScript.home().state().step("12").applies()).isFalse();
        assertThat(LogScript.home().state().step("12").whyNot()).isEqualTo("no generator here");
        assertThat(LogScript.farm().goesWellUpTo("11").against(Hold.H5))
                .singleElement()
                .asString()
                .startsWith("Step 12 is not done yet");
    }
}
