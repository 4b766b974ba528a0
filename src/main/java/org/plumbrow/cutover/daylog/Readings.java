package org.plumbrow.cutover.daylog;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.plumbrow.calc.Range;
import org.plumbrow.calc.electrical.Service;
import org.plumbrow.calc.electrical.Service.Band;
import org.plumbrow.calc.electrical.ServiceVoltage;
import org.plumbrow.calc.outage.SupplyRestored;
import org.plumbrow.web.Option;

/** Which readings a step asks for, by the kind of service and what is on site; and what they say together. */
record Readings(Service service, boolean generator, boolean milk) {

    static final String ROTATION = "rotation";
    static final String LIVE_BEFORE = "live-before";
    static final String LIVE_AFTER = "live-after";
    static final String INSULATION = "insulation";
    static final String TORQUE = "torque";
    static final String LUGS = "lugs";
    static final String ARRAY = "array";
    static final double LEAST_ON_LIVE_SOURCE_V = 90;
    /** What a tester may still show on a dead conductor; a house limit. */
    static final double MOST_WHEN_DEAD_V = 2;
    /** Acceptance of new 600 V cable at 1,000 V; below {@link #LEAST_INSULATION_MOHM} nobody goes on. */
    static final double USUAL_INSULATION_MOHM = 100;

    static final double LEAST_INSULATION_MOHM = 1;

    private static final double TANK_LIMIT_F = 45;

    private static final List<Asked> ARRAY_ASKED = List.of(
            Asked.choice(
                    ARRAY,
                    "How the array is left",
                    true,
                    List.of(
                            new Option("LOCKED_OPEN", "Locked open"),
                            new Option("TESTED", "Tested with the utility's permission"))),
            Asked.number(
                    "stop-s",
                    "Output stops after the disconnect opens",
                    "seconds, at most 2; only when tested",
                    new Range(0, 600, "s"),
                    false,
                    seconds -> seconds > 2
                            ? "%.1f s is more than 2 s. Leave the array locked open.".formatted(seconds)
                            : ""),
            Asked.number(
                    "return-min",
                    "Output returns",
                    "minutes, at least 5; only when tested",
                    new Range(0, 120, "min"),
                    false,
                    minutes -> minutes < 5
                            ? "%.1f min is less than 5 min. Leave the array locked open.".formatted(minutes)
                            : ""));
    private static final List<Asked> CONNECTIONS = List.of(
            Asked.wholeNumber(LUGS, "Lugs torqued and marked", "how many", new Range(1, 500, "lugs"), true),
            Asked.text(TORQUE, "Torque and tool", "for example 275 in·lb, tool 14, calibrated Jan 2027", true));
    private static final List<Asked> LOCKS =
            List.of(Asked.wholeNumber("locks", "Locks hung", "how many", new Range(1, 60, "locks"), true));

    List<Asked> of(String step) {
        return switch (step) {
            case "2" -> before();
            case "3" -> generator ? List.of(generatorRun()) : List.of();
            case "5" -> LOCKS;
            case "6" -> absence();
            case "7" -> CONNECTIONS;
            case "8" -> List.of(insulation());
            case "10" -> voltsAndRotation(true, " If it stays, the utility opens again.");
            case "11" -> milk ? List.of(tank()) : List.of();
            case "13" -> ARRAY_ASKED;
            case "14" -> voltsAndRotation(false, " If it stays, call the utility.");
            default -> List.of();
        };
    }

    private List<Asked> before() {
        List<Asked> asked = new ArrayList<>(voltsAndRotation(true, " If it stays, call the utility before step 4."));
        asked.add(Asked.number(
                "main-a", "Load on the main", "amperes, the highest leg", new Range(0, 6000, "A"), false, a -> ""));
        if (milk) {
            asked.add(tank());
        }
        return asked;
    }

    private List<Asked> voltsAndRotation(boolean required, String ifItStays) {
        List<Asked> asked = new ArrayList<>();
        for (Service.Pair pair : service.pairs()) {
            asked.add(Asked.number(
                    pair.code(),
                    pair.words(),
                    "volts, usually %.0f to %.0f"
                            .formatted(pair.limits().aLeastV(), pair.limits().aMostV()),
                    ServiceVoltage.VOLTS,
                    required,
                    volts -> outside(pair, volts, ifItStays)));
        }
        if (service.isThreePhase()) {
            asked.add(Asked.choice(
                    ROTATION, "Phase rotation", required, List.of(new Option("ABC", "ABC"), new Option("CBA", "CBA"))));
        }
        return asked;
    }

