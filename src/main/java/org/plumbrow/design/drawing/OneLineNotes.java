package org.plumbrow.design.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.plumbrow.calc.electrical.Busbar;
import org.plumbrow.calc.electrical.Overcurrent;
import org.plumbrow.design.Connection;
import org.plumbrow.design.DesignFacts;
import org.plumbrow.design.Generator;
import org.plumbrow.design.ServicePoint;

/** What the one-line says in words: the connection's rule with its figures, short circuit, grounding, generator, climate. */
final class OneLineNotes {

    private OneLineNotes() {}

    static List<String> of(Circuits circuits) {
        DesignFacts facts = circuits.facts();
        List<String> notes = new ArrayList<>();
        notes.add(connection(circuits));
        notes.add(service(facts.service()));
        notes.add(shortCircuit(facts.service()));
        notes.add(
                "Equipment grounding conductors stand with each run in the conductor schedule. The service's grounding"
                        + " electrode is found and confirmed on site.");
        generator(facts.generator()).ifPresent(notes::add);
        notes.add(climate(facts));
        notes.add(
                "Voltage drop: strings at operating voltage and current of standard conditions, alternating current at the"
                        + " inverters' continuous output and power factor 1.");
        notes.add("Code edition: " + facts.codeEdition().words() + ".");
        return notes;
    }

    private static String connection(Circuits circuits) {
        DesignFacts facts = circuits.facts();
        Connection connection = facts.connection();
        String how = "Connection: " + Say.connection(connection.kind()) + ", " + connection.place() + ". ";
        String sources = "Output of the inverters %s A, other sources %s A."
                .formatted(Say.figure(circuits.outputA()), Say.figure(connection.otherSourcesA()));
        String others = connection.otherDevicesA() == null
                ? ""
                : " Other breakers on the bus, in sum " + Say.of(connection.otherDevicesA(), "A") + ".";
        return how
                + (connection.dwelling() ? "A one- or two-family house. " : "")
                + sources
                + others
                + circuits.rule().map(rule -> " " + rule(rule, circuits)).orElse("");
    }

    private static String rule(Busbar.Rule rule, Circuits circuits) {
        return rule.clause() + ": " + rule.words()
                + load(rule, circuits)
                        .map(load -> ", %s A of %s A".formatted(Say.figure(load.usedA()), Say.figure(load.allowedA())))
                        .orElse("")
                + ".";
    }

    private static Optional<Busbar.Load> load(Busbar.Rule rule, Circuits circuits) {
        ServicePoint service = circuits.facts().service();
        Connection connection = circuits.facts().connection();
        double output = circuits.outputA() + connection.otherSourcesA();
        Double main = connection.newMainA() == null ? service.mainA() : connection.newMainA();
        return switch (rule) {
            case SUPPLY_SIDE ->
                Optional.ofNullable(service.conductorA()).map(known -> Busbar.supplySide(known, output));
            case SUM_OF_DEVICES ->
                service.busA() == null || connection.otherDevicesA() == null
                        ? Optional.empty()
                        : Optional.of(Busbar.sumOfDevices(
                                service.busA(), connection.otherDevicesA() + breaker(connection, output)));
            case ANYWHERE, FAR_END, CENTER_FED ->
                service.busA() == null || main == null
                        ? Optional.empty()
                        : Optional.of(Busbar.with(rule, service.busA(), main, output));
        };
    }

    private static double breaker(Connection connection, double outputA) {
        return connection.breakerA() == null ? Overcurrent.CONTINUOUS * outputA : connection.breakerA();
    }

    private static String service(ServicePoint service) {
        return "Service: %s; highest voltage read %s; bus %s, main %s, service conductors %s. The utility wants its disconnect within %s of the meter."
                .formatted(
                        service.type() == null ? Say.UNKNOWN : service.type().words(),
                        Say.of(service.highestV(), "V"),
                        Say.of(service.busA(), "A"),
                        Say.of(service.mainA(), "A"),
                        Say.of(service.conductorA(), "A"),
                        service.disconnectAtMostFt() + " ft");
    }

    private static String shortCircuit(ServicePoint service) {
        return "Short circuit: available at the service %s, the gear interrupts %s; each device's rating stands in the equipment schedule."
                .formatted(Say.of(service.faultKa(), "kA"), Say.of(service.interruptingKa(), "kA"));
    }

    private static Optional<String> generator(@org.jspecify.annotations.Nullable Generator generator) {
        return Optional.ofNullable(generator)
                .map(known ->
                        "Generator %s, %s, %s. The array meets the service on the %s side of the transfer switch. %s"
                                .formatted(
                                        Say.of(known.kva(), "kVA"),
                                        known.switchKind(),
                                        known.place(),
                                        known.arrayOnUtilitySide() ? "utility's" : "load",
                                        known.interlock().isBlank()
                                                ? "How they are kept apart: not said yet."
                                                : known.interlock()));
    }

    private static String climate(DesignFacts facts) {
        return "Voltage in the cold at %s, heat for conductors %s; source: %s."
                .formatted(
                        Say.of(facts.designLowC(), "°C"),
                        Say.of(facts.designHighC(), "°C"),
                        facts.temperatureSource() == null ? Say.UNKNOWN : facts.temperatureSource());
    }
}
