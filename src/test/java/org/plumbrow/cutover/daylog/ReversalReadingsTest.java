package org.plumbrow.cutover.daylog;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.plumbrow.calc.electrical.Service;

/** What a phone holds a reading of the way back against; ranges of 120/240 V as the trade's table has them. */
class ReversalReadingsTest {

    private static final Readings HOME = new Readings(Service.SINGLE_PHASE_120_240, false, false);

    private static ReversalReadings.Limits limits(LogScript script, String quantity) {
        Asked asked = HOME.of("10").stream()
                .filter(one -> one.quantity().equals(quantity))
                .findFirst()
                .orElseThrow();
        return new ReversalReadings(script.state(), HOME).limits(asked);
    }

    @Test
    void aPairThatLayInsideHasToLieInsideAgain() {
        LogScript script = LogScript.home();
        script.read("2", "A-N", "121");
        assertThat(limits(script, "A-N").least()).contains(114.0);
        assertThat(limits(script, "A-N").most()).contains(126.0);
    }

    @Test
    void aPairThatLayOutsideOrThatNobodyReadIsHeldAgainstTheWiderRange() {
        LogScript script = LogScript.home();
        script.read("2", "A-N", "113");
        assertThat(limits(script, "A-N").least()).contains(110.0);
        assertThat(limits(script, "B-N").most()).contains(127.0);
    }

    @Test
    void nothingIsRightBeforeItIsRead() {
        LogScript script = LogScript.home().goesWellUpTo("7");
        script.reverse("7");
        ReversalReadings back = new ReversalReadings(script.state(), HOME);
        assertThat(back.against()).hasSize(3);
        for (String[] one :
                List.of(new String[] {"A-N", "121"}, new String[] {"B-N", "122"}, new String[] {"A-B", "243"})) {
            script.read("10", one[0], one[1]);
        }
        assertThat(new ReversalReadings(script.state(), HOME).against()).isEmpty();
    }

    /** Read when all went well, and the work had to be reversed after that: the utility opens and closes once more. */
    @Test
    void whatWasReadBeforeTheReversalBeganDoesNotCount() {
        LogScript script = LogScript.home().goesWellUpTo("10");
        assertThat(new ReversalReadings(script.state(), HOME).against()).isEmpty();
        script.reverse("10");
        assertThat(new ReversalReadings(script.state(), HOME).against()).hasSize(3);
    }
}
