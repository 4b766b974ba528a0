package org.plumbrow.design.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.plumbrow.calc.electrical.Check;
import org.plumbrow.calc.electrical.Check.Input;
import org.plumbrow.calc.electrical.ConductorCase;
import org.plumbrow.calc.electrical.ConductorChecks;
import org.plumbrow.calc.electrical.Raceway;
import org.plumbrow.calc.electrical.VoltageDrop;
import org.plumbrow.design.DesignFacts;
import org.plumbrow.design.DesignFacts.Flow;
import org.plumbrow.design.DesignFacts.PlacedInverter;
import org.plumbrow.design.DesignFacts.PvString;
import org.plumbrow.design.DesignFacts.Run;

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
        wholeWayAc(design).ifPresent(checks::add);
        wholeWayDc(design).ifPresent(checks::add);
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

    /** Of the inverter farthest away, where its way has more than one run: each may pass while the whole does not. */
    private static Optional<Check> wholeWayAc(DesignFacts design) {
        Ways.Way worst = null;
        PlacedInverter farthest = null;
        for (PlacedInverter inverter : design.inverters()) {
            Ways.Way way = Ways.toService(design, inverter.mark()).orElse(null);
            if (way != null && (worst == null || way.volts() > worst.volts())) {
                worst = way;
                farthest = inverter;
            }
        }
        return worst == null || worst.runs().size() < 2
                ? Optional.empty()
                : Optional.of(whole(
                        farthest.mark() + " to the service: voltage rise",
                        worst,
                        farthest.type().acV()));
    }

    /** Of the string that loses most on its own run and its combiner's together. */
    private static Optional<Check> wholeWayDc(DesignFacts design) {
        Check worst = null;
        for (PvString string : design.strings()) {
            Optional<Check> check = fromString(design, string);
            if (check.isPresent() && (worst == null || check.get().value() > worst.value())) {
                worst = check.get();
            }
        }
        return Optional.ofNullable(worst);
    }

    private static Optional<Check> fromString(DesignFacts design, PvString string) {
        Optional<Run> own = run(design, Flow.DC_STRING, string.mark());
        Optional<Run> shared =
                string.combiner() == null ? Optional.empty() : run(design, Flow.DC_COMBINED, string.combiner());
        Optional<ConductorCase> first = own.flatMap(run -> Ways.known(design, run));
        Optional<ConductorCase> then = shared.flatMap(run -> Ways.known(design, run));
        if (first.isEmpty() || then.isEmpty()) {
            return Optional.empty();
        }
        double volts = first.get().drop().volts() + then.get().drop().volts();
        Ways.Way way = new Ways.Way(List.of(own.get().mark(), shared.get().mark()), volts);
        return Optional.of(whole(
                "String " + string.mark() + " to its inverter: voltage drop",
                way,
                first.get().volts()));
    }

    private static Optional<Run> run(DesignFacts design, Flow flow, String from) {
        return design.runs().stream()
                .filter(run -> run.flow() == flow && run.from().equals(from))
                .findFirst();
    }

    private static Check whole(String subject, Ways.Way way, double ofVolts) {
        return Check.atMost(
                subject,
                HOUSE,
                100 * way.volts() / ofVolts,
                VoltageDrop.MOST_PERCENT,
                "%",
                List.of(
                        new Input("runs", String.join(", ", way.runs())),
                        Input.of("lost on all of them", way.volts(), "V"),
                        Input.of("of", ofVolts, "V")),
                "Make the run that loses most thicker or shorter.");
    }
}
