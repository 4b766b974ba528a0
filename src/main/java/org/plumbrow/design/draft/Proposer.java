package org.plumbrow.design.draft;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.plumbrow.calc.duration.Mounting;
import org.plumbrow.calc.electrical.BurialCover;
import org.plumbrow.calc.electrical.ConductorCase;
import org.plumbrow.calc.electrical.ConductorChecks;
import org.plumbrow.calc.electrical.ConductorMaterial;
import org.plumbrow.calc.electrical.ConductorSize;
import org.plumbrow.calc.electrical.ConduitFill;
import org.plumbrow.calc.electrical.Insulation;
import org.plumbrow.calc.electrical.Overcurrent;
import org.plumbrow.calc.electrical.Raceway;
import org.plumbrow.calc.electrical.StringCase;
import org.plumbrow.calc.electrical.StringVoltage;
import org.plumbrow.design.DesignFacts;
import org.plumbrow.design.DesignFacts.Flow;
import org.plumbrow.design.DesignFacts.PlacedInverter;
import org.plumbrow.design.DesignFacts.PvArray;
import org.plumbrow.design.DesignFacts.Run;
import org.plumbrow.design.check.Cases;
import org.plumbrow.design.part.Cells;
import org.plumbrow.design.part.Part;

/**
 * Proposes what follows from what is drawn already: strings from arrays and inverters, runs and devices from strings. A
 * proposal is shown, looked at and kept by a person; it is never kept by itself.
 */
final class Proposer {

    private static final double USUAL_STRING_RUN_FT = 100;
    private static final double USUAL_AC_RUN_FT = 50;
    private static final int USUAL_COVER_IN = 24;

    private final DesignFacts design;

    Proposer(DesignFacts design) {
        this.design = design;
    }

    /** Empty for a part about which nothing follows. */
    List<Cells> of(Part part) {
        return switch (part) {
            case STRINGS -> strings();
            case RUNS -> runs();
            case DEVICES -> devices();
            case LABELS -> new ProposedLabels(design).rows();
            default -> List.of();
        };
    }

    static boolean knows(Part part) {
        return part == Part.STRINGS || part == Part.RUNS || part == Part.DEVICES || part == Part.LABELS;
    }

    /** A place on an inverter's input. */
    private record Slot(PlacedInverter inverter, int input, int number) {
        String mark() {
            return inverter.mark().replaceAll("\\D+", "") + "." + input + "." + number;
        }

        String place() {
            return inverter.mark() + " input " + input;
        }
    }

    /** As few strings as the voltages allow, all of an array alike in length where its modules divide. */
    private List<Cells> strings() {
        List<Slot> free = slots();
        Map<String, String> landed = new HashMap<>();
        List<Cells> rows = new ArrayList<>();
        for (PvArray array : design.arrays()) {
            int first = 1;
            for (int length : lengths(array)) {
                Slot slot = take(free, array, length, landed);
                if (slot == null) {
                    return rows;
                }
                rows.add(Cells.of(
                        "mark", slot.mark(),
                        "array", array.mark(),
                        "inverter", slot.inverter().mark(),
                        "input", slot.input(),
                        "modules", length,
                        "firstModule", first,
                        "combiner", ""));
                first += length;
            }
        }
        return rows;
    }

    /** First each input's first string, then its second: so that inputs are loaded alike. */
    private List<Slot> slots() {
        List<Slot> slots = new ArrayList<>();
        int most = design.inverters().stream()
                .mapToInt(inverter -> inverter.type().stringsPerInput())
                .max()
                .orElse(0);
        int inputs = design.inverters().stream()
                .mapToInt(inverter -> inverter.type().inputs())
                .max()
                .orElse(0);
        for (int number = 1; number <= most; number++) {
            for (int input = 1; input <= inputs; input++) {
                for (PlacedInverter inverter : design.inverters()) {
                    if (input <= inverter.type().inputs()
                            && number <= inverter.type().stringsPerInput()) {
                        slots.add(new Slot(inverter, input, number));
                    }
                }
            }
        }
        return slots;
    }

