package org.plumbrow.calc.electrical;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.stream.Stream;
import org.plumbrow.calc.electrical.Check.Input;

/**
 * A run of conductors step by step: terminals, conditions of use, device, small conductors, drop, ground, fill, cover. The
 * device is held against the corrected ampacity: the lesser of the corrected 90 °C figure and the terminals' column.
 */
public final class ConductorChecks {

    private ConductorChecks() {}

    public static List<Check> of(ConductorCase run) {
        List<Check> checks = new ArrayList<>(currents(run));
        if (!run.isInTables()) {
            return List.copyOf(checks);
        }
        checks.add(drop(run));
        checks.add(ground(run));
        fill(run).ifPresent(checks::add);
        cover(run).ifPresent(checks::add);
        return List.copyOf(checks);
    }

    /** The smallest size of its material that passes terminals, conditions of use, device and small-conductor rule. */
    public static Optional<ConductorSize> smallestForCurrent(ConductorCase run) {
        return sizes(run)
                .filter(ConductorChecks::carries)
                .map(ConductorCase::size)
                .findFirst();
    }

    /** The smallest that also keeps the drop within the house limit. */
    public static Optional<ConductorSize> smallest(ConductorCase run) {
        return sizes(run)
                .filter(ConductorChecks::carries)
                .filter(sized -> sized.drop().percent() <= VoltageDrop.MOST_PERCENT)
                .map(ConductorCase::size)
                .findFirst();
    }

    private static Stream<ConductorCase> sizes(ConductorCase run) {
        return Arrays.stream(ConductorSize.values()).map(run::with).filter(ConductorCase::isInTables);
    }

    private static boolean carries(ConductorCase run) {
        return currents(run).stream().noneMatch(check -> check.verdict() == Verdict.FAIL);
    }

    private static List<Check> currents(ConductorCase run) {
        OptionalDouble column = run.size().ampacity(run.material(), run.terminals());
        OptionalDouble ninety = run.size().ampacity(run.material(), TemperatureRating.C90);
        if (column.isEmpty() || ninety.isEmpty()) {
            String none = "%s: the table has no %s of %s."
                    .formatted(run.name(), run.size().words(), run.material().words());
            return List.of(Check.said(
                    run.name() + ": ampacity", "NEC Table 310.16", Verdict.FAIL, none, "Choose a larger size."));
        }
        List<Check> checks = new ArrayList<>();
        double columnA = run.sets() * column.getAsDouble();
        double ninetyA = run.sets() * ninety.getAsDouble();
        checks.add(terminals(run, columnA));
        checks.add(conditionsOfUse(run, ninetyA));
        device(run, Math.min(columnA, Ampacity.conditionsOfUse(ninetyA, run.ambientC(), run.conductors())))
                .ifPresent(checks::add);
        sideBySide(run).ifPresent(checks::add);
        smallConductor(run).ifPresent(checks::add);
        return checks;
    }

    /** Conductors side by side are 1/0 or larger; alike in length, material and size they share the current alike. */
    private static Optional<Check> sideBySide(ConductorCase run) {
        if (run.sets() == 1) {
            return Optional.empty();
        }
        ConductorSize least = ConductorSize.AWG_1_0;
        return Optional.of(Check.atLeast(
                run.name() + ": sets side by side",
                "NEC 310.10(G)",
                run.size().circularMils(),
                least.circularMils(),
                "cmil",
                List.of(
                        Input.of("sets", run.sets(), "sets"),
                        new Input("conductor", run.size().words()),
                        new Input("least side by side", least.words())),
                "Use at least " + least.words() + " in each set, or fewer sets."));
    }

    private static Check terminals(ConductorCase run, double columnA) {
        return Check.atLeast(
                run.name() + ": terminals",
                "NEC 110.14(C), Table 310.16",
                columnA,
                run.designA(),
                "A",
                List.of(
                        new Input(
                                "conductor",
                                run.size().words() + " " + run.material().words()),
                        Input.of("sets side by side", run.sets(), "sets"),
                        Input.of("column of the terminals", run.terminals().celsius(), "°C"),
                        Input.of("current without the quarter", run.maximumA(), "A"),
                        Input.of("with a quarter for continuous use", run.designA(), "A")),
                smallestByTerminals(run)
                        .map(size -> "Use at least " + size.words() + ".")
                        .orElse(
                                "No conductor of the tables carries it: lay more sets side by side, or divide the run."));
    }

