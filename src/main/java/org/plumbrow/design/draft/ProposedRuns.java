package org.plumbrow.design.draft;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import org.plumbrow.calc.duration.Mounting;
import org.plumbrow.calc.electrical.ConductorCase;
import org.plumbrow.calc.electrical.ConductorChecks;
import org.plumbrow.calc.electrical.ConductorMaterial;
import org.plumbrow.calc.electrical.ConductorSize;
import org.plumbrow.calc.electrical.ConduitFill;
import org.plumbrow.calc.electrical.Insulation;
import org.plumbrow.calc.electrical.Overcurrent;
import org.plumbrow.calc.electrical.Raceway;
import org.plumbrow.calc.electrical.VoltageDrop;
import org.plumbrow.design.DesignFacts;
import org.plumbrow.design.Flow;
import org.plumbrow.design.PlacedInverter;
import org.plumbrow.design.PvArray;
import org.plumbrow.design.Run;
import org.plumbrow.design.check.Cases;
import org.plumbrow.design.check.Ways;
import org.plumbrow.design.part.Cells;
import org.plumbrow.survey.SurveyFacts;

/**
 * Runs that follow from strings, inverters and survey: the smallest conductors that pass, one after the other within the
 * limit of the voltage drop together. Pure.
 */
final class ProposedRuns {

    private static final int MOST_SETS = 6;
    /** Steps from size to size: more than all sizes of all runs of one way. */
    private static final int MOST_STEPS = 2_000;

    private static final String PANEL = "AC panel";
    private static final String SERVICE = "POI";

    private final DesignFacts design;
    private final SurveyedWay way;
    private final Map<String, String> lengthsFrom = new HashMap<>();

    ProposedRuns(DesignFacts design, SurveyFacts survey) {
        this.design = design;
        this.way = new SurveyedWay(survey);
    }

    List<Cells> rows() {
        List<Run> drawn = drawn();
        DesignFacts asked = design.with(drawn);
        List<Run> sized = drawn.stream().map(run -> smallest(asked, run)).toList();
        return together(sized).stream().map(this::cells).toList();
    }

    /** One run of strings an array, one from each inverter to the panel of the array, one from there to the service. */
    private List<Run> drawn() {
        List<Run> runs = new ArrayList<>();
        for (PvArray array : design.arrays()) {
            design.strings().stream()
                    .filter(string -> string.array().equals(array.mark()))
                    .findFirst()
                    .ifPresent(string -> runs.add(ofStrings(mark(runs), array, string.mark(), string.inverter())));
        }
        boolean panel = design.inverters().size() > 1;
        for (PlacedInverter inverter : design.inverters()) {
            runs.add(
                    panel
                            ? alternating(mark(runs), inverter.mark(), PANEL, way.inverterToPanel(), null)
                            : toService(mark(runs), inverter.mark(), false));
        }
        if (panel) {
            runs.add(toService(mark(runs), PANEL, isOnGround()));
        }
        return runs;
    }

    private static String mark(List<Run> before) {
        return "R" + (before.size() + 1);
    }

    private boolean isOnGround() {
        return design.arrays().stream().anyMatch(array -> array.mounting() == Mounting.GROUND);
    }

    private Run ofStrings(String mark, PvArray array, String string, String inverter) {
        boolean ground = array.mounting() == Mounting.GROUND;
        return run(mark, Flow.DC_STRING, string, inverter, way.arrayToInverter(), 2, ground ? null : 60.0, null);
    }

    private Run toService(String mark, String from, boolean ground) {
        return alternating(mark, from, SERVICE, way.toService(ground), way.coverIn(ground));
    }

    private Run alternating(String mark, String from, String to, SurveyedWay.Length length, @Nullable Double coverIn) {
        int phases = design.inverters().isEmpty()
                ? 3
                : design.inverters().get(0).type().phases();
        return run(mark, Flow.AC, from, to, length, phases == 3 ? 3 : 2, null, coverIn);
    }

    private Run run(
            String mark,
            Flow flow,
            String from,
            String to,
            SurveyedWay.Length length,
            int conductors,
            @Nullable Double ambientC,
            @Nullable Double coverIn) {
        lengthsFrom.put(mark, length.from());
        return new Run(
                mark,
                flow,
                from,
                to,
                length.feet(),
                ConductorSize.AWG_10.label(),
                ConductorMaterial.COPPER,
                Insulation.THWN_2,
                conductors,
                null,
                ConductorMaterial.COPPER,
                coverIn == null ? Raceway.EMT : Raceway.PVC_40,
                null,
                ambientC,
                coverIn,
                coverIn == null ? null : way.under().name(),
                75,
                List.of(),
                null);
    }