    private static String outside(Service.Pair pair, double volts, String ifItStays) {
        Band band = pair.limits().band(volts);
        return band == Band.A
                ? ""
                : new ServiceVoltage.Judged(pair, volts, band).sentence() + " It is kept. Read it again." + ifItStays;
    }

    private static Asked generatorRun() {
        return Asked.number(
                "generator-min",
                "Generator carries the load",
                "minutes watched, 5 to 10",
                new Range(0, 240, "min"),
                true,
                minutes -> minutes < 5
                        ? "%.0f min are short: watch it carry its load for 5 to 10 min.".formatted(minutes)
                        : "");
    }

    private List<Asked> absence() {
        List<Asked> asked = new ArrayList<>();
        asked.add(tester(LIVE_BEFORE, "Tester on a live source, before"));
        for (String pair : deadPairs()) {
            asked.add(Asked.number(
                            dead(pair),
                            words(pair) + ", dead",
                            "volts, 0 to %.0f".formatted(MOST_WHEN_DEAD_V),
                            ServiceVoltage.VOLTS,
                            true,
                            volts -> volts > MOST_WHEN_DEAD_V
                                    ? "%s shows %.1f V: voltage is present. Stop, and look for a second source."
                                            .formatted(words(pair), volts)
                                    : "")
                    .shutAt(volts -> volts > MOST_WHEN_DEAD_V));
        }
        asked.add(tester(LIVE_AFTER, "Tester on a live source, after"));
        return asked;
    }

    private static Asked tester(String quantity, String words) {
        return Asked.number(
                        quantity,
                        words,
                        "volts of that source",
                        ServiceVoltage.VOLTS,
                        true,
                        volts -> volts < LEAST_ON_LIVE_SOURCE_V
                                ? "The tester shows %.1f V on a source known to be live. Take another tester and begin again."
                                        .formatted(volts)
                                : "")
                .shutAt(volts -> volts < LEAST_ON_LIVE_SOURCE_V);
    }

    /** Every pair of the service, then each leg to ground. */
    List<String> deadPairs() {
        List<String> pairs =
                new ArrayList<>(service.pairs().stream().map(Service.Pair::code).toList());
        List.of("A", "B", "C").stream()
                .filter(leg -> !leg.equals("C") || service.isThreePhase())
                .forEach(leg -> pairs.add(leg + "-G"));
        return pairs;
    }

    static String dead(String pair) {
        return "dead-" + pair;
    }

    private static String words(String pair) {
        String to = switch (pair.charAt(2)) {
            case 'N' -> "neutral";
            case 'G' -> "ground";
            default -> "leg " + pair.charAt(2);
        };
        return "Leg " + pair.charAt(0) + " to " + to;
    }

    private static Asked insulation() {
        return Asked.number(
                        INSULATION,
                        "Insulation of the new conductors, the lowest",
                        "megohms at 1,000 V, both ends open",
                        new Range(0, 1_000_000, "MΩ"),
                        true,
                        megohms -> megohms < USUAL_INSULATION_MOHM
                                ? "%.1f MΩ is below 100 MΩ. Clean and dry the ends, read again.".formatted(megohms)
                                : "")
                .shutAt(megohms -> megohms < LEAST_INSULATION_MOHM);
    }

    private static Asked tank() {
        return Asked.number(
                "tank-f",
                "Milk in the tank",
                "°F, at most 45",
                new Range(20, 150, "°F"),
                false,
                degrees -> degrees > TANK_LIMIT_F
                        ? "%.0f °F is above 45 °F. Tell the farmer; the buyer's and inspector's rules decide."
                                .formatted(degrees)
                        : "");
    }

    /** The voltages and the rotation of one step. */
    SupplyRestored.Reading supply(LogState state, String step) {
        Map<String, Double> volts = new HashMap<>();
        service.pairs()
                .forEach(pair -> state.value(step, pair.code())
                        .ifPresent(value -> volts.put(pair.code(), Double.valueOf(value))));
        return new SupplyRestored.Reading(volts, state.value(step, ROTATION));
    }

    /** Hold point H4. */
    SupplyRestored restored(LogState state) {
        return SupplyRestored.judge(service, supply(state, "2"), supply(state, Procedure.UTILITY_CLOSES));
    }

    /** What the voltages of a step say together, beyond each pair: a high leg, an open neutral. */
    ServiceVoltage.Result judged(LogState state, String step) {
        return ServiceVoltage.judge(service, supply(state, step).volts());
    }
}