    /**
     * The next free place: at the array's own inverters before others, and where nothing lies yet or strings just like this
     * one. Only when there is no such place any other one, which the checks will find.
     *
     * @param landed what lies on an input already
     */
    private static @Nullable Slot take(List<Slot> free, PvArray array, int length, Map<String, String> landed) {
        String like = array.mark() + " " + length;
        List<Slot> alike = free.stream()
                .filter(slot -> landed.getOrDefault(slot.place(), like).equals(like))
                .toList();
        List<Slot> offered = alike.isEmpty() ? free : alike;
        Slot slot = offered.stream()
                .filter(one -> array.mark().equals(one.inverter().array()))
                .findFirst()
                .or(() -> offered.stream().findFirst())
                .orElse(null);
        if (slot != null) {
            free.remove(slot);
            landed.put(slot.place(), like);
        }
        return slot;
    }

    /** Lengths that add up to the array's modules, within the voltages of the first inverter. */
    private List<Integer> lengths(PvArray array) {
        if (design.inverters().isEmpty() || array.modules() == 0) {
            return List.of();
        }
        int most = Math.max(1, longest(array));
        int strings = (array.modules() + most - 1) / most;
        int shorter = array.modules() / strings;
        int longer = array.modules() - shorter * strings;
        List<Integer> lengths = new ArrayList<>();
        for (int at = 0; at < strings; at++) {
            lengths.add(at < longer ? shorter + 1 : shorter);
        }
        return lengths;
    }

    private int longest(PvArray array) {
        return new StringCase(
                        "",
                        Cases.module(array.module()),
                        Cases.input(design.inverters().get(0).type()),
                        1,
                        1,
                        null,
                        design.designLowC() == null
                                ? StringVoltage.TABLE_ENDS_C
                                : Math.max(StringVoltage.TABLE_ENDS_C, design.designLowC()),
                        design.designHighC() == null ? 40 : design.designHighC(),
                        Cases.place(array),
                        array.mounting() == Mounting.PITCHED_ROOF)
                .mostInSeries();
    }

    /** One run of strings an array, one from each inverter to the panel of the array, one from there to the service. */
    private List<Cells> runs() {
        List<Cells> rows = new ArrayList<>();
        for (PvArray array : design.arrays()) {
            design.strings().stream()
                    .filter(string -> string.array().equals(array.mark()))
                    .findFirst()
                    .ifPresent(string -> rows.add(
                            sized(stringRun("R" + (rows.size() + 1), array, string.mark(), string.inverter()))));
        }
        boolean panel = design.inverters().size() > 1;
        for (PlacedInverter inverter : design.inverters()) {
            rows.add(sized(acRun("R" + (rows.size() + 1), inverter.mark(), panel ? "AC panel" : "POI", false)));
        }
        if (panel) {
            rows.add(sized(acRun("R" + (rows.size() + 1), "AC panel", "POI", true)));
        }
        return rows;
    }

    private static Run stringRun(String mark, PvArray array, String string, String inverter) {
        boolean ground = array.mounting() == Mounting.GROUND;
        return run(mark, Flow.DC_STRING, string, inverter, USUAL_STRING_RUN_FT, "10", 2, ground ? null : 60.0, null);
    }

    private Run acRun(String mark, String from, String to, boolean buried) {
        boolean ground = design.arrays().stream().anyMatch(array -> array.mounting() == Mounting.GROUND);
        int phases = design.inverters().isEmpty()
                ? 3
                : design.inverters().get(0).type().phases();
        return run(
                mark,
                Flow.AC,
                from,
                to,
                buried && ground ? 4 * USUAL_AC_RUN_FT : USUAL_AC_RUN_FT,
                "10",
                phases == 3 ? 3 : 2,
                null,
                buried && ground ? (double) USUAL_COVER_IN : null);
    }

    private static Run run(
            String mark,
            Flow flow,
            String from,
            String to,
            double feet,
            String size,
            int conductors,
            @Nullable Double ambientC,
            @Nullable Double coverIn) {
        return new Run(
                mark,
                flow,
                from,
                to,
                feet,
                size,
                ConductorMaterial.COPPER,
                Insulation.THWN_2,
                conductors,
                null,
                ConductorMaterial.COPPER,
                coverIn == null ? Raceway.EMT : Raceway.PVC_40,
                null,
                ambientC,
                coverIn,
                coverIn == null ? null : BurialCover.ELSEWHERE.name(),
                75,
                List.of());
    }

