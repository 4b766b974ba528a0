package org.plumbrow.design.draft;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.plumbrow.branch.PermitOfficeFacts.CodeEdition;
import org.plumbrow.calc.duration.Mounting;
import org.plumbrow.calc.electrical.ConductorMaterial;
import org.plumbrow.calc.electrical.Insulation;
import org.plumbrow.calc.electrical.Raceway;
import org.plumbrow.calc.electrical.Service;
import org.plumbrow.design.Combiner;
import org.plumbrow.design.Connection;
import org.plumbrow.design.ConnectionKind;
import org.plumbrow.design.DesignFacts;
import org.plumbrow.design.Device;
import org.plumbrow.design.DeviceKind;
import org.plumbrow.design.Flow;
import org.plumbrow.design.Generator;
import org.plumbrow.design.InverterType;
import org.plumbrow.design.Label;
import org.plumbrow.design.ModuleType;
import org.plumbrow.design.Obstruction;
import org.plumbrow.design.PlaceKind;
import org.plumbrow.design.Placed;
import org.plumbrow.design.PlacedInverter;
import org.plumbrow.design.PvArray;
import org.plumbrow.design.PvString;
import org.plumbrow.design.Racking;
import org.plumbrow.design.Run;
import org.plumbrow.design.ServicePoint;
import org.plumbrow.design.TitleBlock;
import org.plumbrow.design.part.Cells;
import org.plumbrow.design.part.DesignParts;
import org.plumbrow.design.part.Part;

/** Puts the facts of a design together from its parts as they are written. Rows that lack what they need are left out. */
final class DesignAssembly {

    private final DesignParts parts;
    private final Map<String, ModuleType> modules;
    private final Map<String, InverterType> inverters;

    DesignAssembly(DesignParts parts, Map<String, ModuleType> modules, Map<String, InverterType> inverters) {
        this.parts = parts;
        this.modules = modules;
        this.inverters = inverters;
    }

    /** What the design has from elsewhere. */
    record Head(
            UUID projectId,
            UUID branchId,
            long version,
            @Nullable String revision,
            TitleBlock sheet,
            CodeEdition codeEdition,
            @Nullable Integer disconnectMostFt) {}

    DesignFacts facts(Head head) {
        Cells site = parts.one(Part.SITE);
        return new DesignFacts(
                head.projectId(),
                head.branchId(),
                head.version(),
                head.revision(),
                head.sheet(),
                head.codeEdition(),
                site.number("designLowC"),
                site.number("designHighC"),
                site.orNull("temperatureSource"),
                service(site, head.disconnectMostFt()),
                all(Part.ARRAYS, this::array),
                all(Part.INVERTERS, this::inverter),
                all(Part.STRINGS, DesignAssembly::string),
                all(Part.COMBINERS, DesignAssembly::combiner),
                all(Part.RUNS, DesignAssembly::run),
                all(Part.DEVICES, DesignAssembly::device),
                connection(),
                generator(),
                parts.has(Part.RACKING) ? racking(parts.one(Part.RACKING)) : null,
                all(Part.LABELS, row -> new Label(row.text("place"), row.text("text"), row.text("clause"))),
                all(Part.PLAN, DesignAssembly::placed));
    }

    private static @Nullable Placed placed(Cells row) {
        PlaceKind kind = row.choice("kind", PlaceKind.class);
        return kind == null || row.spots("points").isEmpty()
                ? null
                : new Placed(kind, row.text("mark"), row.text("name"), row.spots("points"));
    }

    private <T> List<T> all(Part part, java.util.function.Function<Cells, @Nullable T> read) {
        return parts.of(part).stream().map(read).filter(Objects::nonNull).toList();
    }

    private static ServicePoint service(Cells site, @Nullable Integer disconnectMostFt) {
        return new ServicePoint(
                site.choice("service", Service.class),
                site.number("highestV"),
                site.orNull("meterNumber"),
                site.number("mainA"),
                site.number("busA"),
                site.number("interruptingKa"),
                site.number("faultKa"),
                site.number("conductorA"),
                site.number("transformerKva"),
                site.orNull("transformerNumber"),
                disconnectMostFt);
    }

    private @Nullable PvArray array(Cells row) {
        ModuleType module = modules.get(row.text("module"));
        Mounting mounting = row.choice("mounting", Mounting.class);
        if (module == null || mounting == null || row.list("modulesWide").isEmpty()) {
            return null;
        }
        return new PvArray(
                row.text("mark"),
                row.isEmpty("name") ? row.text("mark") : row.text("name"),
                mounting,
                row.yes("onDwelling"),
                row.number("tiltDeg", 0),
                row.number("azimuthDeg", 180),
                module,
                !row.text("portrait").equals("no"),
                row.whole("modulesHigh", 1),
                row.list("modulesWide"),
                row.number("rowPitchFt"),
                row.number("setbackFt"),
                row.number("planeLengthFt"),
                row.number("planeWidthFt"),
                parts.of(Part.OBSTRUCTIONS).stream()
                        .filter(one -> one.text("array").equals(row.text("mark")))
                        .map(DesignAssembly::obstruction)
                        .toList());
    }

