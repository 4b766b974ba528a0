package org.plumbrow.design.drawing;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.plumbrow.design.DesignFacts;
import org.plumbrow.design.InverterType;
import org.plumbrow.design.ModuleType;
import org.plumbrow.design.PlacedInverter;
import org.plumbrow.design.PvArray;

/** Modules and inverters as their data sheets tell them, each kind once. */
final class DataSheets {

    private DataSheets() {}

    static Table modules(DesignFacts facts) {
        return new Table(
                "Modules, at standard test conditions; change with each kelvin of the cell",
                List.of(
                        "Module",
                        "Power",
                        "Voc, Vmp",
                        "Isc, Imp",
                        "Change of Voc, Vmp",
                        "of power, of Isc",
                        "Cells",
                        "Largest fuse",
                        "Bears",
                        "Cell at 800 W/m²"),
                facts.arrays().stream()
                        .map(PvArray::module)
                        .distinct()
                        .map(DataSheets::module)
                        .toList());
    }

    private static List<String> module(ModuleType module) {
        return List.of(
                module.name(),
                Say.of(module.powerW(), "W"),
                Say.figure(module.vocV()) + ", " + Say.of(module.vmpV(), "V"),
                Say.figure(module.iscA()) + ", " + Say.of(module.impA(), "A"),
                change(module.vocTempPercentPerC()) + ", " + change(module.vmpTempPercentPerC()),
                change(module.pmaxTempPercentPerC()) + ", " + change(module.iscTempPercentPerC()),
                String.valueOf(module.cellsInSeries()),
                Say.of(module.maxSeriesFuseA(), "A"),
                Say.of(module.maxSystemV(), "V"),
                Say.of(module.noctC(), "°C"));
    }

    private static String change(@Nullable Double percent) {
        return percent == null
                ? Say.UNKNOWN
                : Say.rounded(percent, 3).replaceAll("0+$", "").replaceAll("\\.$", "") + " %";
    }

    static Table inverters(DesignFacts facts) {
        return new Table(
                "Inverters",
                List.of(
                        "Inverter",
                        "Output",
                        "Bears DC",
                        "Works from, to",
                        "Full power from, to",
                        "Inputs × strings",
                        "Each input, in a short circuit",
                        "Efficiency",
                        "Rapid shutdown",
                        "Arc fault"),
                facts.inverters().stream()
                        .map(PlacedInverter::type)
                        .distinct()
                        .map(DataSheets::inverter)
                        .toList());
    }

    private static List<String> inverter(InverterType type) {
        return List.of(
                type.name(),
                "%s kW, %s, %s V, %s A"
                        .formatted(
                                Say.figure(type.powerKwAc()),
                                Say.count(type.phases(), "phase", "phases"),
                                Say.figure(type.acV()),
                                Say.figure(type.acA())),
                Say.of(type.maxDcV(), "V"),
                Say.figure(type.mpptFromV()) + " to " + Say.of(type.mpptToV(), "V"),
                Say.figure(type.fullFromV()) + " to " + Say.of(type.fullToV(), "V"),
                type.inputs() + " × " + type.stringsPerInput(),
                Say.of(type.inputMaxA(), "A") + ", " + Say.of(type.inputShortCircuitA(), "A"),
                Say.of(type.efficiencyPercent(), "%"),
                type.rapidShutdown() ? "yes" : "no",
                type.arcFault() ? "yes" : "no");
    }
}
