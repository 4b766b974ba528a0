package org.plumbrow.design.draft;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.plumbrow.calc.duration.Mounting;
import org.plumbrow.design.DesignFacts;
import org.plumbrow.design.DesignFacts.Run;

/** The bill of quantities of a design: what is bought and built, counted from its data. Pure. */
final class Quantities {

    private static final double SPARE_WIRE = 1.10;

    private Quantities() {}

    /** @param lead usual working days from order to delivery, least to most (common practice); empty for small things */
    record Line(String group, String what, double amount, String unit, String lead) {}

    static List<Line> of(DesignFacts design) {
        List<Line> lines = new ArrayList<>();
        counted(design.arrays(), array -> array.module().name(), array -> array.modules())
                .forEach((name, n) -> lines.add(new Line("Modules", name, n, "modules", "5 to 60")));
        counted(design.inverters(), inverter -> inverter.type().name(), inverter -> 1)
                .forEach((name, n) -> lines.add(new Line("Inverters", name, n, "inverters", "5 to 60")));
        racking(design, lines);
        design.combiners()
                .forEach(box -> lines.add(new Line(
                        "Gear",
                        "Combiner " + box.mark() + ", " + box.circuits() + " circuits",
                        1,
                        "pieces",
                        "5 to 90")));
        design.devices()
                .forEach(device -> lines.add(new Line(
                        "Gear",
                        "%s %s, %.0f A, %.0f V"
                                .formatted(device.mark(), device.name(), device.ratedA(), device.ratedV()),
                        1,
                        "pieces",
                        device.ratedA() > 400 ? "90 to 500" : "5 to 90")));
        wire(design, lines);
        conduit(design, lines);
        if (!design.labels().isEmpty()) {
            lines.add(
                    new Line("Labels", "Labels by the schedule", design.labels().size(), "labels", ""));
        }
        return lines;
    }

    private static void racking(DesignFacts design, List<Line> lines) {
        var racking = design.racking();
        if (racking != null && racking.posts() != null && racking.posts() > 0) {
            String length = racking.postLengthFt() == null ? "" : ", %.1f ft".formatted(racking.postLengthFt());
            lines.add(new Line("Racking", "Posts" + length, racking.posts(), "posts", "10 to 60"));
        }
        for (Mounting mounting : Mounting.values()) {
            int modules = design.arrays().stream()
                    .filter(array -> array.mounting() == mounting)
                    .mapToInt(DesignFacts.PvArray::modules)
                    .sum();
            if (modules > 0) {
                lines.add(new Line("Racking", "Racking, " + mounting.words(), modules, "modules", "10 to 60"));
            }
        }
    }

    private static <T> Map<String, Integer> counted(
            List<T> all, java.util.function.Function<T, String> name, java.util.function.ToIntFunction<T> amount) {
        Map<String, Integer> counted = new LinkedHashMap<>();
        all.forEach(one -> counted.merge(name.apply(one), amount.applyAsInt(one), Integer::sum));
        return counted;
    }

    /** Feet of each conductor, with a tenth to spare. A run of strings counts for every string of its array. */
    private static void wire(DesignFacts design, List<Line> lines) {
        Map<String, Double> feet = new LinkedHashMap<>();
        for (Run run : design.runs()) {
            double each = run.lengthFt() * times(design, run) * SPARE_WIRE;
            feet.merge(
                    "%s %s %s"
                            .formatted(
                                    run.size(),
                                    run.material().symbol(),
                                    run.insulation().words()),
                    each * run.conductors(),
                    Double::sum);
            if (run.groundSize() != null) {
                String metal = run.groundMaterial() == null
                        ? "Cu"
                        : run.groundMaterial().symbol();
                feet.merge("%s %s ground".formatted(run.groundSize(), metal), each, Double::sum);
            }
        }
        feet.forEach((name, all) -> lines.add(new Line("Wire", name, Math.ceil(all / 10) * 10, "ft", "")));
    }

    /** The run drawn for one string stands for all of its array that have no run of their own. */
    private static long times(DesignFacts design, Run run) {
        if (run.flow() != DesignFacts.Flow.DC_STRING) {
            return 1;
        }
        return design.strings().stream()
                .filter(string -> string.mark().equals(run.from()))
                .findFirst()
                .map(first -> design.strings().stream()
                        .filter(string -> string.array().equals(first.array()))
                        .filter(string -> string.mark().equals(run.from())
                                || design.runs().stream()
                                        .noneMatch(other -> other.from().equals(string.mark())))
                        .count())
                .orElse(1L);
    }

    private static void conduit(DesignFacts design, List<Line> lines) {
        Map<String, Double> feet = new LinkedHashMap<>();
        design.runs().stream()
                .filter(run -> run.raceway().isConduit() && run.racewaySize() != null)
                .forEach(run ->
                        feet.merge(run.racewaySize() + " in " + run.raceway().words(), run.lengthFt(), Double::sum));
        feet.forEach((name, all) -> lines.add(new Line("Conduit", name, Math.ceil(all / 10) * 10, "ft", "")));
        double trench = trenchFt(design);
        if (trench > 0) {
            lines.add(new Line("Earthwork", "Trench", trench, "ft", ""));
        }
        double bore = boreFt(design);
        if (bore > 0) {
            lines.add(new Line("Earthwork", "Bore", bore, "ft", ""));
        }
    }

    /** Buried runs beside one another share a trench: those with the same two ends count once. */
    static double trenchFt(DesignFacts design) {
        return buried(design, false);
    }

    /** What lies under a street or a driveway is bored. */
    static double boreFt(DesignFacts design) {
        return buried(design, true);
    }

    private static double buried(DesignFacts design, boolean bored) {
        Map<String, Double> ways = new LinkedHashMap<>();
        design.runs().stream()
                .filter(run -> run.coverIn() != null)
                .filter(run -> bored == ("UNDER_STREETS_AND_DRIVEWAYS".equals(run.under())))
                .forEach(run -> ways.merge(run.from() + " " + run.to(), run.lengthFt(), Math::max));
        return ways.values().stream().mapToDouble(Double::doubleValue).sum();
    }
}