    /** The smallest size that passes, its device, ground and conduit. */
    private Cells sized(Run run) {
        DesignFacts asked = withRuns(run);
        Cells cells = cells(run);
        Optional<ConductorCase> question = Cases.conductors(asked, run);
        if (question.isEmpty()) {
            return cells;
        }
        double device = Overcurrent.sizeFor(question.get().designA()).orElse(0);
        ConductorCase guarded = question.get().protectedBy(run.flow() == Flow.AC ? device : null);
        ConductorSize size = ConductorChecks.smallest(guarded).orElse(ConductorSize.KCMIL_600);
        ConductorSize ground = ConductorChecks.leastGround(guarded.with(size)).orElse(size);
        var contents = List.of(
                new ConduitFill.Content(size, run.insulation(), run.conductors()),
                new ConduitFill.Content(ground, run.insulation(), 1));
        return cells.with("size", size.label())
                .with("groundSize", ground.label())
                .with(
                        "racewaySize",
                        ConduitFill.smallest(run.raceway(), contents).orElse(""));
    }

    private DesignFacts withRuns(Run run) {
        List<Run> runs = new ArrayList<>(design.runs());
        runs.removeIf(known -> known.mark().equals(run.mark()));
        runs.add(run);
        design.inverters()
                .forEach(inverter -> runs.add(acRun("to " + inverter.mark(), inverter.mark(), "AC panel", false)));
        return design.with(runs);
    }

    private static Cells cells(Run run) {
        return Cells.of(
                "mark", run.mark(),
                "flow", run.flow().name(),
                "from", run.from(),
                "to", run.to(),
                "lengthFt", run.lengthFt(),
                "size", run.size(),
                "material", run.material().name(),
                "insulation", run.insulation().name(),
                "conductors", run.conductors(),
                "groundMaterial", "COPPER",
                "raceway", run.raceway().name(),
                "ambientC", run.ambientC(),
                "coverIn", run.coverIn(),
                "under", run.under(),
                "terminalC", run.terminalC());
    }

    /** A breaker at each inverter, the array's panel, the disconnect that the utility asks for, the meter. */
    private List<Cells> devices() {
        List<Cells> rows = new ArrayList<>();
        double volts = design.inverters().isEmpty()
                ? 240
                : design.inverters().get(0).type().acV();
        double all = 0;
        for (PlacedInverter inverter : design.inverters()) {
            double amperes = inverter.type().acA();
            all += amperes;
            rows.add(device(
                    rows, "BREAKER", "Breaker of " + inverter.mark(), runFrom(inverter.mark()), sized(amperes), volts));
        }
        if (design.inverters().size() > 1) {
            rows.add(device(rows, "PANEL", "AC panel of the array", "", panelA(all), volts)
                    .with("mark", "AC panel"));
        }
        rows.add(device(rows, "FUSED_DISCONNECT", "AC disconnect of the array", runFrom("AC panel"), sized(all), volts)
                .with("utilityDisconnect", "yes")
                .with("whoMayOpen", "anybody"));
        rows.add(device(rows, "METER", "Production meter", "", sized(all), volts));
        return rows;
    }

    private String runFrom(String mark) {
        return design.runs().stream()
                .filter(run -> run.from().equals(mark))
                .map(Run::mark)
                .findFirst()
                .orElse("");
    }

    private static double sized(double amperes) {
        return Overcurrent.sizeFor(Overcurrent.CONTINUOUS * amperes).orElse(0);
    }

    private static double panelA(double amperes) {
        return Math.max(100, sized(amperes));
    }

    private static Cells device(List<Cells> rows, String kind, String name, String run, double amperes, double volts) {
        return Cells.of(
                "mark", "D" + (rows.size() + 1),
                "kind", kind,
                "name", name,
                "inRun", run,
                "ratedA", amperes,
                "ratedV", volts,
                "whoMayOpen", "qualified people",
                "utilityDisconnect", "no",
                "utilityLetter", "no");
    }
}
