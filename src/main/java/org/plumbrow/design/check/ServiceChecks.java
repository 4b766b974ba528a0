package org.plumbrow.design.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.plumbrow.calc.electrical.Busbar;
import org.plumbrow.calc.electrical.Check;
import org.plumbrow.calc.electrical.Check.Input;
import org.plumbrow.calc.electrical.ConductorMaterial;
import org.plumbrow.calc.electrical.ConductorSize;
import org.plumbrow.calc.electrical.ConnectionCase;
import org.plumbrow.calc.electrical.ConnectionChecks;
import org.plumbrow.calc.electrical.Service;
import org.plumbrow.calc.electrical.Verdict;
import org.plumbrow.calc.electrical.VoltageRise;
import org.plumbrow.design.Connection;
import org.plumbrow.design.ConnectionKind;
import org.plumbrow.design.DesignFacts;
import org.plumbrow.design.Device;
import org.plumbrow.design.PlacedInverter;
import org.plumbrow.design.Run;

/** Where the array meets the service. */
final class ServiceChecks {

    private ServiceChecks() {}

    static List<Check> of(DesignFacts design) {
        Service service = design.service().type();
        if (service == null || design.inverters().isEmpty()) {
            return List.of(Check.cannotTell(
                    "Connection", "NEC 705", List.of(service == null ? "kind of the service" : "inverters")));
        }
        List<Check> checks = new ArrayList<>();
        checks.add(voltageFits(design, service));
        checks.addAll(connected(design, service));
        checks.addAll(tap(design));
        checks.add(rise(design, service));
        return checks;
    }

    /** Inverters feed the voltage and phases that are there; one phase on three is the utility's to allow. */
    private static Check voltageFits(DesignFacts design, Service service) {
        String subject = "Inverters and service";
        String clause = "maker's instructions; ANSI C84.1";
        var odd = design.inverters().stream()
                .filter(inverter -> Math.abs(inverter.type().acV() - service.lineV()) > 0.05 * service.lineV()
                        || (inverter.type().phases() == 3 && !service.isThreePhase()))
                .findFirst();
        if (odd.isPresent()) {
            return Check.said(
                    subject,
                    clause,
                    Verdict.FAIL,
                    "%s gives %.0f V in %d phases; the service is %s."
                            .formatted(
                                    odd.get().mark(),
                                    odd.get().type().acV(),
                                    odd.get().type().phases(),
                                    service.words()),
                    "Choose an inverter for this service, or a transformer that an engineer draws.");
        }
        boolean highLeg = service == Service.HIGH_LEG_240_120;
        return Check.said(
                subject,
                clause,
                highLeg ? Verdict.NEEDS_ENGINEER : Verdict.PASS,
                "Inverters and service: %d V line to line.".formatted(service.lineV()),
                highLeg
                        ? "A high leg: no inverter with a neutral on that leg; an engineer confirms the inverter."
                        : "");
    }

    /** What the bare figures do not say: whose panel it is, and that a smaller main has to carry the loads. */
    private static List<Check> connected(DesignFacts design, Service service) {
        return ConnectionChecks.of(connection(design, service)).stream()
                .map(check -> check.subject().equals("Busbar") ? asIntended(design, check) : check)
                .toList();
    }

    private static Check asIntended(DesignFacts design, Check check) {
        var at = design.connection();
        if (at.kind() == ConnectionKind.CENTER_FED_PANEL && !at.dwelling()) {
            return check.but(
                    Verdict.FAIL, "The rule for center-fed panels is for dwellings only: use another rule here.");
        }
        return at.newMainA() != null && check.verdict() == Verdict.PASS
                ? check.but(
                        Verdict.REMARK,
                        "With a smaller main: a load calculation has to show that %s A carry the loads."
                                .formatted(
                                        Input.of("", at.newMainA(), "").value().strip()))
                : check;
    }

    /** Conductors of a tap: not thinner than 6 AWG copper or 4 AWG aluminum, and short before their device. */
    private static List<Check> tap(DesignFacts design) {
        if (design.connection().kind() != ConnectionKind.SUPPLY_SIDE_TAP) {
            return List.of();
        }
        List<Check> checks = new ArrayList<>();
        for (Run run : design.runs()) {
            if (run.to().equals(Cases.POI)) {
                ConductorSize.of(run.size()).ifPresent(size -> checks.add(tapSize(run, size)));
                checks.add(tapLength(design, run));
            }
        }
        return checks;
    }

