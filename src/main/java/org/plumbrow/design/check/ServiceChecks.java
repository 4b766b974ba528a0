package org.plumbrow.design.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.plumbrow.calc.electrical.Busbar;
import org.plumbrow.calc.electrical.Check;
import org.plumbrow.calc.electrical.ConductorCase;
import org.plumbrow.calc.electrical.ConnectionCase;
import org.plumbrow.calc.electrical.ConnectionChecks;
import org.plumbrow.calc.electrical.Service;
import org.plumbrow.calc.electrical.Verdict;
import org.plumbrow.calc.electrical.VoltageRise;
import org.plumbrow.design.DesignFacts;
import org.plumbrow.design.DesignFacts.Device;
import org.plumbrow.design.DesignFacts.Flow;

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
        checks.addAll(ConnectionChecks.of(connection(design, service)));
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

    static ConnectionCase connection(DesignFacts design, Service service) {
        var at = design.connection();
        double output = design.inverters().stream()
                .mapToDouble(inverter -> inverter.type().acA())
                .sum();
        Double devices =
                at.otherDevicesA() == null || at.breakerA() == null ? null : at.otherDevicesA() + at.breakerA();
        Optional<Device> disconnect =
                design.devices().stream().filter(Device::utilityDisconnect).findFirst();
        return new ConnectionCase(
                service,
                rule(at),
                output,
                at.otherSourcesA(),
                design.kwAc(),
                design.service().busA(),
                at.newMainA() == null ? design.service().mainA() : at.newMainA(),
                at.breakerA(),
                devices,
                design.service().conductorA(),
                lowestInterruptingKa(design),
                design.service().faultKa(),
                design.service().transformerKva(),
                disconnect.map(Device::toMeterFt).orElse(null),
                ConnectionCase.USUAL_MOST_FT,
                disconnect.map(Device::utilityLetter).orElse(false));
    }

    private static Busbar.Rule rule(DesignFacts.Connection at) {
        return switch (at.kind()) {
            case BREAKER_AT_FAR_END -> Busbar.Rule.FAR_END;
            case BREAKER_ANYWHERE -> Busbar.Rule.ANYWHERE;
            case BY_SUM_OF_DEVICES -> Busbar.Rule.SUM_OF_DEVICES;
            case CENTER_FED_PANEL -> Busbar.Rule.CENTER_FED;
            case SUPPLY_SIDE_TAP -> Busbar.Rule.SUPPLY_SIDE;
        };
    }

    /** The gear of the service and every device that says its own. */
    private static @Nullable Double lowestInterruptingKa(DesignFacts design) {
        Double gear = design.service().interruptingKa();
        double lowest = gear == null ? Double.MAX_VALUE : gear;
        for (Device device : design.devices()) {
            if (device.interruptingKa() != null) {
                lowest = Math.min(lowest, device.interruptingKa());
            }
        }
        return lowest == Double.MAX_VALUE ? null : lowest;
    }

    /** The longest chain of alternating runs counts by the sum of what each adds, inverter to point of interconnection. */
    private static Check rise(DesignFacts design, Service service) {
        Double highest = design.service().highestV();
        if (highest == null) {
            return Check.cannotTell(
                    "Voltage at the inverter at full output",
                    "ANSI C84.1",
                    List.of("highest voltage read at the service"));
        }
        double rise = design.inverters().stream()
                .mapToDouble(inverter -> riseFrom(design, inverter.mark(), 0))
                .max()
                .orElse(0);
        return VoltageRise.atInverter(service, highest, rise);
    }

    private static double riseFrom(DesignFacts design, String mark, int steps) {
        return steps > 20
                ? 0
                : design.runs().stream()
                        .filter(run -> run.flow() == Flow.AC && run.from().equals(mark))
                        .mapToDouble(run -> Cases.conductors(design, run)
                                        .map(ConductorCase::drop)
                                        .map(drop -> drop.volts())
                                        .orElse(0.0)
                                + riseFrom(design, run.to(), steps + 1))
                        .max()
                        .orElse(0);
    }
}