    private static Optional<ConductorSize> smallestByTerminals(ConductorCase run) {
        return sizes(run)
                .map(ConductorCase::size)
                .filter(size -> run.sets()
                                * size.ampacity(run.material(), run.terminals()).orElse(0)
                        >= run.designA() - 1e-9)
                .findFirst();
    }

    private static Check conditionsOfUse(ConductorCase run, double ninetyA) {
        double corrected = Ampacity.conditionsOfUse(ninetyA, run.ambientC(), run.conductors());
        return Check.atLeast(
                run.name() + ": in its heat and company",
                "NEC 310.15(B)(1), 310.15(C)(1)",
                corrected,
                run.maximumA(),
                "A",
                List.of(
                        Input.of("90 °C column", ninetyA, "A"),
                        Input.of("ambient", run.ambientC(), "°C"),
                        new Input(
                                "factor for ambient",
                                Check.figure(Ampacity.ambientFactor(run.ambientC(), TemperatureRating.C90))),
                        Input.of("conductors that carry current", run.conductors(), "conductors"),
                        new Input("factor for company", Check.figure(Ampacity.bundlingFactor(run.conductors())))),
                "Use a larger conductor, fewer in one raceway, or a cooler way.");
    }

    private static Optional<Check> device(ConductorCase run, double correctedA) {
        if (run.deviceA() == null) {
            return Optional.empty();
        }
        OptionalInt largest = Overcurrent.largestFor(correctedA);
        List<Input> inputs = List.of(
                Input.of("corrected ampacity", correctedA, "A"),
                Input.of("device", run.deviceA(), "A"),
                Input.of("least device", run.designA(), "A"));
        if (run.deviceA() < run.designA() - 1e-9) {
            return Optional.of(Check.atLeast(
                    run.name() + ": its device",
                    "NEC 240.4, 240.6(A)",
                    run.deviceA(),
                    run.designA(),
                    "A",
                    inputs,
                    "Use a device of " + Overcurrent.sizeFor(run.designA()).orElse(0) + " A."));
        }
        return Optional.of(Check.atMost(
                run.name() + ": its device",
                "NEC 240.4(B), 240.6(A)",
                run.deviceA(),
                largest.orElse(0),
                "A",
                inputs,
                "The device does not protect the conductor: use a larger conductor or a smaller device."));
    }

    private static Optional<Check> smallConductor(ConductorCase run) {
        OptionalInt most = Ampacity.smallConductorMostA(run.size(), run.material());
        if (most.isEmpty() || run.deviceA() == null) {
            return Optional.empty();
        }
        return Optional.of(Check.atMost(
                run.name() + ": device of a small conductor",
                "NEC 240.4(D)",
                run.deviceA(),
                most.getAsInt(),
                "A",
                List.of(new Input(
                        "conductor", run.size().words() + " " + run.material().words())),
                "Use the next larger conductor."));
    }

    private static Check drop(ConductorCase run) {
        VoltageDrop.Result drop = run.drop();
        return Check.atMost(
                run.name() + ": voltage " + (run.isDc() ? "drop" : "rise"),
                "house rule (NEC 210.19 and 215.2, notes: 3 % and 5 % in all)",
                drop.percent(),
                VoltageDrop.MOST_PERCENT,
                "%",
                List.of(
                        Input.of("length one way", run.lengthFt(), "ft"),
                        Input.of("current", run.operatingA(), "A"),
                        Input.of("voltage", run.volts(), "V"),
                        new Input("resistance", "%.4g ohms a 1000 ft".formatted(drop.ohmsPerKft())),
                        Input.of("lost", drop.volts(), "V")),
                smallest(run)
                        .map(size -> size.words() + " keeps it within the limit.")
                        .orElse(
                                "No size of the table keeps it within the limit: lay more sets, shorten the run or raise the voltage."));
    }

    /**
     * The smallest equipment ground of a run. Alternating current: enlarged with the phases (NEC 250.122(B)), never larger
     * than they are (250.122(A)); beside several sets each raceway has a whole one (250.122(F)). Direct current of the array: an assumed device where there is none, and no enlargement
     * (690.45).
     *
     * @return empty above 1200 A, where the table ends
     */
    public static Optional<ConductorSize> leastGround(ConductorCase run) {
        Optional<ConductorSize> least = EquipmentGround.forDevice(guardA(run), run.groundMaterial());
        if (run.isDc()) {
            return least;
        }
        ConductorSize needed = smallestForCurrent(run).orElse(run.size());
        return least.flatMap(ground -> EquipmentGround.enlarged(ground, needed, run.size()))
                .map(ground -> run.sets() == 1
                                && run.groundMaterial() == run.material()
                                && ground.circularMils() > run.size().circularMils()
                        ? run.size()
                        : ground);
    }

