package org.plumbrow.cutover.daylog;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.plumbrow.calc.electrical.Service;

/** What is kept, what is kept and asked about, and what is no reading at all. */
class ReadingsTest {

    private static final Readings HOME = new Readings(Service.SINGLE_PHASE_120_240, false, false);
    private static final Readings DAIRY = new Readings(Service.WYE_208_120, true, true);

    private static Asked asked(Readings readings, String step, String quantity) {
        return readings.of(step).stream()
                .filter(one -> one.quantity().equals(quantity))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void onePhaseHasNoRotationAndThreePhasesDo() {
        assertThat(HOME.of("10")).extracting(Asked::quantity).containsExactly("A-N", "B-N", "A-B");
        assertThat(DAIRY.of("10"))
                .extracting(Asked::quantity)
                .containsExactly("A-N", "B-N", "C-N", "A-B", "A-C", "B-C", "rotation");
    }

    @Test
    void absenceOfVoltageIsProvedOnEveryPairAndToGround() {
        assertThat(HOME.of("6"))
                .extracting(Asked::quantity)
                .containsExactly(
                        "live-before", "dead-A-N", "dead-B-N", "dead-A-B", "dead-A-G", "dead-B-G", "live-after");
        assertThat(DAIRY.of("6")).hasSize(11);
    }

    @ParameterizedTest
    @CsvSource({"114,false", "113.9,true", "126,false", "126.1,true"})
    void outsideRangeAIsKeptAndAskedAbout(String volts, boolean askedAbout) {
        Asked leg = asked(HOME, "2", "B-N");
        assertThat(leg.refuse(volts)).isEmpty();
        assertThat(leg.ask(leg.kept(volts)).isPresent()).isEqualTo(askedAbout);
    }

    @Test
    void theQuestionSaysTheReadingTheLimitsAndWhatToDo() {
        Asked leg = asked(HOME, "2", "B-N");
        assertThat(leg.ask("131"))
                .contains(
                        "Leg B to neutral: 131.0 V is outside 110 to 127 V. It is kept. Read it again. If it stays, call the utility before step 4.");
    }

    @ParameterizedTest
    @CsvSource({"121,", "'121.5 V',", "0,", "1000,", "-1,x", "1000.1,x", "one,x", "'12 1 3',x"})
    void whatIsNoReadingIsRefusedInWords(String typed, String refused) {
        assertThat(asked(HOME, "2", "A-N").refuse(typed).isPresent()).isEqualTo(refused != null);
        if (refused != null) {
            assertThat(asked(HOME, "2", "A-N").refuse(typed))
                    .contains("Leg A to neutral: write a number from 0 to 1000 V.");
        }
    }

    @Test
    void aUnitBehindTheNumberIsUnderstood() {
        assertThat(asked(HOME, "2", "A-N").kept("121.5 V")).isEqualTo("121.5");
        assertThat(asked(HOME, "8", "insulation").kept("1,250")).isEqualTo("1250");
    }

    @Test
    void wholeThingsAreCountedWhole() {
        assertThat(asked(HOME, "7", "lugs").refuse("8")).isEmpty();
        assertThat(asked(HOME, "7", "lugs").refuse("8.5"))
                .contains("Lugs torqued and marked: write a whole number from 1 to 500 lugs.");
    }

    @Test
    void aChoiceIsOneOfTheList() {
        assertThat(asked(DAIRY, "2", "rotation").refuse("CBA")).isEmpty();
        assertThat(asked(DAIRY, "2", "rotation").refuse("BAC")).contains("Phase rotation: choose one of the list.");
    }

    @ParameterizedTest
    @CsvSource({"100,false", "99.9,true"})
    void insulationBelowAcceptanceIsAskedAbout(String megohms, boolean askedAbout) {
        assertThat(asked(HOME, "8", "insulation").ask(megohms).isPresent()).isEqualTo(askedAbout);
    }

    @ParameterizedTest
    @CsvSource({"45,false", "45.1,true"})
    void warmMilkIsAskedAboutWhereThereIsMilk(String degrees, boolean askedAbout) {
        assertThat(asked(DAIRY, "11", "tank-f").ask(degrees).isPresent()).isEqualTo(askedAbout);
        assertThat(HOME.of("11")).isEmpty();
    }

    @Test
    void aGeneratorIsWatchedForFiveMinutes() {
        assertThat(asked(DAIRY, "3", "generator-min").ask("4")).isPresent();
        assertThat(asked(DAIRY, "3", "generator-min").ask("5")).isEmpty();
        assertThat(HOME.of("3")).isEmpty();
    }
}
