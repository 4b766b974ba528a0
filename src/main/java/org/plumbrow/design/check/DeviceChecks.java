package org.plumbrow.design.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.plumbrow.calc.electrical.Check;
import org.plumbrow.calc.electrical.Check.Input;
import org.plumbrow.calc.electrical.Overcurrent;
import org.plumbrow.calc.electrical.Verdict;
import org.plumbrow.design.Combiner;
import org.plumbrow.design.DesignFacts;
import org.plumbrow.design.Device;
import org.plumbrow.design.DeviceKind;
import org.plumbrow.design.Flow;
import org.plumbrow.design.PvString;
import org.plumbrow.design.Run;

/** Whether each combiner and device bears the voltage, the current and the short circuit at its place. */
final class DeviceChecks {

    private static final String RATINGS = "NEC 110.3(B), 690.8, 705.28";
    private static final String FAULT = "NEC 110.9";

    private DeviceChecks() {}

    static List<Check> of(DesignFacts design) {
        List<Check> checks = new ArrayList<>();
        design.combiners().forEach(combiner -> checks.addAll(combiner(design, combiner)));
        for (Device device : design.devices()) {
            checks.addAll(ratings(design, device));
            fault(design, device).ifPresent(checks::add);
        }
        unstated(design).ifPresent(checks::add);
        return checks;
    }

    private static List<Check> combiner(DesignFacts design, Combiner combiner) {
        String name = "Combiner " + combiner.mark();
        List<PvString> strings = design.strings().stream()
                .filter(string -> combiner.mark().equals(string.combiner()))
                .toList();
        if (strings.isEmpty()) {
            return List.of(Check.cannotTell(name, RATINGS, List.of("strings that end in it")));
        }
        double maximumA = strings.stream()
                .flatMap(string -> design.array(string.array()).stream())
                .mapToDouble(array -> Overcurrent.CONTINUOUS * array.module().iscA())
                .sum();
        List<Check> checks = new ArrayList<>();
        checks.add(Check.atMost(
                name + ": circuits",
                RATINGS,
                strings.size(),
                combiner.circuits(),
                "strings",
                List.of(),
                "Use a combiner with more circuits, or a second one."));
        checks.add(bears(name, combiner.ratedA(), maximumA));
        Cases.coldV(design, strings).ifPresent(volts -> checks.add(bearsVolts(name, combiner.ratedV(), volts)));
        return checks;
    }

    private static List<Check> ratings(DesignFacts design, Device device) {
        Optional<Run> run = place(design, device);
        Optional<Cases.Current> current = run.flatMap(where -> Cases.current(design, where));
        if (current.isEmpty()) {
            return device.kind() == DeviceKind.METER
                    ? List.of()
                    : List.of(Check.cannotTell(
                            name(device), RATINGS, List.of("run in which it stands, and what flows there")));
        }
        Optional<Double> volts = run.get().flow() == Flow.AC
                ? Optional.of(current.get().volts())
                : Cases.coldV(design, design.strings());
        List<Check> checks = new ArrayList<>();
        checks.add(bears(name(device), device.ratedA(), current.get().maximumA()));
        volts.ifPresent(there -> checks.add(bearsVolts(name(device), device.ratedV(), there)));
        return checks;
    }

    private static String name(Device device) {
        return device.mark() + ", " + device.name();
    }

    /** The run that it protects, else the one that begins in it, else one that ends in it. */
    private static Optional<Run> place(DesignFacts design, Device device) {
        return Stream.of(
                        design.runs().stream().filter(run -> run.mark().equals(device.inRun())),
                        design.runs().stream().filter(run -> run.from().equals(device.mark())),
                        design.runs().stream().filter(run -> run.to().equals(device.mark())))
                .flatMap(runs -> runs)
                .findFirst();
    }

    private static Check bears(String name, double ratedA, double maximumA) {
        return Check.atLeast(
                name + ": rated current",
                RATINGS,
                ratedA,
                Overcurrent.CONTINUOUS * maximumA,
                "A",
                List.of(Input.of("current there", maximumA, "A"), new Input("continuous use", "× 1.25")),
                "Use one with a higher rated current.");
    }

    private static Check bearsVolts(String name, double ratedV, double volts) {
        return Check.atLeast(
                name + ": rated voltage",
                RATINGS,
                ratedV,
                volts,
                "V",
                List.of(Input.of("highest voltage there", volts, "V")),
                "Use one with a higher rated voltage.");
    }

    /** What the utility states for the service is the most: along the way to a device it falls. */
    private static Optional<Check> fault(DesignFacts design, Device device) {
        Double fault = design.service().faultKa();
        if (device.interruptingKa() == null || fault == null || !Cases.opensByItself(device)) {
            return Optional.empty();
        }
        Check check = Check.atLeast(
                "Interrupting rating of " + device.mark(),
                FAULT,
                device.interruptingKa(),
                fault,
                "kA",
                List.of(Input.of("available fault current at the service", fault, "kA")),
                "Use a device that interrupts at least that much.");
        return Optional.of(
                check.verdict() == Verdict.FAIL && !device.utilityDisconnect()
                        ? check.but(
                                Verdict.NEEDS_ENGINEER,
                                "Less can flow at its place than at the service: an engineer works out how much, "
                                        + "or use a device that interrupts more.")
                        : check);
    }

    private static Optional<Check> unstated(DesignFacts design) {
        List<String> marks = design.devices().stream()
                .filter(Cases::opensByItself)
                .filter(device -> device.interruptingKa() == null)
                .map(device -> "interrupting rating of " + device.mark())
                .toList();
        return marks.isEmpty()
                ? Optional.empty()
                : Optional.of(Check.cannotTell("Interrupting rating of the devices", FAULT, marks));
    }
}