    private static Check tapSize(Run run, ConductorSize size) {
        ConductorSize least = run.material() == ConductorMaterial.COPPER ? ConductorSize.AWG_6 : ConductorSize.AWG_4;
        return Check.atLeast(
                "Tap ahead of the main: size of " + run.mark(),
                "NEC 705.11(B)",
                size.circularMils(),
                least.circularMils(),
                "cmil",
                List.of(
                        new Input(
                                "conductor", size.words() + " " + run.material().words()),
                        new Input("least", least.words())),
                "Use at least " + least.words() + " " + run.material().words() + ".");
    }

    private static Check tapLength(DesignFacts design, Run run) {
        double most = design.connection().dwelling() ? 10 : 16.5;
        Check check = Check.atMost(
                "Tap ahead of the main: length of " + run.mark(),
                "NEC 705.11(C)",
                run.lengthFt(),
                most,
                "ft",
                List.of(Input.of("length one way", run.lengthFt(), "ft")),
                "Indoors the device stands within that length of the tap; outdoors at the first place at hand.");
        return check.verdict() == Verdict.FAIL ? check.but(Verdict.REMARK, check.remedy()) : check;
    }

    /** The breaker in the panel, else the overcurrent device nearest to the tap. */
    private static @Nullable Double deviceA(DesignFacts design) {
        Double breaker = design.connection().breakerA();
        if (breaker != null) {
            return breaker;
        }
        List<Run> last =
                design.runs().stream().filter(run -> run.to().equals(Cases.POI)).toList();
        return design.devices().stream()
                .filter(Cases::opensByItself)
                .filter(device -> last.stream()
                        .anyMatch(run ->
                                run.mark().equals(device.inRun()) || run.from().equals(device.mark())))
                .map(Device::ratedA)
                .findFirst()
                .orElse(null);
    }

    static ConnectionCase connection(DesignFacts design, Service service) {
        var at = design.connection();
        double output = design.inverters().stream()
                .mapToDouble(inverter -> inverter.type().acA())
                .sum();
        Double devices =
                at.otherDevicesA() == null || at.breakerA() == null ? null : at.otherDevicesA() + at.breakerA();
        return new ConnectionCase(
                service,
                rule(at),
                output,
                at.otherSourcesA(),
                design.kwAc(),
                design.service().busA(),
                at.newMainA() == null ? design.service().mainA() : at.newMainA(),
                deviceA(design),
                devices,
                design.service().conductorA(),
                design.service().interruptingKa(),
                design.service().faultKa(),
                design.service().transformerKva());
    }

    /** The disconnect that the utility asks for stands near its meter. */
    static List<Check> disconnect(DesignFacts design) {
        Optional<Device> disconnect =
                design.devices().stream().filter(Device::utilityDisconnect).findFirst();
        return List.of(disconnect
                .map(device -> ConnectionChecks.disconnect(
                        device.toMeterFt(), design.service().disconnectAtMostFt(), device.utilityLetter()))
                .orElseGet(() -> Check.cannotTell(
                        "Disconnect to meter", "utility's rule", List.of("the disconnect that the utility asks for"))));
    }

    private static Busbar.Rule rule(Connection at) {
        return switch (at.kind()) {
            case BREAKER_AT_FAR_END -> Busbar.Rule.FAR_END;
            case BREAKER_ANYWHERE -> Busbar.Rule.ANYWHERE;
            case BY_SUM_OF_DEVICES -> Busbar.Rule.SUM_OF_DEVICES;
            case CENTER_FED_PANEL -> Busbar.Rule.CENTER_FED;
            case SUPPLY_SIDE_TAP -> Busbar.Rule.SUPPLY_SIDE;
        };
    }

    /** Of the inverter whose way to the service adds most; every way has to be known. */
    private static Check rise(DesignFacts design, Service service) {
        List<String> missing = new ArrayList<>();
        Double highest = design.service().highestV();
        if (highest == null) {
            missing.add("highest voltage read at the service");
        }
        double rise = 0;
        for (PlacedInverter inverter : design.inverters()) {
            Optional<Ways.Way> way = Ways.toService(design, inverter.mark());
            if (way.isEmpty()) {
                missing.add("runs from " + inverter.mark() + " to the point of interconnection");
            }
            rise = Math.max(rise, way.map(Ways.Way::volts).orElse(0.0));
        }
        return highest == null || !missing.isEmpty()
                ? Check.cannotTell("Voltage at the inverter at full output", "ANSI C84.1", missing)
                : VoltageRise.atInverter(service, highest, rise);
    }
}
