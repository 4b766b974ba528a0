package org.plumbrow.design.check;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.plumbrow.calc.electrical.ConductorCase;
import org.plumbrow.design.DesignFacts;
import org.plumbrow.design.DesignFacts.Flow;
import org.plumbrow.design.DesignFacts.Run;

/** Runs one after the other. */
final class Ways {

    private static final int MOST_RUNS = 20;

    private Ways() {}

    /** @param volts lost on all of its runs together at full output */
    record Way(List<String> runs, double volts) {}

    /** A run whose loss can be computed. */
    static Optional<ConductorCase> known(DesignFacts design, Run run) {
        return Cases.conductors(design, run).filter(ConductorCase::isInTables);
    }

    /** From an inverter to the point of interconnection; empty while any run on the way is not known. */
    static Optional<Way> toService(DesignFacts design, String from) {
        return toService(design, from, 0);
    }

    private static Optional<Way> toService(DesignFacts design, String from, int steps) {
        if (from.equals(Cases.POI)) {
            return Optional.of(new Way(List.of(), 0));
        }
        return steps > MOST_RUNS
                ? Optional.empty()
                : design.runs().stream()
                        .filter(run -> run.flow() == Flow.AC && run.from().equals(from))
                        .flatMap(run -> through(design, run, steps).stream())
                        .max(Comparator.comparingDouble(Way::volts));
    }

    private static Optional<Way> through(DesignFacts design, Run run, int steps) {
        return known(design, run)
                .flatMap(known -> toService(design, run.to(), steps + 1).map(rest -> {
                    List<String> runs = new ArrayList<>(List.of(run.mark()));
                    runs.addAll(rest.runs());
                    return new Way(runs, known.drop().volts() + rest.volts());
                }));
    }
}
