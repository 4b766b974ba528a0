package org.plumbrow.design.check;

import java.util.ArrayList;
import java.util.List;
import org.plumbrow.calc.electrical.Check;
import org.plumbrow.calc.electrical.ConductorChecks;
import org.plumbrow.design.DesignFacts;
import org.plumbrow.design.DesignFacts.Run;

/** Every run of conductors. */
final class RunChecks {

    private RunChecks() {}

    static List<Check> of(DesignFacts design) {
        if (design.runs().isEmpty()) {
            return List.of(Check.cannotTell("Conductors", "NEC 310, 240", List.of("conductor runs")));
        }
        List<Check> checks = new ArrayList<>();
        for (Run run : design.runs()) {
            checks.addAll(Cases.conductors(design, run)
                    .map(ConductorChecks::of)
                    .orElseGet(() -> List.of(Check.cannotTell(
                            run.mark() + ", " + run.from() + " to " + run.to(),
                            "NEC 310, 240",
                            List.of("what flows in it: " + run.from()
                                    + " is no string, combiner or inverter with a way here")))));
        }
        return checks;
    }
}
