package org.plumbrow.design.drawing;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.plumbrow.design.Combiner;
import org.plumbrow.design.PlacedInverter;
import org.plumbrow.design.PvString;

/** The direct current side of one inverter: equal source circuits together, their combiners, the wires to the inverter. */
final class Sources {

    private static final double ABOVE = 14;
    private static final double BELOW = 15;
    private static final double BETWEEN = 10;
    private static final double WIRE_FROM = 70;

    private final Circuits circuits;
    private final Columns columns;

    Sources(Circuits circuits, Columns columns) {
        this.circuits = circuits;
        this.columns = columns;
    }

    private Label label(Circuits.Group group) {
        PvString first = group.strings().get(0);
        double isc = circuits.module(first).map(module -> module.iscA()).orElse(0.0);
        int count = group.strings().size();
        String head = "%s of %d modules in series".formatted(Say.count(count, "string", "strings"), group.modules());
        String figures = "Voc cold %s, Isc %s A".formatted(Say.of(circuits.vocColdV(first), "V", 0), Say.figure(isc));
        List<String> marks = group.strings().stream().map(PvString::mark).toList();
        return new Label(
                head,
                List.of(figures, "Array " + group.array() + ": " + String.join(", ", marks)),
                Columns.SOURCE_WIDTH - 14);
    }

    private double height(Circuits.Group group) {
        double words = ABOVE + BELOW + label(group).height() + BETWEEN;
        return Math.max(
                words, combiner(group).map(Sources::label).map(Label::height).orElse(0.0) + 46);
    }

    private Optional<Combiner> combiner(Circuits.Group group) {
        return circuits.combiner(group.combiner());
    }

    private static Label label(Combiner combiner) {
        String fuses = combiner.fuseA() == null ? "no fuses" : "fuses " + Say.figure(combiner.fuseA()) + " A";
        return new Label(
                combiner.mark(),
                List.of(
                        Say.count(combiner.circuits(), "circuit", "circuits"),
                        fuses,
                        Say.figure(combiner.ratedV()) + " V, " + Say.figure(combiner.ratedA()) + " A"),
                90);
    }

    double height(PlacedInverter inverter) {
        return circuits.groups(inverter.mark()).stream()
                .mapToDouble(this::height)
                .sum();
    }

    /** From the top of the row to the inverter's own line. */
    double middle(PlacedInverter inverter) {
        List<Double> lines = lines(circuits.groups(inverter.mark()), 0);
        return lines.isEmpty() ? 22 : Math.max(22, (lines.get(0) + lines.get(lines.size() - 1)) / 2);
    }

    private List<Double> lines(List<Circuits.Group> groups, double top) {
        List<Double> lines = new ArrayList<>();
        double y = top;
        for (Circuits.Group group : groups) {
            lines.add(y + 22);
            y += height(group);
        }
        return lines;
    }

    void draw(Canvas canvas, PlacedInverter inverter, double y) {
        List<Circuits.Group> groups = circuits.groups(inverter.mark());
        List<Double> lines = lines(groups, y - middle(inverter));
        double turn = columns.inverter() - Columns.INVERTER_WIDTH / 2 + 6;
        Map<String, Double> combiners = new LinkedHashMap<>();
        for (int i = 0; i < groups.size(); i++) {
            group(canvas, groups.get(i), lines.get(i), y, turn, combiners);
        }
        combiners.forEach((mark, line) -> combined(canvas, mark, line, y, turn));
    }

    private void group(
            Canvas canvas, Circuits.Group group, double line, double y, double turn, Map<String, Double> combiners) {
        Symbols symbols = new Symbols(canvas);
        double x = columns.sources();
        Optional<Combiner> combiner = combiner(group);
        if (combiner.isPresent()) {
            String mark = combiner.get().mark();
            double at = combiners.computeIfAbsent(mark, first -> line);
            double before = columns.sources() + Columns.SOURCE_WIDTH;
            canvas.polyline(Weight.LINE, x + WIRE_FROM, line, before, line, before, at, columns.combiner(), at);
        } else {
            canvas.polyline(Weight.LINE, x + WIRE_FROM, line, turn, line, turn, y, columns.inverter(), y);
        }
        symbols.moduleString(x, line);
        String runs = Say.range(
                circuits.runsFrom(group.strings().stream().map(PvString::mark).toList()));
        if (!runs.isEmpty()) {
            symbols.balloon(x + 148, line, runs);
        }
        label(group).draw(canvas, x, line + BELOW, Anchor.START);
    }

    private void combined(Canvas canvas, String mark, double line, double y, double turn) {
        Combiner combiner = circuits.combiner(mark).orElseThrow();
        Symbols symbols = new Symbols(canvas);
        canvas.polyline(Weight.LINE, columns.combiner(), line, turn, line, turn, y, columns.inverter(), y);
        symbols.combiner(columns.combiner(), line, combiner.fuseA() != null);
        label(combiner).draw(canvas, columns.combiner(), line + 20, Anchor.MIDDLE);
        List<String> runs = circuits.runsFrom(List.of(mark));
        if (!runs.isEmpty()) {
            double half = Letters.width(Say.range(runs), 8, true) / 2 + 5;
            symbols.balloon(Math.min(columns.combiner() + 26 + half, turn - half), line, Say.range(runs));
        }
    }
}
