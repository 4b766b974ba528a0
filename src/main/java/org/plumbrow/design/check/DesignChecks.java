package org.plumbrow.design.check;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.plumbrow.branch.PermitOfficeFacts.CodeEdition;
import org.plumbrow.calc.duration.Mounting;
import org.plumbrow.calc.electrical.Check;
import org.plumbrow.calc.electrical.RoofChecks;
import org.plumbrow.calc.electrical.StringCase;
import org.plumbrow.calc.electrical.StringChecks;
import org.plumbrow.calc.electrical.Verdict;
import org.plumbrow.design.DesignFacts;
import org.plumbrow.design.InverterType;
import org.plumbrow.design.PlacedInverter;
import org.plumbrow.design.PvArray;
import org.plumbrow.design.PvString;
import org.plumbrow.design.part.Part;

/** Holds a whole design against the rules: a planning aid, a licensed person decides. Pure. */
public final class DesignChecks {

    private static final String HOUSE = "house rule";

    /** Counted where the voltage in the cold is not known: above every limit from which a rule asks for something. */
    private static final double UNKNOWN_V = 1000;

    private DesignChecks() {}

    /**
     * Checks that belong together.
     *
     * @param part where their cause is changed
     */
    public record Group(String title, Part part, List<Check> checks) {
        public Group {
            checks = List.copyOf(checks);
        }

        private Group in(CodeEdition edition) {
            return new Group(
                    title,
                    part,
                    checks.stream()
                            .map(check -> EditionClauses.in(edition, check))
                            .toList());
        }
    }

    /** All groups of a design; a group without anything to judge is left out. */
    public static List<Group> of(DesignFacts design) {
        List<Group> groups = new ArrayList<>();
        groups.add(new Group("Strings and inputs", Part.STRINGS, strings(design)));
        groups.add(new Group("Conductor runs", Part.RUNS, RunChecks.of(design)));
        groups.add(new Group("Combiners and devices", Part.DEVICES, DeviceChecks.of(design)));
        groups.add(new Group("Connection to the service", Part.CONNECTION, ServiceChecks.of(design)));
        groups.add(new Group("Disconnect", Part.DEVICES, ServiceChecks.disconnect(design)));
        groups.add(new Group("Roof rules", Part.INVERTERS, roof(design)));
        groups.add(new Group("Structure", Part.RACKING, StructureChecks.of(design)));
        groups.add(new Group("Setbacks", Part.ARRAYS, StructureChecks.setbacks(design)));
        groups.add(new Group("Generator", Part.CONNECTION, StructureChecks.generator(design)));
        return groups.stream()
                .filter(group -> !group.checks().isEmpty())
                .map(group -> group.in(design.codeEdition()))
                .toList();
    }

    /** How many checks ended so. */
    public static long count(List<Group> groups, Verdict verdict) {
        return groups.stream()
                .flatMap(group -> group.checks().stream())
                .filter(check -> check.verdict() == verdict)
                .count();
    }

    private static List<Check> strings(DesignFacts design) {
        if (design.designLowC() == null || design.designHighC() == null) {
            return List.of(Check.cannotTell(
                    "Strings", "NEC 690.7", List.of("lowest and highest design temperature of the site")));
        }
        if (design.strings().isEmpty()) {
            return List.of(Check.cannotTell("Strings", "NEC 690.7", List.of("strings")));
        }
        List<Check> checks = new ArrayList<>();
        byInput(design).values().forEach(strings -> checks.addAll(input(design, strings)));
        checks.addAll(modulesUsed(design));
        if (design.kwAc() > 0) {
            checks.add(StringChecks.dcAcRatio(design.kwDc(), design.kwAc()));
        }
        return checks;
    }

    private static Map<String, List<PvString>> byInput(DesignFacts design) {
        return design.strings().stream()
                .collect(Collectors.groupingBy(
                        string -> string.inverter() + " input " + string.input(),
                        LinkedHashMap::new,
                        Collectors.toList()));
    }

