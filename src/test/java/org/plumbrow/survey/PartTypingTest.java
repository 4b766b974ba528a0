package org.plumbrow.survey;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.plumbrow.web.Refusal;

/** What a person types into a part, and what is asked about it. */
class PartTypingTest {

    private static PartTyping.Read read(SurveyPart part, String... fields) {
        Map<String, String> typed = new HashMap<>();
        for (int i = 0; i < fields.length; i += 2) {
            typed.put(fields[i], fields[i + 1]);
        }
        return PartTyping.read(part, typed, PartReadings.EMPTY);
    }

    private static List<String> asked(SurveyPart part, String... fields) {
        return Asks.open(part, read(part, fields).readings(), 10).stream()
                .map(Asks.Ask::sentence)
                .toList();
    }

    @Test
    void aUnitBehindAndACommaWithinAreUnderstood() {
        PartReadings read = read(SurveyPart.SERVICE, "v_AN", "121.0 V", "inverter_to_poi_ft", "1,250")
                .readings();
        assertThat(read.number("v_AN")).isEqualTo(121.0);
        assertThat(read.number("inverter_to_poi_ft")).isEqualTo(1250.0);
    }

    @Test
    void aReadingOutsideItsLimitsIsKeptAndAskedAbout() {
        PartTyping.Read read = read(SurveyPart.ROOF, "plane.1.pitch_deg", "65");
        assertThat(read.refusals()).isEmpty();
        assertThat(read.readings().number("plane.1.pitch_deg")).isEqualTo(65);
        assertThat(asked(SurveyPart.ROOF, "plane.1.pitch_deg", "65"))
                .containsExactly("Plane 1, pitch: 65 degrees is outside 0 to 60 degrees. It is kept. "
                        + "Read it again; if it stays, say why.");
        assertThat(asked(SurveyPart.ROOF, "plane.1.pitch_deg", "60")).isEmpty();
    }

    @Test
    void whatWasReadTwiceAndExplainedStays() {
        assertThat(asked(
                        SurveyPart.ROOF,
                        "plane.1.pitch_deg",
                        "65",
                        "plane.1.pitch_deg.twice",
                        "YES",
                        "plane.1.pitch_deg.why",
                        "mansard"))
                .isEmpty();
        assertThat(asked(SurveyPart.ROOF, "plane.1.pitch_deg", "65", "plane.1.pitch_deg.why", "mansard"))
                .hasSize(1);
    }

    @Test
    void anotherReadingIsAskedAboutAnew() {
        Map<String, String> typed =
                new HashMap<>(Map.of("gate_ft", "6", "gate_ft.twice", "YES", "gate_ft.why", "old gate"));
        PartReadings before =
                PartTyping.read(SurveyPart.ACCESS, typed, PartReadings.EMPTY).readings();
        typed.put("gate_ft", "5");
        PartReadings after = PartTyping.read(SurveyPart.ACCESS, typed, before).readings();
        assertThat(Asks.open(SurveyPart.ACCESS, before, 10)).isEmpty();
        assertThat(Asks.open(SurveyPart.ACCESS, after, 10)).hasSize(1);
    }

    @Test
    void onlyWhatIsNoValueIsRefused() {
        assertThat(read(SurveyPart.SERVICE, "main_a", "two hundred", "v_AN", "-3", "free_spaces", "2.5", "type", "X")
                        .refusals())
                .extracting(Refusal::sentence)
                .containsExactly(
                        "Service type: choose one of the list.",
                        "Leg A to neutral: “-3” is no reading. Write a number from 0 to 1000 V.",
                        "Main device rating: “two hundred” is no reading. Write a number from 0 to 1000000 A.",
                        "Free breaker spaces: “2.5” is no reading. Write a whole number from 0 to 1000000.");
        assertThat(read(SurveyPart.CLOSE, "surveyed_on", "13/32/2026").refusals())
                .extracting(Refusal::field)
                .containsExactly("surveyed_on");
        assertThat(read(SurveyPart.SERVICE, "main_a", "1e99", "bus_a", "NaN").refusals())
                .hasSize(2);
    }

    @Test
    void aVoltageOutsideBothRangesIsAskedAboutAndOneInTheWideRangeIsOnlySaid() {
        String[] outside = {"type", "SINGLE_PHASE_120_240", "v_AN", "121", "v_BN", "129.5", "v_AB", "246"};
        assertThat(asked(SurveyPart.SERVICE, outside))
                .containsExactly("Leg B to neutral: 129.5 V is outside 110 to 127 V. It is kept. Read it again; "
                        + "if it stays, call the utility before design, and say what they answered.");
        PartReadings wide = read(SurveyPart.SERVICE, "type", "SINGLE_PHASE_120_240", "v_AN", "112")
                .readings();
        assertThat(Asks.of(SurveyPart.SERVICE, wide, 10)).isEmpty();
        assertThat(Asks.remarks(wide))
                .containsExactly("Leg A to neutral: 112.0 V is outside 114 to 126 V, within the wider 110 to 127 V.");
    }

    @Test
    void legsThatDifferMayMeanAnOpenNeutral() {
        assertThat(asked(
                        SurveyPart.SERVICE,
                        "type",
                        "SINGLE_PHASE_120_240",
                        "v_AN",
                        "111",
                        "v_BN",
                        "126",
                        "v_AB",
                        "237"))
                .containsExactly(
                        "The legs differ by 15 V: the neutral may be open. Stop, and call the utility at once.");
    }

    @Test
    void aDisconnectFarFromTheMeterAndWeakGearAreAskedAbout() {
        assertThat(asked(SurveyPart.SERVICE, "disconnect_to_meter_ft", "14"))
                .containsExactly("The disconnect would be 14 ft from the meter; the utility allows 10 ft. "
                        + "Move it, or say by whom it is agreed in writing.");
        assertThat(asked(SurveyPart.SERVICE, "disconnect_to_meter_ft", "10")).isEmpty();
        PartReadings far =
                read(SurveyPart.SERVICE, "disconnect_to_meter_ft", "14").readings();
        assertThat(Asks.open(SurveyPart.SERVICE, far, 30)).isEmpty();
        assertThat(asked(SurveyPart.SERVICE, "interrupting_ka", "10", "fault_ka", "14.2"))
                .containsExactly("The gear interrupts 10 kA, and 14.2 kA can flow there. Read the label again; "
                        + "if it stays, the designer must know.");
    }

    @Test
    void noTwoFieldsOfAPartHaveOneName() {
        for (SurveyPart part : SurveyPart.values()) {
            assertThat(part.fields()).extracting(SurveyField::name).doesNotHaveDuplicates();
        }
    }
}
