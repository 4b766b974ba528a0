package org.plumbrow.survey;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import org.junit.jupiter.api.Test;
import org.plumbrow.project.ProjectFacts;
import org.plumbrow.project.gate.AnswerKind;
import org.plumbrow.project.gate.Finding;
import org.plumbrow.survey.SurveyLook.Seen;

/** What the gate to surveyed says of the readings, with values and limits. */
class SurveyFindingsTest {

    private static final ProjectFacts HOME = CompletenessTest.HOME;

    private static Seen seen(SurveyPart part, Map<String, String> other) {
        SurveySheet sheet = CompletenessTest.sheet(Map.of(part, other));
        return new Seen(HOME, sheet, FactsReading.of(HOME.id(), sheet), Set.of(5), List.of());
    }

    private static String broken(Function<Seen, Finding> rule, SurveyPart part, String... fields) {
        Finding finding = rule.apply(seen(part, fields(fields)));
        assertThat(finding).isInstanceOf(Finding.Broken.class);
        return finding.sentence();
    }

    private static Map<String, String> fields(String... fields) {
        Map<String, String> typed = new java.util.HashMap<>();
        for (int i = 0; i < fields.length; i += 2) {
            typed.put(fields[i], fields[i + 1]);
        }
        return typed;
    }

    private static Finding service(Function<Seen, Finding> rule, String... fields) {
        return rule.apply(seen(SurveyPart.SERVICE, fields(fields)));
    }

    @Test
    void whatWasReadWithinItsLimitsIsRecorded() {
        assertThat(service(ServiceFindings::voltages))
                .isEqualTo(new Finding.Recorded(
                        "120/240 V, single phase, 3 wires: all 3 voltages lie within the limits of ANSI C84.1.",
                        Set.of(AnswerKind.READING)));
        assertThat(service(ServiceFindings::ratings))
                .isEqualTo(new Finding.Recorded(
                        "200 A main, 225 A busbar, 22 kA.", Set.of(AnswerKind.READING, AnswerKind.PHOTO)));
    }

    @Test
    void whatWasNotReadNobodyCanTell() {
        assertThat(service(ServiceFindings::faultCurrent)).isInstanceOf(Finding.CannotTell.class);
        assertThat(service(ServiceFindings::ratings, "bus_a", "")).isInstanceOf(Finding.CannotTell.class);
        assertThat(service(ServiceFindings::voltages, "v_AB", "")).isInstanceOf(Finding.CannotTell.class);
    }

    @Test
    void whatIsOutsideIsSaidWithValueAndLimit() {
        assertThat(broken(ServiceFindings::voltages, SurveyPart.SERVICE, "v_BN", "127.5"))
                .isEqualTo("Leg B to neutral: 127.5 V is outside 110 to 127 V.");
        assertThat(broken(ServiceFindings::ratings, SurveyPart.SERVICE, "fault_ka", "30"))
                .isEqualTo("The gear interrupts 22 kA, and 30 kA can flow there.");
        assertThat(broken(ServiceFindings::distances, SurveyPart.SERVICE, "disconnect_to_meter_ft", "14"))
                .isEqualTo("The disconnect would be 14 ft from the meter; the utility allows 10 ft.");
        assertThat(broken(SiteFindings::roofLife, SurveyPart.ROOF, "plane.1.life_years", "14"))
                .isEqualTo("Plane 1 of the roof lasts 14 more years; 15 are asked for.");
    }

    @Test
    void whatIsAgreedAndExplainedStands() {
        assertThat(service(
                                ServiceFindings::distances,
                                "disconnect_to_meter_ft",
                                "14",
                                "disconnect_to_meter_ft.twice",
                                "YES",
                                "disconnect_to_meter_ft.why",
                                "letter of the utility, March 1")
                        .sentence())
                .contains("letter of the utility");
        assertThat(SiteFindings.roofLife(seen(
                        SurveyPart.ROOF,
                        fields(
                                "plane.1.life_years",
                                "8",
                                "plane.1.life_years.twice",
                                "YES",
                                "plane.1.life_years.why",
                                "new covering in May"))))
                .isInstanceOf(Finding.Satisfied.class);
    }

    @Test
    void photosAndDrawingCountWhatIsMissing() {
        assertThat(service(SiteFindings::photos).sentence())
                .isEqualTo("17 photos are missing, the first is 1. House number or gate sign.");
        assertThat(service(SiteFindings::enoughToDraw).sentence())
                .isEqualTo("The designer still lacks 1 thing: Photos, 17 photos of 18.");
    }
}
