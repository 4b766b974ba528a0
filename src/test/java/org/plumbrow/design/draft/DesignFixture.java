package org.plumbrow.design.draft;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.plumbrow.TestWorld;
import org.plumbrow.TestWorld.TestBranch;
import org.plumbrow.design.equipment.Catalogue;
import org.plumbrow.design.equipment.EquipmentKind;
import org.plumbrow.design.part.Cells;
import org.plumbrow.design.part.Part;
import org.plumbrow.survey.Surveys;
import org.springframework.stereotype.Component;

/** Designs for tests, drawn through the services. */
@Component
public class DesignFixture {

    private final TestWorld world;
    private final Catalogue catalogue;
    private final DesignEditing editing;
    private final Designs designs;
    private final Surveys surveys;

    DesignFixture(TestWorld world, Catalogue catalogue, DesignEditing editing, Designs designs, Surveys surveys) {
        this.world = world;
        this.catalogue = catalogue;
        this.editing = editing;
        this.designs = designs;
        this.surveys = surveys;
    }

    UUID module(TestBranch branch, String name) {
        return world.as(branch.designer(), () -> {
            catalogue.add(branch.id(), EquipmentKind.MODULE, moduleCells(name));
            return catalogue.list(branch.id(), EquipmentKind.MODULE).stream()
                    .filter(entry -> entry.name().equals(name))
                    .findFirst()
                    .orElseThrow()
                    .id();
        });
    }

    static Cells moduleCells(String name) {
        return Cells.of(
                "name",
                name,
                "powerW",
                430,
                "vocV",
                38.5,
                "vmpV",
                32.2,
                "iscA",
                14.1,
                "impA",
                13.4,
                "vocPercent",
                -0.25,
                "vmpPercent",
                -0.3,
                "pmaxPercent",
                -0.33,
                "iscPercent",
                0.045,
                "cellsInSeries",
                54,
                "maxSeriesFuseA",
                25,
                "maxSystemV",
                1500,
                "noctC",
                45,
                "longSideMm",
                1762,
                "shortSideMm",
                1134);
    }

    /** A ground mount of 180 modules with three inverters of 25 kW: ten strings of eighteen. */
    static Map<Part, List<Cells>> groundMount() {
        return Map.of(
                Part.SITE,
                List.of(Cells.of(
                        "designLowC",
                        -29,
                        "designHighC",
                        34,
                        "service",
                        "WYE_480_277",
                        "highestV",
                        484,
                        "mainA",
                        400,
                        "busA",
                        600,
                        "interruptingKa",
                        22,
                        "faultKa",
                        9.0,
                        "transformerKva",
                        150)),
                Part.ARRAYS,
                List.of(Cells.of(
                        "mark",
                        "A1",
                        "name",
                        "north field",
                        "mounting",
                        "GROUND",
                        "onDwelling",
                        "no",
                        "tiltDeg",
                        30,
                        "azimuthDeg",
                        180,
                        "module",
                        "Module 550 W",
                        "portrait",
                        "yes",
                        "modulesHigh",
                        2,
                        "modulesWide",
                        "18, 18, 18, 18, 18",
                        "rowPitchFt",
                        30,
                        "setbackFt",
                        20)),
                Part.INVERTERS,
                List.of(inverter(1), inverter(2), inverter(3)),
                Part.CONNECTION,
                List.of(Cells.of("kind", "BREAKER_AT_FAR_END", "breakerA", 125, "dwelling", "no", "generator", "no")));
    }

    /** The same at 208 V, where the currents are more than twice as large. */
    static Map<Part, List<Cells>> groundMountOfLowVoltage() {
        Map<Part, List<Cells>> parts = new HashMap<>(groundMount());
        parts.replaceAll((part, rows) -> switch (part) {
            case SITE -> List.of(rows.get(0).with("service", "WYE_208_120").with("highestV", 211));
            case INVERTERS ->
                rows.stream()
                        .map(row -> row.with("type", "Inverter 25 kW, 208 V"))
                        .toList();
            case CONNECTION -> List.of(rows.get(0).with("breakerA", 300));
            default -> rows;
        });
        return parts;
    }

    private static Cells inverter(int number) {
        return Cells.of("mark", "INV " + number, "type", "Inverter 25 kW, 480 V", "array", "A1", "place", "north end");
    }

    /** Begun with those parts, strings, runs and devices as proposed. */
    Designs.Draft drawn(TestBranch branch, UUID project, Map<Part, List<Cells>> parts) {
        return world.as(branch.designer(), () -> {
            editing.begin(project, null, parts);
            for (Part part : List.of(Part.STRINGS, Part.RUNS, Part.DEVICES, Part.LABELS)) {
                Designs.Draft draft = designs.draft(project);
                editing.keep(
                        project,
                        part,
                        draft.kept(part).version(),
                        new Proposer(draft.facts(), surveys.factsUnchecked(project)).of(part));
            }
            return designs.draft(project);
        });
    }
}