    private static Obstruction obstruction(Cells row) {
        return new Obstruction(
                row.text("name"),
                row.number("rightFt", 0),
                row.number("upFt", 0),
                row.number("widthFt", 1),
                row.number("lengthFt", 1),
                row.number("heightFt", 0));
    }

    private @Nullable PlacedInverter inverter(Cells row) {
        InverterType type = inverters.get(row.text("type"));
        return type == null ? null : new PlacedInverter(row.text("mark"), type, row.orNull("array"), row.text("place"));
    }

    private static PvString string(Cells row) {
        return new PvString(
                row.text("mark"),
                row.text("array"),
                row.text("inverter"),
                row.whole("input", 1),
                row.whole("modules", 1),
                row.whole("firstModule", 1),
                row.orNull("combiner"));
    }

    private static Combiner combiner(Cells row) {
        return new Combiner(
                row.text("mark"),
                row.text("place"),
                row.whole("circuits", 1),
                row.number("fuseA"),
                row.number("ratedV", 0),
                row.number("ratedA", 0));
    }

    private static @Nullable Run run(Cells row) {
        Flow flow = row.choice("flow", Flow.class);
        ConductorMaterial material = row.choice("material", ConductorMaterial.class);
        Insulation insulation = row.choice("insulation", Insulation.class);
        Raceway raceway = row.choice("raceway", Raceway.class);
        if (flow == null || material == null || insulation == null || raceway == null) {
            return null;
        }
        return new Run(
                row.text("mark"),
                flow,
                row.text("from"),
                row.text("to"),
                row.number("lengthFt", 0),
                row.text("size"),
                material,
                insulation,
                row.whole("conductors", 2),
                row.orNull("groundSize"),
                row.choice("groundMaterial", ConductorMaterial.class),
                raceway,
                row.orNull("racewaySize"),
                row.number("ambientC"),
                row.number("coverIn"),
                row.orNull("under"),
                row.whole("terminalC", 75),
                words(row.text("crossings")),
                row.whole("sets"));
    }

    private static List<String> words(String between) {
        return Arrays.stream(between.split(";"))
                .map(String::strip)
                .filter(word -> !word.isEmpty())
                .toList();
    }

    private static @Nullable Device device(Cells row) {
        DeviceKind kind = row.choice("kind", DeviceKind.class);
        return kind == null
                ? null
                : new Device(
                        row.text("mark"),
                        kind,
                        row.text("name"),
                        row.orNull("inRun"),
                        row.number("ratedA", 0),
                        row.number("ratedV", 0),
                        row.number("interruptingKa"),
                        row.text("place"),
                        row.isEmpty("whoMayOpen") ? "qualified people" : row.text("whoMayOpen"),
                        row.yes("utilityDisconnect"),
                        row.number("toMeterFt"),
                        row.yes("utilityLetter"));
    }

    private Connection connection() {
        Cells row = parts.one(Part.CONNECTION);
        return new Connection(
                Optional.ofNullable(row.choice("kind", ConnectionKind.class)).orElse(ConnectionKind.BREAKER_AT_FAR_END),
                row.number("breakerA"),
                row.number("otherDevicesA"),
                row.number("otherSourcesA", 0),
                row.number("newMainA"),
                row.yes("dwelling"),
                row.text("place"));
    }

    private @Nullable Generator generator() {
        Cells row = parts.one(Part.CONNECTION);
        return row.yes("generator")
                ? new Generator(
                        row.number("generatorKva"),
                        row.text("switchKind"),
                        row.text("switchPlace"),
                        row.yes("arrayOnUtilitySide"),
                        row.text("interlock"))
                : null;
    }

    private static Racking racking(Cells row) {
        return new Racking(
                row.whole("posts"),
                row.number("postLengthFt"),
                row.number("embedmentIn"),
                row.number("exposedIn"),
                row.number("postSpacingFt"),
                row.number("frontClearanceIn"),
                row.number("windMph"),
                row.number("snowPsf"),
                row.number("frostIn"),
                row.number("siteWindMph"),
                row.number("siteSnowPsf"),
                row.number("siteFrostIn"),
                row.orNull("letterBy"),
                row.date("letterDate"),
                null);
    }
}