    private static List<Check> input(DesignFacts design, List<PvString> strings) {
        PvString first = strings.get(0);
        String name = first.inverter() + " input " + first.input();
        var inverter = design.inverter(first.inverter());
        var array = design.array(first.array());
        if (inverter.isEmpty() || array.isEmpty()) {
            return List.of(Check.cannotTell(name, "NEC 690.7", List.of("inverter or array of string " + first.mark())));
        }
        StringCase asked = Cases.strings(design, name, strings);
        List<Check> checks = new ArrayList<>(StringChecks.of(asked));
        checks.add(StringChecks.landed(asked, circuits(strings)));
        boolean alike = strings.stream()
                .allMatch(one -> one.modules() == first.modules() && one.array().equals(first.array()));
        if (!alike) {
            checks.add(Check.said(
                    name + ": strings alike",
                    "maker's instructions (NEC 110.3(B))",
                    Verdict.FAIL,
                    name + ": its strings differ in length or array.",
                    "Give all strings of one input the same number of modules in one plane."));
        }
        if (first.input() > inverter.get().type().inputs()) {
            checks.add(Check.atMost(
                    name + ": number of the input",
                    "maker's instructions (NEC 110.3(B))",
                    first.input(),
                    inverter.get().type().inputs(),
                    "inputs",
                    List.of(),
                    "The inverter has no such input."));
        }
        return checks;
    }

    /** What ends on the terminals: a string by itself, or the combiner of several. */
    private static int circuits(List<PvString> strings) {
        long alone =
                strings.stream().filter(string -> string.combiner() == null).count();
        long combiners = strings.stream()
                .map(PvString::combiner)
                .filter(Objects::nonNull)
                .distinct()
                .count();
        return (int) (alone + combiners);
    }

    /** Each module of an array belongs to one string. */
    private static List<Check> modulesUsed(DesignFacts design) {
        return design.arrays().stream().map(array -> used(design, array)).toList();
    }

    private static Check used(DesignFacts design, PvArray array) {
        List<Integer> numbers = design.strings().stream()
                .filter(string -> string.array().equals(array.mark()))
                .flatMap(string -> IntStream.range(string.firstModule(), string.firstModule() + string.modules())
                        .boxed())
                .toList();
        String subject = array.mark() + ": modules in strings";
        String said = "%s: %d of %d modules stand in strings.".formatted(array.mark(), numbers.size(), array.modules());
        if (numbers.size() != array.modules()) {
            return Check.said(
                    subject, HOUSE, Verdict.FAIL, said, "Give every module a string, or take it out of the array.");
        }
        boolean once = numbers.stream().distinct().count() == numbers.size()
                && numbers.stream().allMatch(number -> number <= array.modules());
        return once
                ? Check.said(subject, HOUSE, Verdict.PASS, said, "")
                : Check.said(
                        subject,
                        HOUSE,
                        Verdict.FAIL,
                        array.mark() + ": a module stands in two strings and another in none.",
                        "Look at the first module of each string.");
    }

    private static List<Check> roof(DesignFacts design) {
        List<PvString> strings = design.strings().stream()
                .filter(string -> design.array(string.array())
                        .filter(DesignChecks::onBuilding)
                        .isPresent())
                .toList();
        if (design.arrays().stream().noneMatch(DesignChecks::onBuilding)) {
            return List.of();
        }
        List<InverterType> inverters = design.inverters().stream()
                .filter(inverter -> strings.isEmpty()
                        || strings.stream().anyMatch(string -> string.inverter().equals(inverter.mark())))
                .map(PlacedInverter::type)
                .toList();
        boolean initiator = design.labels().stream()
                .anyMatch(label -> label.text().toLowerCase(Locale.ROOT).contains("rapid shutdown"));
        double coldV = Cases.coldV(design, strings).orElse(UNKNOWN_V);
        return List.of(
                RoofChecks.rapidShutdown(
                        true,
                        !inverters.isEmpty() && inverters.stream().allMatch(InverterType::rapidShutdown),
                        initiator),
                RoofChecks.arcFault(
                        true, coldV, !inverters.isEmpty() && inverters.stream().allMatch(InverterType::arcFault)));
    }

    private static boolean onBuilding(PvArray array) {
        return array.mounting() != Mounting.GROUND;
    }

    /** Cases of the core made from a design. */
    public static StringCase stringCase(DesignFacts design, PvString string) {
        return Cases.strings(
                design,
                string.mark(),
                design.strings().stream()
                        .filter(other -> other.inverter().equals(string.inverter()) && other.input() == string.input())
                        .toList());
    }
}
