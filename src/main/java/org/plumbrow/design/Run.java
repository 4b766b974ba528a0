package org.plumbrow.design;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.plumbrow.calc.electrical.ConductorMaterial;
import org.plumbrow.calc.electrical.Insulation;
import org.plumbrow.calc.electrical.Raceway;

/**
 * Conductors between two places.
 *
 * @param from mark of what it comes from (string, combiner, inverter, device)
 * @param to mark of where it goes, "POI" for the point of interconnection
 * @param size of each current-carrying conductor, "10", "2/0", "250"
 * @param conductors current-carrying ones in this run, of one set
 * @param groundSize of the equipment ground
 * @param ambientC of the hottest part of the way; null: the design's high
 * @param coverIn of earth over it where it is buried; null above ground
 * @param under what it lies under where buried: field, driveway, building
 * @param terminalC 60, 75 or 90: marking of the terminals
 * @param parallel sets side by side, each in its own raceway; null for one
 */
public record Run(
        String mark,
        Flow flow,
        String from,
        String to,
        double lengthFt,
        String size,
        ConductorMaterial material,
        Insulation insulation,
        int conductors,
        @Nullable String groundSize,
        @Nullable ConductorMaterial groundMaterial,
        Raceway raceway,
        @Nullable String racewaySize,
        @Nullable Double ambientC,
        @Nullable Double coverIn,
        @Nullable String under,
        int terminalC,
        List<String> crossings,
        @Nullable Integer parallel) {

    public Run {
        crossings = List.copyOf(crossings);
    }

    public int sets() {
        return parallel == null ? 1 : parallel;
    }

    /** The same way with other conductors. */
    public Run laidAs(
            String otherSize, @Nullable Integer sets, @Nullable String otherGround, @Nullable String otherRacewaySize) {
        return new Run(
                mark,
                flow,
                from,
                to,
                lengthFt,
                otherSize,
                material,
                insulation,
                conductors,
                otherGround,
                groundMaterial,
                raceway,
                otherRacewaySize,
                ambientC,
                coverIn,
                under,
                terminalC,
                crossings,
                sets);
    }
}
