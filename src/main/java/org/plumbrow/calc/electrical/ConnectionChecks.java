package org.plumbrow.calc.electrical;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import org.plumbrow.calc.electrical.Check.Input;

/** What is asked where the array meets the service: bus or tap, device, interrupting rating, transformer; and at the disconnect. */
public final class ConnectionChecks {

    private ConnectionChecks() {}

    public static List<Check> of(ConnectionCase at) {
        List<Check> checks = new ArrayList<>();
        checks.add(bus(at));
        checks.add(device(at));
        checks.add(interrupting(at));
        transformer(at).ifPresent(checks::add);
        return List.copyOf(checks);
    }

    /** The busbar rule, or the rule for a tap ahead of the main. */
    public static Check bus(ConnectionCase at) {
        return switch (at.rule()) {
            case SUPPLY_SIDE -> supplySide(at);
            case SUM_OF_DEVICES -> sumOfDevices(at);
            case ANYWHERE, FAR_END, CENTER_FED -> withMain(at);
        };
    }

    private static double sourcesA(ConnectionCase at) {
        return at.outputA() + at.otherSourcesA();
    }

    private static Check withMain(ConnectionCase at) {
        Double bus = at.busA();
        Double main = at.mainA();
        if (bus == null || main == null) {
            return Check.cannotTell("Busbar", at.rule().clause(), missing(bus, "busbar rating", main, "main rating"));
        }
        Busbar.Load load = Busbar.with(at.rule(), bus, main, sourcesA(at));
        return Check.atMost(
                        "Busbar",
                        at.rule().clause(),
                        load.usedA(),
                        load.allowedA(),
                        "A",
                        List.of(
                                Input.of("bus", bus, "A"),
                                Input.of("main", main, "A"),
                                Input.of("output of the array", at.outputA(), "A"),
                                Input.of("other sources", at.otherSourcesA(), "A"),
                                new Input("rule", at.rule().words())),
                        remedy(at, bus, main))
                .with(Input.of("largest output that fits", Busbar.mostOutputA(at.rule(), bus, main), "A"));
    }

    /** Far end, smaller main, sum rule, tap: in this order people try. */
    private static String remedy(ConnectionCase at, double bus, double main) {
        if (at.rule() == Busbar.Rule.ANYWHERE
                && Busbar.with(Busbar.Rule.FAR_END, bus, main, sourcesA(at)).within()) {
            return "It fits at the far end of the bus.";
        }
        OptionalDouble smaller = Busbar.smallerMainA(bus, main, sourcesA(at));
        return smaller.isPresent()
                ? "With a main of %s A it fits, if a load calculation allows that; else the sum rule or a tap ahead of the main."
                        .formatted(Check.figure(smaller.getAsDouble()))
                : "Use the sum rule, a smaller inverter, or a tap ahead of the main.";
    }

    private static Check sumOfDevices(ConnectionCase at) {
        Double bus = at.busA();
        Double sum = at.devicesSumA();
        if (bus == null || sum == null) {
            return Check.cannotTell(
                    "Busbar", at.rule().clause(), missing(bus, "busbar rating", sum, "sum of the devices"));
        }
        return Check.atMost(
                "Busbar",
                at.rule().clause(),
                sum,
                bus,
                "A",
                List.of(Input.of("bus", bus, "A"), new Input("rule", at.rule().words())),
                "Take devices off the bus, or use the far end or a tap ahead of the main. Label against adding breakers.");
    }

    private static Check supplySide(ConnectionCase at) {
        Double conductors = at.serviceConductorsA();
        if (conductors == null) {
            return Check.cannotTell(
                    "Tap ahead of the main", at.rule().clause(), List.of("ampacity of the service conductors"));
        }
        return Check.atMost(
                "Tap ahead of the main",
                at.rule().clause(),
                sourcesA(at),
                conductors,
                "A",
                List.of(
                        Input.of("service conductors", conductors, "A"),
                        Input.of("output of the array", at.outputA(), "A"),
                        Input.of("other sources", at.otherSourcesA(), "A"),
                        new Input(
                                "also",
                                "own service-rated disconnect; the utility must agree, the tap needs an outage")),
                "Enlarge the service, or a smaller inverter.");
    }

    /** At least 1.25 times the output; a standard size. */
    public static Check device(ConnectionCase at) {
        double least = Overcurrent.CONTINUOUS * at.outputA();
        Double device = at.deviceA();
        if (device == null) {
            return Check.cannotTell("Device of the array", "NEC 705.28, 240.6(A)", List.of("rating of the device"));
        }
        return Check.atLeast(
                "Device of the array",
                "NEC 705.28, 240.6(A)",
                device,
                least,
                "A",
                List.of(Input.of("output", at.outputA(), "A"), Input.of("with a quarter", least, "A")),
                "Use %d A, the next standard size."
                        .formatted(Overcurrent.sizeFor(least).orElse(0)));
    }

    public static Check interrupting(ConnectionCase at) {
        Double rating = at.interruptingKa();
        Double fault = at.faultKa();
        if (rating == null || fault == null) {
            return Check.cannotTell(
                    "Interrupting rating",
                    "NEC 110.9",
                    missing(rating, "interrupting rating of the gear", fault, "fault current from the utility"));
        }
        return Check.atLeast(
                "Interrupting rating",
                "NEC 110.9",
                rating,
                fault,
                "kA",
                List.of(Input.of("available fault current", fault, "kA")),
                "Use gear that interrupts at least that much, or ask an engineer for a series rating.");
    }

    /** The usual wish of utilities, no code. */
    private static Optional<Check> transformer(ConnectionCase at) {
        if (at.transformerKva() == null) {
            return Optional.empty();
        }
        Check check = Check.atMost(
                "Transformer",
                "utility's rule (usual: kW AC within kVA)",
                at.kwAc(),
                at.transformerKva(),
                "kVA",
                List.of(Input.of("array", at.kwAc(), "kW AC")),
                "Ask the utility: a larger transformer costs time and money.");
        return Optional.of(check.verdict() == Verdict.FAIL ? check.but(Verdict.REMARK, check.remedy()) : check);
    }

    /**
     * @param feet along the way that a lineman walks from the disconnect to the meter; null unknown
     * @param mostFt what the utility allows without a letter
     * @param letter whether the utility has agreed in writing to more
     */
    public static Check disconnect(@Nullable Double feet, double mostFt, boolean letter) {
        if (feet == null) {
            return Check.cannotTell(
                    "Disconnect to meter", "utility's rule", List.of("distance from the disconnect to the meter"));
        }
        Check check = Check.atMost(
                "Disconnect to meter",
                "utility's rule",
                feet,
                mostFt,
                "ft",
                List.of(new Input("utility's letter", letter ? "there" : "none")),
                "Move it, or attach the utility's letter.");
        return check.verdict() == Verdict.FAIL && letter
                ? check.but(Verdict.REMARK, "The utility agreed in writing: permanent directions at the meter.")
                : check;
    }

    private static List<String> missing(
            @Nullable Double one, String whatOne, @Nullable Double other, String whatOther) {
        List<String> missing = new ArrayList<>();
        if (one == null) {
            missing.add(whatOne);
        }
        if (other == null) {
            missing.add(whatOther);
        }
        return missing;
    }
}
