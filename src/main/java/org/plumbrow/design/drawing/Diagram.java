package org.plumbrow.design.drawing;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.plumbrow.design.Device;
import org.plumbrow.design.InverterType;
import org.plumbrow.design.PlacedInverter;

/** Draws a part of the one-line: each inverter has a row, what it feeds stands in the middle of what feeds it. */
final class Diagram {

    /** Column heads. */
    static final double HEAD = 18;

    private static final double ABOVE = 22;
    private static final double BELOW = 22;
    private static final double BETWEEN = 10;

    private final Columns columns;
    private final ServiceStack service;
    private final Sources sources;
    private final Map<Node, Double> heights = new HashMap<>();

    Diagram(Circuits circuits, Columns columns, ServiceStack service) {
        this.columns = columns;
        this.service = service;
        this.sources = new Sources(circuits, columns);
    }

    double rowHeight(PlacedInverter inverter) {
        double own = ABOVE + BELOW + label(inverter).height() + BETWEEN;
        return columns.hasSources() ? Math.max(own, sources.height(inverter)) : own;
    }

    /** What the tallest device needs. */
    double leastRow(List<Node> roots) {
        return columns.hasService()
                ? devices(roots)
                        .mapToDouble(node -> ABOVE + BELOW + label(node).height() + BETWEEN)
                        .max()
                        .orElse(0)
                : 0;
    }

    private static Stream<Node> devices(List<Node> roots) {
        return roots.stream().flatMap(Node::all).filter(node -> node.inverter() == null);
    }

    private static Label label(PlacedInverter inverter) {
        InverterType type = inverter.type();
        return new Label(
                inverter.mark(),
                List.of(
                        type.name(),
                        Say.figure(type.powerKwAc()) + " kW, " + Say.figure(type.acA()) + " A",
                        Say.figure(type.acV()) + " V, " + (type.phases() == 3 ? "three phases" : "single phase"),
                        inverter.place()),
                Columns.INVERTER_WIDTH - 20);
    }

    private Label label(Node node) {
        Device device = node.device();
        if (device == null) {
            return new Label(node.mark(), List.of(), columns.labelWidth());
        }
        return new Label(
                Say.named(device),
                List.of(
                        Say.rating(device),
                        device.interruptingKa() == null ? "" : "interrupts " + Say.of(device.interruptingKa(), "kA"),
                        device.utilityDisconnect() ? "utility disconnect" : ""),
                columns.labelWidth());
    }

    /** @return lower edge of the rows; the service beside them may reach further down */
    double draw(Canvas canvas, List<Node> roots, double top) {
        heights.clear();
        heads(canvas, top);
        double bottom = rows(roots, top + HEAD);
        if (columns.hasService()) {
            wires(canvas, roots, service.draw(canvas, top + HEAD));
        }
        roots.forEach(root -> symbols(canvas, root, 0));
        return bottom;
    }

    private void heads(Canvas canvas, double top) {
        if (columns.hasSources()) {
            canvas.quiet(columns.sources(), top + 9, 8.5, Anchor.START, "Source circuits");
        }
        if (columns.combiner() >= 0) {
            canvas.quiet(columns.combiner(), top + 9, 8.5, Anchor.MIDDLE, "Combiners");
        }
        canvas.quiet(columns.inverter(), top + 9, 8.5, Anchor.MIDDLE, "Inverters");
        if (columns.hasService()) {
            canvas.quiet(columns.device(0), top + 9, 8.5, Anchor.MIDDLE, columns.count() > 0 ? "To the service" : "");
            canvas.quiet(ServiceStack.LEFT + 4, top + 9, 8.5, Anchor.START, "Service");
        }
        canvas.line(Frame.LEFT, top + 13, Frame.RIGHT, top + 13, Weight.HAIR);
    }

    /** Gives each thing its height on the sheet. */
    private double rows(List<Node> roots, double top) {
        double least = leastRow(roots);
        double y = top;
        for (Node root : roots) {
            y = rows(root, y, least);
        }
        return y;
    }

    private double rows(Node node, double top, double least) {
        if (node.feeders().isEmpty()) {
            PlacedInverter inverter = node.inverter();
            double row = inverter == null ? least : Math.max(least, rowHeight(inverter));
            double line = inverter != null && columns.hasSources() ? sources.middle(inverter) : ABOVE;
            heights.put(node, top + line);
            return top + row;
        }
        double y = top;
        for (Node feeder : node.feeders()) {
            y = rows(feeder, y, least);
        }
        heights.put(
                node,
                node.feeders().stream().mapToDouble(heights::get).average().orElse(top));
        return y;
    }

    private void wires(Canvas canvas, List<Node> roots, double arrival) {
        for (Node root : roots) {
            wire(canvas, root, 0, ServiceStack.LEFT, arrival, service.arrivalX());
        }
        if (!roots.isEmpty() && service.arrivalX() > 0) {
            new Symbols(canvas).joint(service.arrivalX(), arrival);
        }
    }

    /** From a thing to what it feeds: along, then up or down before the next column. */
    private void wire(Canvas canvas, Node node, int fromService, double turn, double y, double end) {
        double own = heights.get(node);
        double x = node.inverter() == null ? columns.device(fromService) : columns.inverter();
        if (node.linked()) {
            canvas.polyline(Weight.LINE, x, own, turn, own, turn, y, end, y);
            if (!node.run().isEmpty()) {
                balloon(canvas, x, turn, own, node.run());
            }
        }
        for (Node feeder : node.feeders()) {
            wire(canvas, feeder, fromService + 1, columns.edge(fromService), own, columns.device(fromService));
        }
    }

    /** Between the symbol and the turn. */
    private static void balloon(Canvas canvas, double x, double turn, double y, String mark) {
        double half = Letters.width(mark, 8, true) / 2 + 5;
        double middle = Math.min(x + 30 + half, turn - half - 2);
        new Symbols(canvas).balloon(middle, y, mark);
    }

    private void symbols(Canvas canvas, Node node, int fromService) {
        double y = heights.get(node);
        PlacedInverter inverter = node.inverter();
        Symbols symbols = new Symbols(canvas);
        if (inverter != null) {
            if (columns.hasSources()) {
                sources.draw(canvas, inverter, y);
            }
            symbols.inverter(columns.inverter(), y);
            label(inverter).draw(canvas, columns.inverter(), y + BELOW, Anchor.MIDDLE);
        } else if (columns.hasService()) {
            device(symbols, node, columns.device(fromService), y);
            label(node).draw(canvas, columns.device(fromService), y + BELOW, Anchor.MIDDLE);
        }
        node.feeders().forEach(feeder -> symbols(canvas, feeder, fromService + 1));
    }

    private static void device(Symbols symbols, Node node, double x, double y) {
        Device device = node.device();
        if (device == null) {
            symbols.joint(x, y);
            return;
        }
        switch (device.kind()) {
            case BREAKER -> symbols.breaker(x, y);
            case FUSED_DISCONNECT -> symbols.disconnect(x, y, true);
            case UNFUSED_DISCONNECT -> symbols.disconnect(x, y, false);
            case PANEL -> symbols.panel(x, y);
            case METER -> symbols.meter(x, y);
        }
    }
}
