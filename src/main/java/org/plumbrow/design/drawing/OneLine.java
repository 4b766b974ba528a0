package org.plumbrow.design.drawing;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.plumbrow.design.DesignFacts;
import org.plumbrow.design.PlacedInverter;

/**
 * The one-line diagram: source circuits at the left, inverters, what stands between them and the service, and the service
 * at the right. Its schedules and notes follow below or on further sheets.
 */
final class OneLine {

    private static final double MOST_COLUMNS_BESIDE_SOURCES = 5;
    private static final double GAP = 16;
    private static final double BESIDE = 24;

    private final Circuits circuits;
    private final DesignFacts facts;
    private final Tree tree;
    private final List<Node> roots;

    OneLine(DesignFacts facts) {
        this.facts = facts;
        this.circuits = new Circuits(facts);
        this.tree = new Tree(circuits);
        this.roots = tree.roots();
    }

    List<Drawn> sheets() {
        int depth = roots.stream().mapToInt(Node::depth).max().orElse(0);
        boolean apart = depth > MOST_COLUMNS_BESIDE_SOURCES - (facts.combiners().isEmpty() ? 0 : 1);
        List<Canvas> canvases = new ArrayList<>();
        if (apart) {
            diagrams(canvases, Columns.sources(facts), depth);
        }
        double below = diagrams(canvases, apart ? Columns.service(depth) : Columns.whole(facts, depth), depth);
        Flow flow = new Flow(
                canvases.remove(canvases.size() - 1), Frame.LEFT, below + GAP, ServiceStack.LEFT - BESIDE - Frame.LEFT);
        flow.table(DataSheets.modules(facts));
        flow.table(DataSheets.inverters(facts));
        flow.table(Schedules.devices(facts));
        flow.table(Schedules.runs(circuits));
        flow.notes("Notes", OneLineNotes.of(circuits));
        canvases.addAll(flow.canvases());
        return Drawn.all("one-line", "One-line diagram", "E", Drawn.NOT_TO_SCALE, says(), canvases);
    }

    /** @return lower edge of the last diagram */
    private double diagrams(List<Canvas> canvases, Columns columns, int depth) {
        Diagram diagram = new Diagram(circuits, columns, new ServiceStack(circuits, tree));
        double bottom = Frame.TOP;
        for (List<String> part : parts(diagram)) {
            Canvas canvas = new Canvas();
            bottom = diagram.draw(canvas, Tree.with(roots, part), Frame.TOP);
            canvases.add(canvas);
        }
        return bottom;
    }

    /** Inverters in the order of the diagram, as many on a sheet as it holds. */
    private List<List<String>> parts(Diagram diagram) {
        Map<String, Double> heights = new LinkedHashMap<>();
        double least = diagram.leastRow(roots);
        roots.stream()
                .flatMap(Node::all)
                .map(Node::inverter)
                .filter(inverter -> inverter != null)
                .forEach(inverter -> heights.put(inverter.mark(), Math.max(least, diagram.rowHeight(inverter))));
        List<List<String>> parts = new ArrayList<>();
        double used = Double.MAX_VALUE;
        for (Map.Entry<String, Double> entry : heights.entrySet()) {
            if (used + entry.getValue() > Frame.BOTTOM - Frame.TOP) {
                parts.add(new ArrayList<>());
                used = Diagram.HEAD;
            }
            parts.get(parts.size() - 1).add(entry.getKey());
            used += entry.getValue();
        }
        if (parts.isEmpty()) {
            parts.add(List.of());
        }
        return parts;
    }

    private String says() {
        List<String> inverters =
                facts.inverters().stream().map(PlacedInverter::mark).toList();
        return "%s feed %s (%s), which meet the service by a %s at %s."
                .formatted(
                        Say.count(facts.strings().size(), "string", "strings"),
                        Say.count(inverters.size(), "inverter", "inverters"),
                        String.join(", ", inverters),
                        Say.connection(facts.connection().kind()),
                        facts.connection().place());
    }
}
