package org.plumbrow.design.drawing;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.plumbrow.calc.electrical.ConductorMaterial;
import org.plumbrow.design.DesignFacts;
import org.plumbrow.design.DesignFacts.Combiner;
import org.plumbrow.design.DesignFacts.Racking;
import org.plumbrow.design.DesignFacts.Run;

/** What has to be bought and built, counted from the design; lengths as drawn, without waste. */
public record Quantities(List<Line> lines) {

    public Quantities {
        lines = List.copyOf(lines);
    }

    /** @param unit "pieces", "ft" */
    public record Line(String group, String what, double quantity, String unit) {}

    public static Quantities of(DesignFacts facts) {
        Count count = new Count();
        facts.arrays().forEach(array -> count.add("Modules", array.module().name(), array.modules(), "pieces"));
        facts.inverters()
                .forEach(inverter -> count.add("Inverters", inverter.type().name(), 1, "pieces"));
        facts.combiners().forEach(combiner -> combiner(count, combiner));
        facts.devices()
                .forEach(device -> count.add(
                        "Devices",
                        device.name() + ", " + Say.kind(device.kind()) + ", " + Say.rating(device),
                        1,
                        "pieces"));
        facts.runs().forEach(run -> run(count, run));
        racking(count, facts);
        facts.labels().forEach(label -> count.add("Labels", label.text(), 1, "pieces"));
        return new Quantities(count.lines());
    }

    private static void combiner(Count count, Combiner combiner) {
        String rating = Say.figure(combiner.ratedA()) + " A, " + Say.figure(combiner.ratedV()) + " V";
        count.add("Combiners", combiner.circuits() + " circuits, " + rating, 1, "pieces");
        if (combiner.fuseA() != null) {
            count.add("Fuses", Say.figure(combiner.fuseA()) + " A, for strings", combiner.circuits(), "pieces");
        }
    }

    private static void run(Count count, Run run) {
        String wire = Say.size(run.size()) + " " + run.material().words() + ", "
                + run.insulation().words();
        count.add("Conductors", wire, run.conductors() * run.lengthFt(), "ft");
        if (run.groundSize() != null) {
            ConductorMaterial ground = run.groundMaterial() == null ? run.material() : run.groundMaterial();
            count.add("Grounding", Say.size(run.groundSize()) + " " + ground.words(), run.lengthFt(), "ft");
        }
        if (run.raceway().isConduit()) {
            count.add("Conduit", Say.raceway(run), run.lengthFt(), "ft");
        }
        if (run.coverIn() != null) {
            String under = Say.under(run);
            count.add("Trench", Say.figure(run.coverIn()) + " in of cover" + under, run.lengthFt(), "ft");
        }
    }

    private static void racking(Count count, DesignFacts facts) {
        Racking racking = facts.racking();
        if (racking != null && racking.posts() != null) {
            count.add("Racking", "posts, " + Say.of(racking.postLengthFt(), "ft") + " long", racking.posts(), "pieces");
        }
        facts.arrays()
                .forEach(array -> array.modulesWide()
                        .forEach(wide -> count.add(
                                "Racking",
                                "rows of " + wide + " × " + array.modulesHigh() + ", "
                                        + array.mounting().words(),
                                1,
                                "pieces")));
    }

    /** Equal things together, in the order in which they were met. */
    private static final class Count {

        private final Map<String, Line> lines = new LinkedHashMap<>();

        void add(String group, String what, double quantity, String unit) {
            lines.merge(
                    group + "\n" + what,
                    new Line(group, what, quantity, unit),
                    (old, more) -> new Line(group, what, old.quantity() + more.quantity(), unit));
        }

        List<Line> lines() {
            List<String> groups =
                    lines.values().stream().map(Line::group).distinct().toList();
            List<Line> sorted = new ArrayList<>(lines.values());
            sorted.sort(java.util.Comparator.comparingInt(line -> groups.indexOf(line.group())));
            return sorted;
        }
    }

    Table table() {
        return new Table(
                "Bill of quantities, lengths as drawn, without waste",
                List.of("Item", "What", "Quantity", "Unit"),
                lines.stream()
                        .map(line -> List.of(line.group(), line.what(), Say.figure(line.quantity()), line.unit()))
                        .toList());
    }
}
