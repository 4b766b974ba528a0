package org.plumbrow.design.check;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.plumbrow.calc.duration.Mounting;
import org.plumbrow.calc.electrical.Check;
import org.plumbrow.calc.electrical.RoofChecks;
import org.plumbrow.calc.electrical.StringCase;
import org.plumbrow.calc.electrical.StringChecks;
import org.plumbrow.calc.electrical.Verdict;
import org.plumbrow.design.DesignFacts;
import org.plumbrow.design.DesignFacts.PvArray;
import org.plumbrow.design.DesignFacts.PvString;
import org.plumbrow.design.part.Part;

/** Holds a whole design against the rules: a planning aid, a licensed person decides. Pure. */
public final class DesignChecks {

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
    }

    /** All groups of a design; a group without anything to judge is left out. */
    public static List<Group> of(DesignFacts design) {
        List<Group> groups = new ArrayList<>();
        groups.add(new Group("Strings and inputs", Part.STRINGS, strings(design)));
        groups.add(new Group("Conductor runs", Part.RUNS, RunChecks.of(design)));
        groups.add(new Group("Connection to the service", Part.CONNECTION, ServiceChecks.of(design)));
        groups.add(new Group("Roof rules", Part.INVERTERS, roof(design)));
        groups.add(new Group("Structure", Part.RACKING, StructureChecks.of(design)));
        groups.add(new Group("Setbacks", Part.ARRAYS, StructureChecks.setbacks(design)));
        groups.add(new Group("Generator", Part.CONNECTION, StructureChecks.generator(design)));
        return groups.stream().filter(group -> !group.checks().isEmpty()).toList();
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
        List<Check> checks = new ArrayList<>(StringChecks.of(Cases.strings(design, name, strings)));
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

    /** Each module of an array belongs to one string. */
    private static List<Check> modulesUsed(DesignFacts design) {
        List<Check> checks = new ArrayList<>();
        for (PvArray array : design.arrays()) {
            int used = design.strings().stream()
                    .filter(string -> string.array().equals(array.mark()))
                    .mapToInt(PvString::modules)
                    .sum();
            boolean all = used == array.modules();
            checks.add(Check.said(
                    array.mark() + ": modules in strings",
                    "house rule",
                    all ? Verdict.PASS : Verdict.FAIL,
                    "%s: %d of %d modules stand in strings.".formatted(array.mark(), used, array.modules()),
                    all ? "" : "Give every module a string, or take it out of the array."));
        }
        return checks;
    }

    private static List<Check> roof(DesignFacts design) {
        boolean onRoof = design.arrays().stream().anyMatch(array -> array.mounting() != Mounting.GROUND);
        if (!onRoof) {
            return List.of();
        }
        boolean provided = !design.inverters().isEmpty()
                && design.inverters().stream()
                        .allMatch(inverter -> inverter.type().rapidShutdown());
        boolean initiator = design.labels().stream()
                .anyMatch(
                        label -> label.text().toLowerCase(java.util.Locale.ROOT).contains("rapid shutdown"));
        boolean arcs = !design.inverters().isEmpty()
                && design.inverters().stream()
                        .allMatch(inverter -> inverter.type().arcFault());
        double coldV = design.designLowC() == null
                ? 1000
                : byInput(design).values().stream()
                        .filter(strings -> design.array(strings.get(0).array()).isPresent()
                                && design.inverter(strings.get(0).inverter()).isPresent())
                        .map(strings -> Cases.strings(design, "", strings))
                        .mapToDouble(one -> one.modules() * one.vocColdV())
                        .max()
                        .orElse(1000);
        return List.of(RoofChecks.rapidShutdown(true, provided, initiator), RoofChecks.arcFault(true, coldV, arcs));
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
