package org.plumbrow.design.check;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.plumbrow.calc.duration.Mounting;
import org.plumbrow.calc.electrical.BurialCover;
import org.plumbrow.calc.electrical.ConductorCase;
import org.plumbrow.calc.electrical.ConductorMaterial;
import org.plumbrow.calc.electrical.ConductorSize;
import org.plumbrow.calc.electrical.StringCase;
import org.plumbrow.calc.electrical.StringCurrent;
import org.plumbrow.calc.electrical.StringVoltage.Place;
import org.plumbrow.calc.electrical.TemperatureRating;
import org.plumbrow.design.Combiner;
import org.plumbrow.design.DesignFacts;
import org.plumbrow.design.Device;
import org.plumbrow.design.Flow;
import org.plumbrow.design.InverterType;
import org.plumbrow.design.ModuleType;
import org.plumbrow.design.PlacedInverter;
import org.plumbrow.design.PvArray;
import org.plumbrow.design.PvString;
import org.plumbrow.design.Run;

/** Maps a design to the questions of the core. */
public final class Cases {

    private static final double USUAL_LOW_C = -25;
    private static final double USUAL_HIGH_C = 34;
    private static final double INDOORS_C = 30;

    /** Mark of the point of interconnection. */
    static final String POI = "POI";

    private Cases() {}

    /** Strings of one input; their array and inverter are known. */
    static StringCase strings(DesignFacts design, String name, List<PvString> strings) {
        PvString first = strings.get(0);
        PvArray array = design.array(first.array()).orElseThrow();
        InverterType inverter = design.inverter(first.inverter()).orElseThrow().type();
        int longest = strings.stream().mapToInt(PvString::modules).max().orElse(first.modules());
        return new StringCase(
                name,
                module(array.module()),
                input(inverter),
                longest,
                strings.size(),
                fuse(design, first),
                design.designLowC() == null ? USUAL_LOW_C : design.designLowC(),
                design.designHighC() == null ? USUAL_HIGH_C : design.designHighC(),
                place(array),
                array.mounting() == Mounting.PITCHED_ROOF);
    }

    /** The highest voltage of those strings in the cold; empty while nothing says how the cold raises it. */
    static Optional<Double> coldV(DesignFacts design, List<PvString> strings) {
        if (design.designLowC() == null) {
            return Optional.empty();
        }
        return strings.stream()
                .filter(string -> design.array(string.array()).isPresent()
                        && design.inverter(string.inverter()).isPresent())
                .map(string -> strings(design, "", List.of(string)))
                .filter(StringCase::isKnownInTheCold)
                .map(one -> one.modules() * one.vocColdV())
                .max(Double::compare);
    }

    private static @Nullable Double fuse(DesignFacts design, PvString string) {
        return design.combiners().stream()
                .filter(combiner -> combiner.mark().equals(string.combiner()))
                .map(Combiner::fuseA)
                .filter(Objects::nonNull)
                .findFirst()
                .orElse(null);
    }

    public static StringCase.Module module(ModuleType module) {
        return new StringCase.Module(
                module.vocV(),
                module.vmpV(),
                module.iscA(),
                module.impA(),
                module.vocTempPercentPerC(),
                module.vmpTempPercentPerC(),
                module.pmaxTempPercentPerC(),
                module.maxSeriesFuseA(),
                module.maxSystemV());
    }

    public static StringCase.Input input(InverterType inverter) {
        return new StringCase.Input(
                inverter.maxDcV(),
                inverter.mpptFromV(),
                inverter.mpptToV(),
                inverter.fullFromV(),
                inverter.fullToV(),
                inverter.inputMaxA(),
                inverter.inputShortCircuitA(),
                inverter.stringsPerInput());
    }

    public static Place place(PvArray array) {
        if (array.mounting() == Mounting.GROUND) {
            return Place.GROUND;
        }
        return array.onDwelling() ? Place.DWELLING : Place.OTHER_BUILDING;
    }

    /** What flows in a run. @param maximumA without the quarter for continuous use */
    record Current(double maximumA, double operatingA, double volts, int phases) {}

