package org.plumbrow.design.drawing;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.plumbrow.calc.electrical.ConductorMaterial;
import org.plumbrow.design.Combiner;
import org.plumbrow.design.Counting;
import org.plumbrow.design.DesignFacts;
import org.plumbrow.design.Device;
import org.plumbrow.design.Racking;
import org.plumbrow.design.Run;

/**
 * The bill of quantities: what has to be bought and built, counted from the design. One for the page, the table and the
 * sheet. Wire and conduit have a tenth to spare, in whole tens of feet. Pure.
 */
public record Quantities(List<Line> lines) {

    private static final double SPARE = 1.10;
    private static final double ROUNDED_FT = 10;
    private static final double LARGE_GEAR_A = 400;

    public Quantities {
        lines = List.copyOf(lines);
    }

    /** What a line is counted in. */
    public enum Unit {
        MODULE("module", "modules"),
        INVERTER("inverter", "inverters"),
        PIECE("piece", "pieces"),
        ROW("row", "rows"),
        POST("post", "posts"),
        LABEL("label", "labels"),
        FT("ft", "ft");

        private final String one;
        private final String many;

        Unit(String one, String many) {
            this.one = one;
            this.many = many;
        }

        public String words(double quantity) {
            return quantity == 1 ? one : many;
        }
    }

    /** @param lead usual working days from order to delivery, least to most (common practice); empty for small things */
    public record Line(String group, String what, double quantity, Unit unit, String lead) {

        /** "1 piece", "1,320 ft". */
        public String amount() {
            return Say.figure(quantity) + " " + unit.words(quantity);
        }
    }

    public static Quantities of(DesignFacts facts) {
        Count count = new Count();
        facts.arrays()
                .forEach(array -> count.add("Modules", array.module().name(), array.modules(), Unit.MODULE, "5 to 60"));
        facts.inverters()
                .forEach(inverter -> count.add("Inverters", inverter.type().name(), 1, Unit.INVERTER, "5 to 60"));
        facts.combiners().forEach(combiner -> combiner(count, combiner));
        facts.devices().forEach(device -> device(count, device));
        facts.runs().forEach(run -> run(count, run, Counting.times(facts, run)));
        earth(count, facts);
        racking(count, facts);
        if (!facts.labels().isEmpty()) {
            count.add("Labels", "Labels by their list", facts.labels().size(), Unit.LABEL, "");
        }
        return new Quantities(count.lines());
    }

    private static void combiner(Count count, Combiner combiner) {
        String rating = Say.figure(combiner.ratedA()) + " A, " + Say.figure(combiner.ratedV()) + " V";
        String circuits = Say.count(combiner.circuits(), "circuit", "circuits");
        count.add("Combiners", "Combiner, " + circuits + ", " + rating, 1, Unit.PIECE, "5 to 90");
        if (combiner.fuseA() != null) {
            String fuse = "Fuse, " + Say.figure(combiner.fuseA()) + " A, for strings";
            count.add("Fuses", fuse, combiner.circuits(), Unit.PIECE, "5 to 90");
        }
    }

    private static void device(Count count, Device device) {
        count.add(
                "Devices",
                device.name() + ", " + Say.kind(device.kind()) + ", " + Say.rating(device),
                1,
                Unit.PIECE,
                device.ratedA() > LARGE_GEAR_A ? "90 to 500" : "5 to 90");
    }

    private static void run(Count count, Run run, long times) {
        String wire = Say.size(run.size()) + " " + run.material().words() + ", "
                + run.insulation().words();
        double feet = times * run.sets() * run.lengthFt() * SPARE;
        count.add("Conductors", wire, run.conductors() * feet, Unit.FT, "");
        if (run.groundSize() != null) {
            ConductorMaterial ground = run.groundMaterial() == null ? run.material() : run.groundMaterial();
            count.add("Grounding", Say.size(run.groundSize()) + " " + ground.words(), feet, Unit.FT, "");
        }
        if (run.raceway().isConduit()) {
            count.add("Conduit", Say.raceway(run), run.sets() * run.lengthFt() * SPARE, Unit.FT, "");
        }
    }

    private static void earth(Count count, DesignFacts facts) {
        double trench = Counting.trenchFt(facts);
        if (trench > 0) {
            count.add("Earthwork", "Trench", trench, Unit.FT, "");
        }
        double bore = Counting.boreFt(facts);
        if (bore > 0) {
            count.add("Earthwork", "Bore under streets and driveways", bore, Unit.FT, "");
        }
    }

    private static void racking(Count count, DesignFacts facts) {
        Racking racking = facts.racking();
        if (racking != null && racking.posts() != null && racking.posts() > 0) {
            String length = racking.postLengthFt() == null ? "" : ", " + Say.of(racking.postLengthFt(), "ft") + " long";
            count.add("Racking", "Posts" + length, racking.posts(), Unit.POST, "10 to 60");
        }
        facts.arrays()
                .forEach(array -> array.modulesWide()
                        .forEach(wide -> count.add(
                                "Racking",
                                "Row of " + wide + " × " + array.modulesHigh() + " modules, "
                                        + array.mounting().words(),
                                1,
                                Unit.ROW,
                                "10 to 60")));
    }

    /** Equal things together, in the order in which their groups were met. */
    private static final class Count {

        private final Map<String, Line> lines = new LinkedHashMap<>();

        void add(String group, String what, double quantity, Unit unit, String lead) {
            lines.merge(
                    group + "\n" + what,
                    new Line(group, what, quantity, unit, lead),
                    (old, more) -> new Line(group, what, old.quantity() + more.quantity(), unit, lead));
        }

        List<Line> lines() {
            List<String> groups =
                    lines.values().stream().map(Line::group).distinct().toList();
            List<Line> sorted = new ArrayList<>(lines.values());
            sorted.replaceAll(Count::rounded);
            sorted.sort(java.util.Comparator.comparingInt(line -> groups.indexOf(line.group())));
            return sorted;
        }

        /** Lengths in whole tens of feet upwards; a hair over a ten is rounding of the machine. */
        private static Line rounded(Line line) {
            return line.unit() != Unit.FT || line.group().equals("Earthwork")
                    ? line
                    : new Line(
                            line.group(),
                            line.what(),
                            Math.ceil(line.quantity() / ROUNDED_FT - 1e-9) * ROUNDED_FT,
                            line.unit(),
                            line.lead());
        }
    }

    Table table() {
        return new Table(
                "Bill of quantities; wire and conduit with a tenth to spare",
                List.of("Item", "What", "Quantity", "Unit", "Usual lead time, working days"),
                lines.stream()
                        .map(line -> List.of(
                                line.group(),
                                line.what(),
                                Say.figure(line.quantity()),
                                line.unit().words(line.quantity()),
                                line.lead()))
                        .toList());
    }
}
