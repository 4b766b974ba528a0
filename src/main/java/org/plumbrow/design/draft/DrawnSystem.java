package org.plumbrow.design.draft;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.plumbrow.calc.duration.Mounting;
import org.plumbrow.design.DesignFacts;
import org.plumbrow.design.InverterType;
import org.plumbrow.design.PlacedInverter;
import org.plumbrow.design.PvArray;
import org.plumbrow.design.PvString;
import org.plumbrow.estimate.DesignedSystem;
import org.plumbrow.project.Projects;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;

/**
 * The system as it is drawn, for the estimate: the newest frozen revision, before there is one the draft. Inverters of one
 * type with the same modules are one group, as each of them makes the same.
 */
@Component
@Transactional(readOnly = true)
class DrawnSystem implements DesignedSystem {

    private static final double M_PER_FT = 0.3048;
    private static final double LEAST_EFFICIENCY = 0.8;

    private final DesignRows rows;
    private final RevisionRows revisions;
    private final Designs designs;
    private final Projects projects;

    DrawnSystem(DesignRows rows, RevisionRows revisions, Designs designs, Projects projects) {
        this.rows = rows;
        this.revisions = revisions;
        this.designs = designs;
        this.projects = projects;
    }

    /** An inverter's type and the modules it has of each array. */
    private record Load(InverterType type, Map<String, Integer> modules) {}

    @Override
    public Optional<Designed> of(UUID projectId) {
        Optional<Revision> frozen = revisions.newest(projectId);
        if (frozen.isPresent()) {
            return designed(frozen.get().facts());
        }
        return rows.request(projectId).isEmpty()
                ? Optional.empty()
                : designed(designs.draft(projects.factsUnchecked(projectId)).facts());
    }

    static Optional<Designed> designed(DesignFacts design) {
        if (design.modules() == 0 || design.inverters().isEmpty()) {
            return Optional.empty();
        }
        String source = design.isDraft() ? "the draft of the design" : "design revision " + design.revision();
        return Optional.of(new Designed(source, isStrungWhole(design) ? byInverter(design) : allTogether(design)));
    }

    /** Whether every module hangs on a string of an inverter that is there. */
    private static boolean isStrungWhole(DesignFacts design) {
        return design.arrays().stream()
                .allMatch(array -> design.strings().stream()
                                .filter(string -> string.array().equals(array.mark()))
                                .filter(string ->
                                        design.inverter(string.inverter()).isPresent())
                                .mapToInt(PvString::modules)
                                .sum()
                        == array.modules());
    }

    private static List<Group> byInverter(DesignFacts design) {
        Map<Load, List<PlacedInverter>> alike = new LinkedHashMap<>();
        for (PlacedInverter inverter : design.inverters()) {
            Map<String, Integer> modules = new LinkedHashMap<>();
            design.stringsOf(inverter.mark())
                    .forEach(string -> modules.merge(string.array(), string.modules(), Integer::sum));
            if (!modules.isEmpty()) {
                alike.computeIfAbsent(new Load(inverter.type(), modules), load -> new ArrayList<>())
                        .add(inverter);
            }
        }
        List<Group> groups = new ArrayList<>();
        alike.forEach((load, inverters) -> groups.add(group(design, load, inverters)));
        return groups;
    }

    private static Group group(DesignFacts design, Load load, List<PlacedInverter> inverters) {
        String name = inverters.size() == 1
                ? inverters.get(0).mark()
                : "%d inverters like %s"
                        .formatted(inverters.size(), inverters.get(0).mark());
        List<Array> arrays = design.arrays().stream()
                .filter(array -> load.modules().containsKey(array.mark()))
                .map(array -> array(array, name, load.modules().get(array.mark()) * inverters.size()))
                .toList();
        return new Group(name, load.type().powerKwAc() * inverters.size(), efficiency(load.type()), arrays);
    }

    /** As long as the strings are not all drawn, nobody knows which array feeds which inverter. */
    private static List<Group> allTogether(DesignFacts design) {
        double efficiency = design.inverters().stream()
                .mapToDouble(inverter -> efficiency(inverter.type()))
                .average()
                .orElseThrow();
        String name = design.inverters().size() == 1
                ? design.inverters().get(0).mark()
                : design.inverters().size() + " inverters";
        List<Array> arrays = design.arrays().stream()
                .filter(array -> array.modules() > 0)
                .map(array -> array(array, name, array.modules()))
                .toList();
        return List.of(new Group(name, design.kwAc(), efficiency, arrays));
    }

    private static double efficiency(InverterType type) {
        return Math.min(1, Math.max(LEAST_EFFICIENCY, type.efficiencyPercent() / 100));
    }

    private static Array array(PvArray array, String inverters, int modules) {
        String name = array.name().isBlank() ? array.mark() : array.mark() + ", " + array.name();
        return new Array(
                modules == array.modules() ? name : name + ", on " + inverters,
                modules * array.module().powerW() / 1000,
                array.tiltDeg(),
                array.azimuthDeg(),
                array.mounting(),
                array.module().pmaxTempPercentPerC() / 100,
                shades(array) ? slopeM(array) : null,
                pitchM(array));
    }

    private static boolean shades(PvArray array) {
        return array.rows() > 1 && array.rowPitchFt() != null && array.mounting() != Mounting.PITCHED_ROOF;
    }

    private static double slopeM(PvArray array) {
        int side =
                array.portrait() ? array.module().longSideMm() : array.module().shortSideMm();
        return array.modulesHigh() * side / 1000.0;
    }

    private static @Nullable Double pitchM(PvArray array) {
        Double feet = array.rowPitchFt();
        return feet == null || !shades(array) ? null : (Double) (feet * M_PER_FT);
    }
}
