package org.plumbrow.design.equipment;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.plumbrow.design.part.Col;
import org.plumbrow.web.Option;

/** What the catalogue lists, with the fields of a data sheet. */
public enum EquipmentKind {
    MODULE(
            "modules",
            Col.text("name", "Name", "generic, no maker's name").must(),
            Col.figure("powerW", "Power", 50, 900, "W").must(),
            Col.figure("vocV", "Open-circuit voltage", 5, 200, "V").must(),
            Col.figure("vmpV", "Voltage at most power", 5, 200, "V").must(),
            Col.figure("iscA", "Short-circuit current", 0.5, 30, "A").must(),
            Col.figure("impA", "Current at most power", 0.5, 30, "A").must(),
            Col.figure("vocPercent", "Open-circuit voltage, change", -1, 0, "% for each kelvin")
                    .saying("empty: the code's table counts"),
            Col.figure("vmpPercent", "Voltage at most power, change", -1, 0, "% for each kelvin")
                    .saying("empty: that of power counts"),
            Col.figure("pmaxPercent", "Most power, change", -1, 0, "% for each kelvin")
                    .must(),
            Col.figure("iscPercent", "Short-circuit current, change", 0, 1, "% for each kelvin")
                    .must(),
            Col.count("cellsInSeries", "Cells in series", 10, 200, "cells").must(),
            Col.figure("maxSeriesFuseA", "Largest series fuse", 5, 60, "A").must(),
            Col.figure("maxSystemV", "Highest system voltage", 300, 2000, "V").must(),
            Col.figure("noctC", "Nominal operating cell temperature", 30, 60, "°C")
                    .must(),
            Col.count("longSideMm", "Long side", 300, 3000, "mm").must(),
            Col.count("shortSideMm", "Short side", 300, 2000, "mm").must()),
    INVERTER(
            "inverters",
            Col.text("name", "Name", "generic, no maker's name").must(),
            Col.figure("powerKwAc", "Power", 0.2, 500, "kW AC").must(),
            Col.choice("phases", "Phases", List.of(new Option("1", "1"), new Option("3", "3")))
                    .must(),
            Col.figure("acV", "Voltage, line to line", 100, 1000, "V").must(),
            Col.figure("maxDcV", "Highest DC voltage", 50, 2000, "V").must(),
            Col.figure("mpptFromV", "Inputs work from", 10, 2000, "V").must(),
            Col.figure("mpptToV", "Inputs work to", 10, 2000, "V").must(),
            Col.figure("fullFromV", "Full power from", 10, 2000, "V").must(),
            Col.figure("fullToV", "Full power to", 10, 2000, "V").must(),
            Col.count("inputs", "Inputs that find their own best voltage", 1, 60, "inputs")
                    .must(),
            Col.count("stringsPerInput", "Strings landed on one input", 1, 40, "strings")
                    .must(),
            Col.figure("inputMaxA", "Operating current of an input", 1, 500, "A")
                    .must(),
            Col.figure("inputShortCircuitA", "Short-circuit current into an input", 1, 800, "A")
                    .must(),
            Col.figure("efficiencyPercent", "Weighted efficiency", 80, 100, "%").must(),
            Col.yesNo("rapidShutdown", "Brings roof conductors down by itself").must(),
            Col.yesNo("arcFault", "Detects arcs").must());

    private final String words;
    private final List<Col> cols;

    EquipmentKind(String words, Col... cols) {
        this.words = words;
        this.cols = List.of(cols);
    }

    /** In the plural. */
    public String words() {
        return words;
    }

    public List<Col> cols() {
        return cols;
    }

    public String slug() {
        return name().toLowerCase(Locale.ROOT) + "s";
    }

    public static Optional<EquipmentKind> of(String slug) {
        return Arrays.stream(values()).filter(kind -> kind.slug().equals(slug)).findFirst();
    }
}
