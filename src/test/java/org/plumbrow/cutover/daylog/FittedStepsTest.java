package org.plumbrow.cutover.daylog;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.plumbrow.calc.electrical.Service;
import org.plumbrow.calc.outage.OutageMinutes;
import org.plumbrow.calc.outage.OutageWork;
import org.plumbrow.cutover.CutoverWay;
import org.plumbrow.cutover.CutoverWay.Opening;

/** The steps of the day for each way of taking the power. */
class FittedStepsTest {

    private static final String DISCONNECT = "D1 AC disconnect (north wall)";

    private static List<LogStep> steps(Opening opening, String connection, String transfer, Service service) {
        CutoverWay way = new CutoverWay("B", opening, connection, List.of(DISCONNECT), transfer, service);
        return Procedure.of(way, !transfer.isEmpty(), OutageMinutes.of(OutageWork.tapOnly()));
    }

    private static LogStep step(List<LogStep> steps, String code) {
        return steps.stream()
                .filter(step -> step.code().equals(code))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void aTapBehindAMeterOfItsOwnHasTheMeterRemovedAndSetByANamedPerson() {
        List<LogStep> steps =
                steps(Opening.METER, "tap ahead of the main, meter base", "", Service.SINGLE_PHASE_120_240);
        assertThat(step(steps, "4").words()).isEqualTo("Utility removes the meter");
        assertThat(step(steps, "4").what()).contains(DISCONNECT).contains("covers its base");
        assertThat(step(steps, "4").named()).isEqualTo("who of the utility removes the meter");
        assertThat(step(steps, "10").words()).isEqualTo("Utility sets the meter");
        assertThat(step(steps, "10").named()).isEqualTo("who of the utility sets the meter");
        assertThat(step(steps, "5").what()).startsWith("Lock and tag the empty meter base, " + DISCONNECT);
        assertThat(step(steps, "7").what()).startsWith("Tap ahead of the main, meter base.");
        assertThat(step(steps, "H4").words()).isEqualTo("Voltage right");
        assertThat(step(steps, "10").what()).doesNotContain("rotation");
        assertThat(step(steps, "12").applies()).isFalse();
    }

    @Test
    void behindCurrentTransformersTheUtilityOpensAtTheTransformer() {
        List<LogStep> steps = steps(
                Opening.TRANSFORMER,
                "tap ahead of the main",
                "manual double-throw transfer switch (milk house)",
                Service.WYE_208_120);
        assertThat(step(steps, "4").words()).isEqualTo("Utility opens at the transformer");
        assertThat(step(steps, "10").words()).isEqualTo("Utility closes at the transformer");
        assertThat(step(steps, "10").what()).contains("every pair and the rotation");
        assertThat(step(steps, "10").named()).isNotNull();
        assertThat(step(steps, "H4").words()).isEqualTo("Voltage and rotation right");
        assertThat(step(steps, "3").what()).contains("manual double-throw transfer switch (milk house)");
        assertThat(step(steps, "5").what()).contains("generator path: manual double-throw transfer switch");
        assertThat(step(steps, "12").what()).contains("manual double-throw transfer switch");
    }

    @Test
    void aBreakerOnTheBusLeavesTheMeterAndTheWiresToTheMainLive() {
        List<LogStep> steps = steps(
                Opening.MAIN, "breaker at the far end of the bus, 60 A, main panel", "", Service.SINGLE_PHASE_120_240);
        assertThat(step(steps, "4").words()).isEqualTo("Main opened");
        assertThat(step(steps, "4").who()).isEqualTo("Electrician");
        assertThat(step(steps, "4").what()).contains("the wires from it to the main remain live");
        assertThat(step(steps, "6").what()).contains("The line side of the main stays live");
        assertThat(step(steps, "7").what()).startsWith("Breaker at the far end of the bus, 60 A");
        assertThat(step(steps, "10").words()).isEqualTo("Line side of the main read");
        assertThat(step(steps, "4").named()).isNull();
    }

    @Test
    void whereTheSurveyDoesNotSayWhatMeterItIsTheUtilityDecidesAndIsNamed() {
        List<LogStep> steps = steps(Opening.UTILITY, "tap ahead of the main", "", Service.WYE_480_277);
        assertThat(step(steps, "4").what()).contains("where it decides");
        assertThat(step(steps, "4").named()).isNotNull();
        assertThat(step(steps, "10").named()).isNotNull();
    }

    @Test
    void everyWayKeepsAllHoldPointsInTheirOrder() {
        List<String> general = Procedure.of(true, OutageMinutes.of(OutageWork.tapOnly())).stream()
                .map(LogStep::code)
                .toList();
        for (Opening opening : Opening.values()) {
            assertThat(steps(opening, "tap", "switch", Service.WYE_208_120))
                    .extracting(LogStep::code)
                    .isEqualTo(general);
        }
    }
}
