package org.plumbrow.design.draft;

import java.util.ArrayList;
import java.util.List;
import org.plumbrow.calc.duration.Mounting;
import org.plumbrow.design.ConnectionKind;
import org.plumbrow.design.DesignFacts;
import org.plumbrow.design.part.Cells;

/** Labels and plaques that follow from a design. */
final class ProposedLabels {

    private final DesignFacts design;

    ProposedLabels(DesignFacts design) {
        this.design = design;
    }

    /** What NEC 690.13, 690.31, 690.56, 705.10 and 110.21 ask for; wording as the office wants it. */
    List<Cells> rows() {
        List<Cells> rows = new ArrayList<>();
        double output =
                design.inverters().stream().mapToDouble(one -> one.type().acA()).sum();
        double volts = design.inverters().isEmpty()
                ? 240
                : design.inverters().get(0).type().acV();
        rows.add(label(
                "AC disconnect", "Photovoltaic AC disconnect, %.0f A, %.0f V".formatted(output, volts), "NEC 690.13"));
        rows.add(label(
                "Inverters", "Photovoltaic DC disconnect, highest voltage as the string sheet says", "NEC 690.13"));
        rows.add(label("Conduit of DC", "Photovoltaic power source", "NEC 690.31"));
        rows.add(label("Service", "Directory of all sources, with the places of their disconnects", "NEC 705.10"));
        if (design.connection().kind() == ConnectionKind.BREAKER_AT_FAR_END) {
            rows.add(label("Breaker of the array", "Do not relocate this overcurrent device", "NEC 705.12(B)"));
        }
        if (design.arrays().stream().anyMatch(array -> array.mounting() != Mounting.GROUND)) {
            rows.add(label(
                    "Outside, at the service",
                    "Solar system with rapid shutdown, with its initiator",
                    "NEC 690.56(C)"));
        }
        return rows;
    }

    private static Cells label(String place, String text, String clause) {
        return Cells.of("place", place, "text", text, "clause", clause);
    }
}
