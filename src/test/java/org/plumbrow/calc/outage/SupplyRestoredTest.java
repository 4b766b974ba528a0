package org.plumbrow.calc.outage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.plumbrow.calc.electrical.Service.SINGLE_PHASE_120_240;
import static org.plumbrow.calc.electrical.Service.WYE_208_120;

import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.plumbrow.calc.outage.SupplyRestored.Reading;

/** Hold point H4 at each of its edges. */
class SupplyRestoredTest {

    private static Reading home(double a, double b, double ab) {
        return new Reading(Map.of("A-N", a, "B-N", b, "A-B", ab), Optional.empty());
    }

    private static Reading wye(double each, double lineToLine, String rotation) {
        return new Reading(
                Map.of("A-N", each, "B-N", each, "C-N", each, "A-B", lineToLine, "A-C", lineToLine, "B-C", lineToLine),
                Optional.of(rotation));
    }

    @Test
    void voltagesInsideRangeAAreRight() {
        assertThat(SupplyRestored.judge(SINGLE_PHASE_120_240, home(121, 122, 243), home(114, 126, 240))
                        .refusals())
                .containsExactly(
                        "The legs differ by 12 V: the neutral may be open. Stop, and call the utility at once.");
        assertThat(SupplyRestored.judge(SINGLE_PHASE_120_240, home(121, 122, 243), home(121, 121, 252))
                        .isRight())
                .isTrue();
    }

    @Test
    void outsideRangeAWhereItWasInsideIsRefused() {
        var judged = SupplyRestored.judge(SINGLE_PHASE_120_240, home(121, 122, 243), home(127, 126, 252.1));
        assertThat(judged.refusals())
                .containsExactly(
                        "Leg A to neutral: 127.0 V is outside 114 to 126 V, within the wider 110 to 127 V. Before the work it lay inside.",
                        "Leg A to leg B: 252.1 V is outside 228 to 252 V, within the wider 220 to 254 V. Before the work it lay inside.");
    }

    @Test
    void outsideRangeAWhereItWasSoBeforeIsARemark() {
        var judged = SupplyRestored.judge(SINGLE_PHASE_120_240, home(126.5, 126, 252), home(127, 126, 252));
        assertThat(judged.isRight()).isTrue();
        assertThat(judged.remarks()).hasSize(1).first().asString().endsWith("It did before.");
    }

    @Test
    void outsideRangeBIsRefusedEvenIfItWasSoBefore() {
        var judged = SupplyRestored.judge(SINGLE_PHASE_120_240, home(128, 126, 252), home(127.1, 126, 252));
        assertThat(judged.isRight()).isFalse();
    }

    @Test
    void threePhasesMustTurnAsBefore() {
        assertThat(SupplyRestored.judge(WYE_208_120, wye(120, 208, "ABC"), wye(120, 208, "ABC"))
                        .isRight())
                .isTrue();
        assertThat(SupplyRestored.judge(WYE_208_120, wye(120, 208, "ABC"), wye(120, 208, "CBA"))
                        .refusals())
                .containsExactly("The phases turn CBA; before the work they turned ABC.");
    }

    @Test
    void aPairOrARotationNotReadIsNamed() {
        var judged = SupplyRestored.judge(
                WYE_208_120,
                wye(120, 208, "ABC"),
                new Reading(
                        Map.of("A-N", 120.0, "B-N", 120.0, "C-N", 120.0, "A-B", 208.0, "A-C", 208.0),
                        Optional.empty()));
        assertThat(judged.isRight()).isFalse();
        assertThat(judged.missing()).containsExactly("Leg B to leg C", "Phase rotation, before and after");
    }
}
