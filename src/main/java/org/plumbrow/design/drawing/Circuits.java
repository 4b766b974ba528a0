package org.plumbrow.design.drawing;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.plumbrow.calc.electrical.Busbar;
import org.plumbrow.calc.electrical.ConductorSize;
import org.plumbrow.calc.electrical.StringVoltage;
import org.plumbrow.calc.electrical.VoltageDrop;
import org.plumbrow.design.Combiner;
import org.plumbrow.design.DesignFacts;
import org.plumbrow.design.Device;
import org.plumbrow.design.Flow;
import org.plumbrow.design.ModuleType;
import org.plumbrow.design.PlacedInverter;
import org.plumbrow.design.PvArray;
import org.plumbrow.design.PvString;
import org.plumbrow.design.Run;

/** What hangs on what, and the electrical figures that stand on a drawing. Empty where the data do not tell. */
final class Circuits {

    /** Mark of the point of interconnection, as runs name it. */
    static final String POI = "POI";

    private static final double TABLE_ENDS_C = -40;

    private final DesignFacts facts;

    Circuits(DesignFacts facts) {
        this.facts = facts;
    }

    DesignFacts facts() {
        return facts;
    }

    Optional<ModuleType> module(PvString string) {
        return facts.array(string.array()).map(PvArray::module);
    }

    /** Of one string, at the lowest temperature expected. */
    Optional<Double> vocColdV(PvString string) {
        Double low = facts.designLowC();
        if (low == null) {
            return Optional.empty();
        }
        return module(string)
                .filter(module -> module.vocTempPercentPerC() != null || low >= TABLE_ENDS_C)
                .map(module -> string.modules() * module.vocV() * factor(module, low));
    }

    private static double factor(ModuleType module, double lowC) {
        Double percent = module.vocTempPercentPerC();
        return percent == null ? StringVoltage.factorByTable(lowC) : StringVoltage.factorByCoefficient(percent, lowC);
    }

    Optional<PvString> string(String mark) {
        return facts.strings().stream()
                .filter(string -> string.mark().equals(mark))
                .findFirst();
    }

    Optional<Combiner> combiner(@Nullable String mark) {
        return facts.combiners().stream()
                .filter(combiner -> combiner.mark().equals(mark))
                .findFirst();
    }

    Optional<Device> device(String mark) {
        return facts.devices().stream()
                .filter(device -> device.mark().equals(mark))
                .findFirst();
    }

    List<Device> devicesIn(Run run) {
        return facts.devices().stream()
                .filter(device ->
                        run.mark().equals(device.inRun()) && !device.mark().equals(run.to()))
                .toList();
    }

    /** Strings whose current flows away from a mark: the string's own, or all of a combiner. */
    private List<PvString> stringsAt(String mark) {
        return facts.strings().stream()
                .filter(string -> string.mark().equals(mark) || mark.equals(string.combiner()))
                .toList();
    }

    /** Inverters whose current comes to a mark. */
    List<PlacedInverter> invertersBehind(String mark) {
        Set<String> seen = new LinkedHashSet<>();
        collect(List.of(mark), seen);
        return facts.inverters().stream()
                .filter(inverter -> seen.contains(inverter.mark()))
                .toList();
    }

    private void collect(Collection<String> marks, Set<String> seen) {
        for (String mark : marks) {
            if (seen.add(mark)) {
                collect(
                        facts.runs().stream()
                                .filter(run -> run.flow() == Flow.AC && run.to().equals(mark))
                                .map(Run::from)
                                .toList(),
                        seen);
            }
        }
    }

    /** Current of all sets together and voltage that count for the drop. */
    record Load(double amperes, double volts, int phases) {}

    Optional<Load> load(Run run) {
        if (run.flow() == Flow.AC) {
            List<PlacedInverter> behind = invertersBehind(run.from());
            return behind.isEmpty() ? Optional.empty() : Optional.of(acLoad(behind));
        }
        List<PvString> strings = stringsAt(run.from());
        return strings.isEmpty()
                ? Optional.empty()
                : module(strings.get(0))
                        .map(module -> new Load(
                                module.impA() * strings.size(),
                                module.vmpV() * strings.get(0).modules(),
                                0));
    }

    private static Load acLoad(List<PlacedInverter> inverters) {
        double amperes = inverters.stream()
                .mapToDouble(inverter -> inverter.type().acA())
                .sum();
        PlacedInverter first = inverters.get(0);
        return new Load(amperes, first.type().acV(), first.type().phases());
    }

    Optional<VoltageDrop.Result> drop(Run run) {
        Optional<ConductorSize> size = ConductorSize.of(run.size())
                .filter(known -> known.dcOhmsPerKft(run.material()).isPresent()
                        && known.acOhmsPerKft(run.material()).isPresent());
        return size.flatMap(known -> load(run)
                .map(load -> load.phases() == 0
                        ? VoltageDrop.dc(
                                known, run.material(), run.lengthFt(), load.amperes() / run.sets(), load.volts())
                        : VoltageDrop.ac(
                                load.phases(),
                                known,
                                run.material(),
                                run.raceway(),
                                run.lengthFt(),
                                load.amperes() / run.sets(),
                                load.volts(),
                                1)));
    }

    double outputA() {
        return facts.inverters().stream()
                .mapToDouble(inverter -> inverter.type().acA())
                .sum();
    }

    /** The rule that the connection is made by; a tap on a feeder has no single one. */
    Optional<Busbar.Rule> rule() {
        return Optional.ofNullable(
                switch (facts.connection().kind().name()) {
                    case "BREAKER_AT_FAR_END" -> Busbar.Rule.FAR_END;
                    case "BREAKER_ANYWHERE" -> Busbar.Rule.ANYWHERE;
                    case "BY_SUM_OF_DEVICES" -> Busbar.Rule.SUM_OF_DEVICES;
                    case "CENTER_FED_PANEL" -> Busbar.Rule.CENTER_FED;
                    case "SUPPLY_SIDE_TAP" -> Busbar.Rule.SUPPLY_SIDE;
                    default -> null;
                });
    }

    /** Strings alike on one inverter: same array, length, and combiner. */
    record Group(String array, int modules, @Nullable String combiner, List<PvString> strings) {
        boolean takes(PvString string) {
            return string.array().equals(array)
                    && string.modules() == modules
                    && java.util.Objects.equals(string.combiner(), combiner);
        }
    }

    List<Group> groups(String inverter) {
        List<Group> groups = new ArrayList<>();
        for (PvString string : facts.stringsOf(inverter)) {
            Optional<Group> same =
                    groups.stream().filter(group -> group.takes(string)).findFirst();
            if (same.isPresent()) {
                same.get().strings().add(string);
            } else {
                groups.add(new Group(
                        string.array(), string.modules(), string.combiner(), new ArrayList<>(List.of(string))));
            }
        }
        return groups;
    }

    /** Runs that begin at one of these marks. */
    List<String> runsFrom(Collection<String> marks) {
        return facts.runs().stream()
                .filter(run -> marks.contains(run.from()))
                .map(Run::mark)
                .toList();
    }
}
