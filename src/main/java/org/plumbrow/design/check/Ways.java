package org.plumbrow.design.check;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.plumbrow.calc.electrical.ConductorCase;
import org.plumbrow.design.DesignFacts;
import org.plumbrow.design.Flow;
import org.plumbrow.design.PlacedInverter;
import org.plumbrow.design.PvString;
import org.plumbrow.design.Run;

/** Runs one after the other: from string to inverter, from inverter to service. */
public final class Ways {

    private static final int MOST_RUNS = 20;

    private Ways() {}

    /** @param volts lost on all of its runs together at full output */
    public record Way(List<String> runs, double volts) {
        public Way {
            runs = List.copyOf(runs);
        }
    }

    /** A way of more than one run, which share one limit. @param ofVolts with which it begins */
    public record Whole(String subject, Flow flow, Way way, double ofVolts) {
        public double percent() {
            return 100 * way.volts() / ofVolts;
        }
    }

    /** Every way of more than one run that is known whole: each run may pass while the way does not. */
    public static List<Whole> whole(DesignFacts design) {
        List<Whole> ways = new ArrayList<>();
        for (PlacedInverter inverter : design.inverters()) {
            toService(design, inverter.mark())
                    .filter(way -> way.runs().size() > 1)
                    .map(way -> new Whole(
                            inverter.mark() + " to the service: voltage rise",
                            Flow.AC,
                            way,
                            inverter.type().acV()))
                    .ifPresent(ways::add);
        }
        design.strings().forEach(string -> toInverter(design, string).ifPresent(ways::add));
        return ways;
    }

    /** A string's own run and its combiner's together. */
    private static Optional<Whole> toInverter(DesignFacts design, PvString string) {
        Optional<Run> own = run(design, Flow.DC_STRING, string.mark());
        Optional<Run> shared =
                string.combiner() == null ? Optional.empty() : run(design, Flow.DC_COMBINED, string.combiner());
        Optional<ConductorCase> first = own.flatMap(run -> known(design, run));
        Optional<ConductorCase> then = shared.flatMap(run -> known(design, run));
        if (first.isEmpty() || then.isEmpty()) {
            return Optional.empty();
        }
        double volts = first.get().drop().volts() + then.get().drop().volts();
        return Optional.of(new Whole(
                "String " + string.mark() + " to its inverter: voltage drop",
                Flow.DC_STRING,
                new Way(List.of(own.get().mark(), shared.get().mark()), volts),
                first.get().volts()));
    }

    private static Optional<Run> run(DesignFacts design, Flow flow, String from) {
        return design.runs().stream()
                .filter(run -> run.flow() == flow && run.from().equals(from))
                .findFirst();
    }

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
