package org.plumbrow.design.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.function.BiConsumer;
import org.jspecify.annotations.Nullable;
import org.plumbrow.calc.electrical.Busbar;
import org.plumbrow.design.Connection;
import org.plumbrow.design.DesignFacts;
import org.plumbrow.design.DeviceKind;
import org.plumbrow.design.Generator;
import org.plumbrow.design.ServicePoint;

/** The customer's service from the utility at the top to the loads, with the place where the array meets it. */
final class ServiceStack {

    static final double LEFT = 952;

    private static final double MIDDLE = 1008;
    private static final double WORDS = 1034;
    private static final double LABEL_WIDTH = Frame.RIGHT - WORDS - 2;
    private static final double LEAST_STEP = 46;

    private final Circuits circuits;
    private final DesignFacts facts;
    private final Tree tree;
    private final List<Part> parts = new ArrayList<>();

    ServiceStack(Circuits circuits, Tree tree) {
        this.circuits = circuits;
        this.facts = circuits.facts();
        this.tree = tree;
        order();
    }

    private record Part(String what, Label label, BiConsumer<Symbols, Double> symbol) {}

    private void order() {
        part("utility", utility(), (symbols, y) -> symbols.arrowUp(MIDDLE, y - 12));
        part("transformer", transformer(), (symbols, y) -> symbols.transformer(MIDDLE, y));
        part("meter", meter(), (symbols, y) -> symbols.meter(MIDDLE, y));
        boolean ahead = facts.connection().kind().name().equals("SUPPLY_SIDE_TAP");
        Generator generator = facts.generator();
        boolean before = generator != null && !generator.arrayOnUtilitySide();
        if (ahead && !before) {
            connection();
        }
        if (before) {
            transfer(generator);
        }
        if (ahead && before) {
            connection();
        }
        part("main", main(), (symbols, y) -> symbols.standingBreaker(MIDDLE, y));
        part(
                "ground",
                label("Ground of the service", List.of("found and confirmed on site")),
                (symbols, y) -> symbols.sideGround(MIDDLE, y));
        bus(ahead);
        if (generator != null && !before) {
            transfer(generator);
        }
        part("loads", new Label("Loads", List.of(), LABEL_WIDTH), (symbols, y) -> symbols.arrowDown(MIDDLE, y + 10));
    }

    private void part(String what, Label label, BiConsumer<Symbols, Double> symbol) {
        parts.add(new Part(what, label, symbol));
    }

    private Label label(String head, List<String> lines) {
        return new Label(head, lines, LABEL_WIDTH);
    }

    private Label utility() {
        ServicePoint service = facts.service();
        String type = service.type() == null
                ? "service " + Say.UNKNOWN
                : service.type().words();
        return label(
                "Utility: " + facts.sheet().utility(),
                List.of(type, "Fault current " + Say.of(service.faultKa(), "kA")));
    }

    private Label transformer() {
        ServicePoint service = facts.service();
        String number = service.transformerNumber() == null ? "" : "No. " + service.transformerNumber();
        return label("Transformer", List.of(Say.of(service.transformerKva(), "kVA"), number));
    }

    private Label meter() {
        List<String> lines = new ArrayList<>();
        lines.add(
                facts.service().meterNumber() == null
                        ? "No. " + Say.UNKNOWN
                        : "No. " + facts.service().meterNumber());
        lines.addAll(devices(DeviceKind.METER));
        return label("Utility meter", lines);
    }

    private List<String> devices(DeviceKind kind) {
        return tree.serviceDevices(kind).stream().map(Say::named).toList();
    }

    private Label main() {
        ServicePoint service = facts.service();
        Double made = facts.connection().newMainA();
        return label(
                "Main " + Say.of(made == null ? service.mainA() : made, "A"),
                List.of(
                        made == null ? "" : "made smaller, was " + Say.of(service.mainA(), "A"),
                        "Interrupts " + Say.of(service.interruptingKa(), "kA")));
    }

    private void connection() {
        part("poi", poi(), (symbols, y) -> symbols.joint(MIDDLE, y));
    }

    private void bus(boolean ahead) {
        List<String> lines = new ArrayList<>(devices(DeviceKind.PANEL));
        part(
                ahead ? "bus" : "bus poi",
                label("Bus " + Say.of(facts.service().busA(), "A"), lines),
                (symbols, y) -> symbols.bar(MIDDLE - 44, MIDDLE + 18, y));
        if (!ahead) {
            part("note", poi(), (symbols, y) -> {});
        }
    }

    private Label poi() {
        Connection connection = facts.connection();
        List<String> lines = new ArrayList<>();
        lines.add(Say.connection(connection.kind()));
        if (connection.breakerA() != null) {
            lines.add("breaker " + Say.of(connection.breakerA(), "A"));
        }
        lines.add(connection.place());
        circuits.rule().map(Busbar.Rule::clause).ifPresent(lines::add);
        return label("Point of interconnection", lines);
    }

    private void transfer(@Nullable Generator generator) {
        if (generator == null) {
            return;
        }
        String side = generator.arrayOnUtilitySide()
                ? "The array meets the service on the utility's side of this switch."
                : "The array meets the service on the load side of this switch.";
        part(
                "transfer",
                label(
                        "Transfer switch",
                        List.of(
                                generator.switchKind() + ", " + generator.place(),
                                "Generator " + Say.of(generator.kva(), "kVA"),
                                side,
                                generator.interlock())),
                (symbols, y) -> {
                    symbols.transferSwitch(MIDDLE, y);
                    symbols.generatorBeside(MIDDLE - 20, y);
                });
    }

    private static double step(Part part) {
        return Math.max(LEAST_STEP, part.label().height() + 14);
    }

    /** @return height at which the array's conductor arrives */
    double draw(Canvas canvas, double top) {
        double first = top + 26;
        double last = first
                + parts.subList(0, parts.size() - 1).stream()
                        .mapToDouble(ServiceStack::step)
                        .sum();
        canvas.line(MIDDLE, first - 8, MIDDLE, last + 4, Weight.LINE);
        Symbols symbols = new Symbols(canvas);
        double y = first;
        double arrival = y;
        for (Part part : parts) {
            part.symbol().accept(symbols, y);
            part.label().draw(canvas, WORDS, y - 8, Anchor.START);
            if (part.what().endsWith("poi")) {
                arrival = y;
            }
            y += step(part);
        }
        return arrival;
    }

    /** Where the array's conductor ends, by how it is connected. */
    double arrivalX() {
        return parts.stream().anyMatch(part -> part.what().equals("poi")) ? MIDDLE : MIDDLE - 36;
    }
}
