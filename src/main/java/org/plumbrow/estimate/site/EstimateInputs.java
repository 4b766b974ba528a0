package org.plumbrow.estimate.site;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.plumbrow.calc.duration.Mounting;
import org.plumbrow.calc.energy.ArraySection;
import org.plumbrow.calc.energy.Horizon;
import org.plumbrow.calc.energy.IncidenceModifier;
import org.plumbrow.calc.energy.Inverter;
import org.plumbrow.calc.energy.InverterGroup;
import org.plumbrow.calc.energy.ModuleTraits;
import org.plumbrow.calc.energy.Plane;
import org.plumbrow.calc.energy.Rows;
import org.plumbrow.estimate.DesignedSystem;
import org.plumbrow.estimate.EnergyInputs;

/**
 * Everything that a result is made from and that can change: what is hashed to know whether a result still stands. What
 * lies under a weather id never changes.
 *
 * @param source where the system comes from, as a sentence's object
 * @param horizon azimuth and elevation, degrees; empty where none is known or applied
 * @param remarks what was assumed
 */
record EstimateInputs(
        int model,
        UUID weatherId,
        boolean weatherChosen,
        boolean invented,
        @Nullable Double kmAway,
        String source,
        List<DesignedSystem.Group> groups,
        YieldTerms terms,
        List<Horizon.Reading> horizon,
        List<String> remarks) {

    /** Raised when the calculation changes, so that kept results are worked out anew. */
    static final int MODEL = 1;

    List<InverterGroup> calcGroups() {
        List<InverterGroup> all = new ArrayList<>();
        for (DesignedSystem.Group group : groups) {
            all.add(new InverterGroup(
                    group.name(),
                    new Inverter(group.kwAc(), group.efficiency()),
                    group.arrays().stream().map(this::section).toList()));
        }
        return all;
    }

    ArraySection section(DesignedSystem.Array array) {
        return new ArraySection(
                array.name(),
                array.kwDc(),
                new Plane(array.tiltDeg(), array.azimuthDeg()),
                new ModuleTraits(array.gammaPerK(), IncidenceModifier.USUAL),
                EnergyInputs.heating(array.mounting()),
                rows(array),
                horizon.isEmpty() ? Optional.empty() : Optional.of(new Horizon(horizon)));
    }

    private static Optional<Rows> rows(DesignedSystem.Array array) {
        Double width = array.rowWidthM();
        Double pitch = array.rowPitchM();
        return width == null || pitch == null || array.mounting() == Mounting.PITCHED_ROOF
                ? Optional.empty()
                : Optional.of(new Rows(width, pitch));
    }

    boolean rowsApplied() {
        return groups.stream()
                .flatMap(group -> group.arrays().stream())
                .anyMatch(array -> rows(array).isPresent());
    }
}