    /** The smallest size that passes, in as few sets as can be. */
    private static Run smallest(DesignFacts asked, Run run) {
        Optional<ConductorCase> question = guarded(asked, run);
        if (question.isEmpty()) {
            return run;
        }
        return IntStream.rangeClosed(1, MOST_SETS)
                .mapToObj(question.get()::inSets)
                .flatMap(sets -> ConductorChecks.smallest(sets).map(sets::with).stream())
                .filter(sized -> conduit(run, sized).isPresent())
                .findFirst()
                .map(found -> laid(run, found))
                .orElseGet(() -> laid(run, question.get().with(ConductorSize.KCMIL_600)));
    }

    /** Behind the device that its current asks for. */
    private static Optional<ConductorCase> guarded(DesignFacts asked, Run run) {
        return Cases.conductors(asked, run).map(question -> {
            double device = Overcurrent.sizeFor(question.designA()).orElse(0);
            return question.protectedBy(run.flow() == Flow.AC ? device : null);
        });
    }

    /** With that size, its ground and its conduit. */
    private static Run laid(Run run, ConductorCase sized) {
        return run.laidAs(
                sized.size().label(),
                sized.sets() == 1 ? null : sized.sets(),
                ground(sized).label(),
                conduit(run, sized).orElse(null));
    }

    private static ConductorSize ground(ConductorCase sized) {
        return ConductorChecks.leastGround(sized).orElse(sized.size());
    }

    /** Empty where the tables know no conduit for it. */
    private static Optional<String> conduit(Run run, ConductorCase sized) {
        return ConduitFill.smallest(
                run.raceway(),
                List.of(
                        new ConduitFill.Content(sized.size(), run.insulation(), run.conductors()),
                        new ConduitFill.Content(ground(sized), run.insulation(), 1)));
    }

    /** Runs of one way share its limit: while one loses too much, what loses most on it becomes thicker. */
    private List<Run> together(List<Run> sized) {
        List<Run> runs = new ArrayList<>(sized);
        for (int step = 0; step < MOST_STEPS; step++) {
            DesignFacts asked = design.with(runs);
            Optional<Run> weakest = Ways.whole(asked).stream()
                    .filter(whole -> whole.percent() > VoltageDrop.MOST_PERCENT)
                    .max(Comparator.comparingDouble(Ways.Whole::percent))
                    .flatMap(whole -> losesMost(asked, whole));
            Optional<Run> thicker = weakest.flatMap(run -> thicker(asked, run));
            if (thicker.isEmpty()) {
                return runs;
            }
            runs.replaceAll(run -> run.mark().equals(thicker.get().mark()) ? thicker.get() : run);
        }
        return runs;
    }

    private static Optional<Run> losesMost(DesignFacts asked, Ways.Whole whole) {
        return asked.runs().stream()
                .filter(run -> whole.way().runs().contains(run.mark()))
                .max(Comparator.comparingDouble(run -> Cases.conductors(asked, run)
                        .map(known -> known.drop().volts())
                        .orElse(0.0)));
    }

    /** The next size of the table that loses less; behind the last the thinnest of one more set. */
    private static Optional<Run> thicker(DesignFacts asked, Run run) {
        return guarded(asked, run)
                .flatMap(now -> IntStream.rangeClosed(now.sets(), MOST_SETS)
                        .mapToObj(now::inSets)
                        .flatMap(sets -> Arrays.stream(ConductorSize.values()).map(sets::with))
                        .filter(ConductorCase::isInTables)
                        .filter(larger -> larger.drop().volts() < now.drop().volts())
                        .filter(larger ->
                                carries(larger) && conduit(run, larger).isPresent())
                        .findFirst()
                        .map(larger -> laid(run, larger)));
    }

    private static boolean carries(ConductorCase larger) {
        return ConductorChecks.smallestForCurrent(larger)
                .filter(least -> least.circularMils() <= larger.size().circularMils())
                .isPresent();
    }

    private Cells cells(Run run) {
        return Cells.of(
                "mark",
                run.mark(),
                "flow",
                run.flow().name(),
                "from",
                run.from(),
                "to",
                run.to(),
                "lengthFt",
                run.lengthFt(),
                "lengthFrom",
                lengthsFrom.get(run.mark()),
                "size",
                run.size(),
                "material",
                run.material().name(),
                "insulation",
                run.insulation().name(),
                "conductors",
                run.conductors(),
                "sets",
                run.parallel(),
                "groundSize",
                run.groundSize(),
                "groundMaterial",
                ConductorMaterial.COPPER.name(),
                "raceway",
                run.raceway().name(),
                "racewaySize",
                run.racewaySize(),
                "ambientC",
                run.ambientC(),
                "coverIn",
                run.coverIn(),
                "under",
                run.under(),
                "terminalC",
                run.terminalC(),
                "crossings",
                run.to().equals(SERVICE) ? way.crossings() : "");
    }
}
