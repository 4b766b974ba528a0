package org.plumbrow.design.draft;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.plumbrow.calc.duration.Mounting;
import org.plumbrow.design.equipment.Entry;
import org.plumbrow.design.equipment.EquipmentKind;
import org.plumbrow.design.part.Cells;
import org.plumbrow.design.part.Part;
import org.plumbrow.project.ProjectFacts;
import org.plumbrow.project.ProjectFacts.ArrayFacts;
import org.plumbrow.project.SiteLoad;
import org.plumbrow.survey.SurveyFacts;

/** What survey and contract know of a design before anybody has drawn: nothing is typed twice. Pure. */
final class KnownAtFirst {

    private static final int MODULES_IN_A_ROW = 18;

    private final ProjectFacts project;
    private final SurveyFacts survey;
    private final Map<EquipmentKind, Map<String, Entry>> equipment;

    private KnownAtFirst(ProjectFacts project, SurveyFacts survey, Map<EquipmentKind, Map<String, Entry>> equipment) {
        this.project = project;
        this.survey = survey;
        this.equipment = equipment;
    }

    static Map<Part, List<Cells>> of(
            ProjectFacts project, SurveyFacts survey, Map<EquipmentKind, Map<String, Entry>> equipment) {
        var known = new KnownAtFirst(project, survey, equipment);
        Map<Part, List<Cells>> parts = new EnumMap<>(Part.class);
        parts.put(Part.SITE, List.of(known.site()));
        parts.put(Part.ARRAYS, known.arrays());
        parts.put(Part.INVERTERS, known.inverters());
        parts.put(Part.CONNECTION, List.of(known.connection()));
        parts.values().removeIf(List::isEmpty);
        return parts;
    }

    private Cells site() {
        SurveyFacts.Service service = survey.service();
        return Cells.of(
                "service", service.type() == null ? null : service.type().name(),
                "highestV", service.highestLineV().orElse(null),
                "meterNumber",
                        Optional.ofNullable(service.meter().number())
                                .orElseGet(() -> project.site().meterNumbers().stream()
                                        .findFirst()
                                        .orElse("")),
                "mainA", service.mainA(),
                "busA", service.busA(),
                "interruptingKa", service.interruptingKa(),
                "faultKa", service.faultKa(),
                "conductorA", service.conductorA(),
                "transformerKva", service.transformer().kva(),
                "transformerNumber", service.transformer().number());
    }

    private List<Cells> arrays() {
        List<Cells> rows = new ArrayList<>();
        for (ArrayFacts array : project.contract().arrays()) {
            int modules = array.modules() == null ? 0 : array.modules();
            if (modules > 0) {
                rows.add(array(array, modules, rows.size() + 1));
            }
        }
        return rows;
    }

    private Cells array(ArrayFacts array, int modules, int number) {
        boolean ground = array.mounting() == Mounting.GROUND;
        return Cells.of(
                "mark",
                "A" + number,
                "name",
                array.mounting().words(),
                "mounting",
                array.mounting().name(),
                "onDwelling",
                !ground && isHome(),
                "tiltDeg",
                array.tiltDeg(),
                "azimuthDeg",
                array.azimuthDeg() == null ? 180 : array.azimuthDeg(),
                "module",
                module(array),
                "portrait",
                true,
                "modulesHigh",
                ground ? 2 : 1,
                "modulesWide",
                wide(ground ? (modules + 1) / 2 : modules),
                "rowPitchFt",
                null,
                "setbackFt",
                ground ? null : 3);
    }

    /** Rows of at most eighteen beside one another, as alike as can be. */
    private static String wide(int columns) {
        int rows = Math.max(1, (columns + MODULES_IN_A_ROW - 1) / MODULES_IN_A_ROW);
        List<String> wide = new ArrayList<>();
        for (int row = 0; row < rows; row++) {
            wide.add(Integer.toString(columns / rows + (row < columns % rows ? 1 : 0)));
        }
        return String.join(", ", wide);
    }

    private String module(ArrayFacts array) {
        double watts = array.moduleW() == null ? 0 : array.moduleW().doubleValue();
        return equipment.get(EquipmentKind.MODULE).values().stream()
                .filter(entry -> !entry.ended() && Math.abs(entry.module().powerW() - watts) < 0.5)
                .map(Entry::name)
                .findFirst()
                .orElse("");
    }

    private List<Cells> inverters() {
        Integer count = project.contract().inverters();
        double kw = project.contract().inverterKwAc() == null
                ? 0
                : project.contract().inverterKwAc().doubleValue();
        String type = equipment.get(EquipmentKind.INVERTER).values().stream()
                .filter(entry -> !entry.ended() && Math.abs(entry.inverter().powerKwAc() - kw) < 0.05)
                .filter(this::fitsTheService)
                .map(Entry::name)
                .findFirst()
                .orElse("");
        List<Cells> rows = new ArrayList<>();
        for (int number = 1; count != null && number <= Math.min(40, count) && !type.isEmpty(); number++) {
            rows.add(Cells.of("mark", "INV " + number, "type", type, "array", "A1"));
        }
        return rows;
    }

    private boolean fitsTheService(Entry entry) {
        var service = survey.service().type();
        return service == null || Math.abs(entry.inverter().acV() - service.lineV()) < 0.05 * service.lineV();
    }

    private Cells connection() {
        SurveyFacts.Generator generator = survey.service().generator();
        boolean there =
                Boolean.TRUE.equals(generator.present()) || project.site().generator();
        return Cells.of(
                "kind", project.site().supplySideTap() ? "SUPPLY_SIDE_TAP" : "BREAKER_AT_FAR_END",
                "dwelling", isHome(),
                "place", survey.service().interconnection(),
                "generator", there,
                "generatorKva", generator.kva(),
                "switchKind", generator.switchKind(),
                "switchPlace", generator.place());
    }

    private boolean isHome() {
        return project.site().loads().equals(java.util.Set.of(SiteLoad.HOME));
    }
}