    private static double guardA(ConductorCase run) {
        return run.deviceA() == null ? Overcurrent.sizeFor(run.designA()).orElse(6000) : run.deviceA();
    }

    private static Check ground(ConductorCase run) {
        String subject = run.name() + ": equipment ground";
        ConductorSize ground = run.ground();
        if (ground == null) {
            return Check.cannotTell(subject, "NEC 250.122", List.of("size of the equipment ground"));
        }
        return leastGround(run)
                .map(least -> ground(run, ground, least))
                .orElseGet(() -> Check.said(
                        subject,
                        "NEC 250.122",
                        Verdict.NEEDS_ENGINEER,
                        subject + ": the table ends at 1200 A.",
                        "A licensed engineer sizes it."));
    }

    private static Check ground(ConductorCase run, ConductorSize ground, ConductorSize least) {
        String material = " " + run.groundMaterial().words();
        return Check.atLeast(
                run.name() + ": equipment ground",
                run.isDc() ? "NEC Table 250.122, 690.45" : "NEC Table 250.122, 250.122(B)",
                ground.circularMils(),
                least.circularMils(),
                "cmil",
                List.of(
                        Input.of(run.deviceA() == null ? "device, assumed" : "device", guardA(run), "A"),
                        new Input("ground", ground.words() + material),
                        new Input("least", least.words() + material)),
                "Use at least " + least.words() + material + ".");
    }

    private static Optional<Check> fill(ConductorCase run) {
        if (!run.raceway().isConduit()) {
            return Optional.empty();
        }
        String subject = run.name() + ": conduit fill";
        String size = run.racewaySize();
        if (size == null) {
            return Optional.of(
                    Check.cannotTell(subject, "NEC chapter 9, Table 1", List.of("trade size of the conduit")));
        }
        List<ConduitFill.Content> contents = contents(run);
        OptionalDouble percent = ConduitFill.percent(run.raceway(), size, contents);
        if (percent.isEmpty()) {
            return Optional.of(Check.said(
                    subject,
                    "NEC chapter 9, Tables 1, 4, 5",
                    Verdict.NEEDS_ENGINEER,
                    subject + ": the tables here do not hold this conductor or conduit.",
                    "Take the areas from the maker's sheet."));
        }
        int count = contents.stream().mapToInt(ConduitFill.Content::count).sum();
        return Optional.of(Check.atMost(
                subject,
                "NEC chapter 9, Tables 1, 4, 5",
                percent.getAsDouble(),
                ConduitFill.mostPercent(count, run.nipple()),
                "%",
                List.of(
                        new Input("conduit", size + " in " + run.raceway().words()),
                        Input.of("conductors", count, "conductors, the ground included")),
                ConduitFill.smallest(run.raceway(), contents)
                        .map(larger -> larger + " in takes them.")
                        .orElse("Use two conduits.")));
    }

    private static List<ConduitFill.Content> contents(ConductorCase run) {
        List<ConduitFill.Content> contents = new ArrayList<>();
        contents.add(new ConduitFill.Content(run.size(), run.insulation(), run.conductors()));
        if (run.ground() != null) {
            contents.add(new ConduitFill.Content(run.ground(), run.insulation(), 1));
        }
        return contents;
    }

    private static Optional<Check> cover(ConductorCase run) {
        if (run.coverIn() == null) {
            return Optional.empty();
        }
        Check check = Check.atLeast(
                run.name() + ": cover",
                "NEC Table 300.5",
                run.coverIn(),
                run.location().leastIn(run.raceway()),
                "in",
                List.of(
                        new Input("lies in", run.raceway().words()),
                        new Input("where", run.location().words())),
                "Bury it deeper.");
        if (run.location() == BurialCover.UNDER_A_BUILDING && run.raceway() == Raceway.DIRECT_BURIED) {
            return Optional.of(check.but(Verdict.FAIL, "Under a building a cable lies in a raceway."));
        }
        boolean plowed = run.location() == BurialCover.ELSEWHERE && run.coverIn() < BurialCover.TILLED_FIELD_IN;
        return Optional.of(
                plowed && check.verdict() == Verdict.PASS
                        ? check.with(new Input(
                                "a plowed field wants", BurialCover.TILLED_FIELD_IN + " in (common practice)"))
                        : check);
    }
}