    /** Empty when nothing that the run comes from is known. */
    static Optional<Current> current(DesignFacts design, Run run) {
        if (run.flow() == Flow.AC) {
            return alternating(design, run);
        }
        List<PvString> strings = design.strings().stream()
                .filter(string -> string.mark().equals(run.from())
                        || run.from().equals(string.combiner())
                        || (run.flow() == Flow.DC_STRING && string.array().equals(run.from())))
                .toList();
        if (strings.isEmpty()) {
            return Optional.empty();
        }
        PvString first = strings.get(0);
        return design.array(first.array()).map(array -> {
            ModuleType module = array.module();
            int parallel = run.flow() == Flow.DC_STRING ? 1 : strings.size();
            return new Current(
                    StringCurrent.maximumA(module.iscA(), parallel),
                    module.impA() * parallel,
                    module.vmpV() * first.modules(),
                    0);
        });
    }

    /** The output of every inverter that feeds into what the run comes from. */
    private static Optional<Current> alternating(DesignFacts design, Run run) {
        List<PlacedInverter> feeding = design.inverters().stream()
                .filter(inverter -> feeds(design, inverter.mark(), run.from(), 0))
                .toList();
        if (feeding.isEmpty()) {
            return Optional.empty();
        }
        double amperes = feeding.stream().mapToDouble(one -> one.type().acA()).sum();
        InverterType type = feeding.get(0).type();
        return Optional.of(new Current(amperes, amperes, type.acV(), type.phases()));
    }

    private static boolean feeds(DesignFacts design, String from, String to, int steps) {
        if (from.equals(to)) {
            return true;
        }
        return steps < 20
                && design.runs().stream()
                        .filter(run -> run.flow() == Flow.AC && run.from().equals(from))
                        .anyMatch(run -> feeds(design, run.to(), to, steps + 1));
    }

    /** Empty when its current or its size is not known. */
    public static Optional<ConductorCase> conductors(DesignFacts design, Run run) {
        Optional<ConductorSize> size = ConductorSize.of(run.size());
        return size.isEmpty() || run.lengthFt() <= 0
                ? Optional.empty()
                : current(design, run).map(current -> conductors(design, run, size.get(), current));
    }

    private static ConductorCase conductors(DesignFacts design, Run run, ConductorSize size, Current current) {
        double high = design.designHighC() == null ? INDOORS_C : design.designHighC();
        return new ConductorCase(
                run.mark() + ", " + run.from() + " to " + run.to(),
                current.phases(),
                current.maximumA(),
                current.operatingA(),
                current.volts(),
                run.lengthFt(),
                device(design, run).orElse(null),
                size,
                run.material(),
                run.insulation(),
                TemperatureRating.of(run.terminalC()).orElse(TemperatureRating.C60),
                run.ambientC() == null ? high : run.ambientC(),
                run.conductors(),
                run.groundSize() == null
                        ? null
                        : ConductorSize.of(run.groundSize()).orElse(null),
                run.groundMaterial() == null ? ConductorMaterial.COPPER : run.groundMaterial(),
                run.raceway(),
                run.racewaySize(),
                false,
                run.coverIn(),
                cover(run),
                run.sets());
    }

    private static BurialCover cover(Run run) {
        return java.util.Arrays.stream(BurialCover.values())
                .filter(one -> one.name().equals(run.under()))
                .findFirst()
                .orElse(BurialCover.ELSEWHERE);
    }

    /** Of the run itself, else the fuse of its string's combiner or the breaker at the point of interconnection. */
    private static Optional<Double> device(DesignFacts design, Run run) {
        return design.devices().stream()
                .filter(device -> run.mark().equals(device.inRun()))
                .filter(Cases::opensByItself)
                .map(Device::ratedA)
                .max(Double::compare)
                .or(() -> run.flow() == Flow.DC_STRING ? stringFuse(design, run) : Optional.empty())
                .or(() -> run.to().equals(POI)
                        ? Optional.ofNullable(design.connection().breakerA())
                        : Optional.empty());
    }

    /** Whether it is an overcurrent device. */
    static boolean opensByItself(Device device) {
        return switch (device.kind()) {
            case BREAKER, FUSED_DISCONNECT -> true;
            case UNFUSED_DISCONNECT, PANEL, METER -> false;
        };
    }

    private static Optional<Double> stringFuse(DesignFacts design, Run run) {
        return design.strings().stream()
                .filter(string -> string.mark().equals(run.from())
                        || string.array().equals(run.from())
                        || run.to().equals(string.combiner()))
                .map(string -> fuse(design, string))
                .filter(Objects::nonNull)
                .findFirst();
    }
}
