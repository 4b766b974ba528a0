package org.plumbrow.design.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.plumbrow.calc.electrical.VoltageDrop;
import org.plumbrow.design.DesignFacts;
import org.plumbrow.design.Flow;
import org.plumbrow.design.Run;

class CircuitsTest {

    /** Two equal sets share the current, so each loses half of what one alone would (Ohm's law). */
    @Test
    void setsSideBySideShareTheDropThatTheSheetSays() {
        DesignFacts field = MadeUpDesigns.field();
        Circuits circuits = new Circuits(field);
        Run one = field.runs().stream()
                .filter(run -> run.flow() == Flow.AC && circuits.drop(run).isPresent())
                .findFirst()
                .orElseThrow()
                .laidAs("4/0", null, null, null);
        double alone = circuits.drop(one).map(VoltageDrop.Result::percent).orElseThrow();
        double shared = circuits.drop(one.laidAs("4/0", 2, null, null))
                .map(VoltageDrop.Result::percent)
                .orElseThrow();
        assertThat(alone).isPositive();
        assertThat(shared).isCloseTo(alone / 2, within(1e-9));
    }
}
