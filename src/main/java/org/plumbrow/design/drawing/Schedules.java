package org.plumbrow.design.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.plumbrow.design.Combiner;
import org.plumbrow.design.DesignFacts;
import org.plumbrow.design.Device;
import org.plumbrow.design.Label;
import org.plumbrow.design.Run;

/** Runs, devices and labels as tables. */
final class Schedules {

    private Schedules() {}

    static Table devices(DesignFacts facts) {
        List<List<String>> rows = new ArrayList<>();
        facts.combiners().forEach(combiner -> rows.add(combiner(combiner)));
        facts.devices().forEach(device -> rows.add(device(device)));
        return new Table(
                "Equipment schedule",
                List.of(
                        "Mark",
                        "Device",
                        "Rating",
                        "Interrupts",
                        "In run",
                        "Place",
                        "Who may open it",
                        "For the utility"),
                rows);
    }

    private static List<String> device(Device device) {
        return List.of(
                device.mark(),
                named(device),
                Say.rating(device),
                Say.of(device.interruptingKa(), "kA"),
                device.inRun() == null ? "" : device.inRun(),
                device.place(),
                device.whoMayOpen(),
                utility(device));
    }

    private static String named(Device device) {
        String kind = Say.kind(device.kind());
        boolean said = device.name().toLowerCase(Locale.ROOT).contains(kind);
        return said ? device.name() : device.name() + ", " + kind;
    }

    private static String utility(Device device) {
        if (!device.utilityDisconnect() && device.toMeterFt() == null) {
            return "";
        }
        String what = device.utilityDisconnect() ? "utility disconnect, " : "";
        String far = device.toMeterFt() == null
                ? "distance to the meter not known"
                : Say.of(device.toMeterFt(), "ft") + " to the meter";
        return what + far + (device.utilityLetter() ? ", utility agrees in writing" : "");
    }

    private static List<String> combiner(Combiner combiner) {
        return List.of(
                combiner.mark(),
                "combiner, " + Say.count(combiner.circuits(), "circuit", "circuits") + ", "
                        + (combiner.fuseA() == null ? "no fuses" : "fuses " + Say.figure(combiner.fuseA()) + " A"),
                Say.figure(combiner.ratedA()) + " A, " + Say.figure(combiner.ratedV()) + " V",
                "",
                "",
                combiner.place(),
                "",
                "");
    }

    static Table runs(Circuits circuits) {
        return new Table(
                "Conductor schedule",
                List.of(
                        "Run",
                        "From",
                        "To",
                        "Carries",
                        "Conductors",
                        "Ground",
                        "In",
                        "Length",
                        "Drop",
                        "Hottest",
                        "Buried",
                        "Terminals"),
                circuits.facts().runs().stream().map(run -> run(run, circuits)).toList());
    }

    private static List<String> run(Run run, Circuits circuits) {
        return List.of(
                run.mark(),
                run.from(),
                run.to(),
                switch (run.flow()) {
                    case DC_STRING -> "DC, one string";
                    case DC_COMBINED -> "DC, combined";
                    case AC -> "AC";
                },
                Say.conductors(run),
                Say.ground(run),
                Say.raceway(run),
                Say.figure(run.lengthFt()) + " ft",
                circuits.drop(run)
                        .map(drop -> Say.rounded(drop.volts(), 1) + " V, " + Say.rounded(drop.percent(), 2) + " %")
                        .orElse(Say.UNKNOWN),
                run.ambientC() == null ? "" : Say.of(run.ambientC(), "°C"),
                buried(run),
                run.terminalC() + " °C");
    }

    static String buried(Run run) {
        if (run.coverIn() == null) {
            return "";
        }
        String under = Say.under(run);
        String crossings = run.crossings().isEmpty() ? "" : "; crosses " + String.join(", ", run.crossings());
        return Say.figure(run.coverIn()) + " in deep" + under + crossings;
    }

    static Table labels(DesignFacts facts) {
        List<List<String>> rows = new ArrayList<>();
        for (Label label : facts.labels()) {
            rows.add(List.of(String.valueOf(rows.size() + 1), label.place(), label.text(), label.clause()));
        }
        return new Table("Label schedule", List.of("No.", "Where", "Words", "Clause"), rows);
    }
}
