package org.plumbrow.design.check;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.plumbrow.calc.electrical.Check;
import org.plumbrow.calc.electrical.Check.Input;
import org.plumbrow.calc.electrical.ConductorChecks;
import org.plumbrow.calc.electrical.Raceway;
import org.plumbrow.calc.electrical.VoltageDrop;
import org.plumbrow.design.DesignFacts;
import org.plumbrow.design.Flow;
import org.plumbrow.design.Run;

/** Every run of conductors, and the ways that several of them make together. */
final class RunChecks {

    private static final String HOUSE = "house rule (NEC 210.19 and 215.2, notes: 3 % and 5 % in all)";

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
                            name(run),
                            "NEC 310, 240",
                            List.of("what flows in it: " + run.from()
                                    + " is no string, combiner or inverter with a way here")))));
            unknownCover(run).ifPresent(checks::add);
        }
        checks.addAll(wholeWays(design));
        return checks;
    }

    private static String name(Run run) {
        return run.mark() + ", " + run.from() + " to " + run.to();
    }

    /** A run that lies in the earth says how deep. */
    private static Optional<Check> unknownCover(Run run) {
        boolean buried = run.raceway() == Raceway.DIRECT_BURIED || run.under() != null;
        return buried && run.coverIn() == null
                ? Optional.of(Check.cannotTell(name(run) + ": cover", "NEC Table 300.5", List.of("earth over it")))
                : Optional.empty();
    }

    /** The worst whole way of those with alternating and of those with direct current. */
    private static List<Check> wholeWays(DesignFacts design) {
        List<Ways.Whole> ways = Ways.whole(design);
        return Stream.of(Flow.AC, Flow.DC_STRING)
                .flatMap(flow -> ways.stream()
                        .filter(whole -> whole.flow() == flow)
                        .max(Comparator.comparingDouble(Ways.Whole::percent))
                        .stream())
                .map(RunChecks::check)
                .toList();
    }

    private static Check check(Ways.Whole whole) {
        return Check.atMost(
                whole.subject(),
                HOUSE,
                whole.percent(),
                VoltageDrop.MOST_PERCENT,
                "%",
                List.of(
                        new Input("runs", String.join(", ", whole.way().runs())),
                        Input.of("lost on all of them", whole.way().volts(), "V"),
                        Input.of("of", whole.ofVolts(), "V")),
                "Make the run that loses most thicker or shorter.");
    }
}
