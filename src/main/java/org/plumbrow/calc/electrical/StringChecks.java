package org.plumbrow.calc.electrical;

import java.util.List;
import org.plumbrow.calc.electrical.Check.Input;

/** What a plan reviewer asks of strings: voltage in the cold and in the heat, currents, fuses. */
public final class StringChecks {

    private static final String MAKER = "maker's instructions (NEC 110.3(B))";

    private StringChecks() {}

    public static List<Check> of(StringCase strings) {
        return List.of(
                cold(strings),
                hot(strings),
                fullPower(strings),
                shortCircuit(strings),
                operating(strings),
                fuses(strings));
    }

    public static Check cold(StringCase strings) {
        return strings.isKnownInTheCold()
                ? coldByFactor(strings)
                : Check.said(
                        strings.name() + ": voltage in the cold",
                        "NEC Table 690.7(A)",
                        Verdict.NEEDS_ENGINEER,
                        "%s: voltage in the cold: the code's table ends at −40 °C; here %s °C are expected."
                                .formatted(strings.name(), Check.figure(strings.lowC())),
                        "Enter the module's own coefficient, or ask its maker.");
    }

    private static Check coldByFactor(StringCase strings) {
        boolean own = strings.module().vocPercentPerK() != null;
        double volts = strings.modules() * strings.vocColdV();
        return Check.atMost(
                        strings.name() + ": voltage in the cold",
                        own ? "NEC 690.7(A)(1)" : "NEC Table 690.7(A)",
                        volts,
                        strings.limitV(),
                        "V",
                        List.of(
                                Input.of("modules in series", strings.modules(), "modules"),
                                Input.of(
                                        "Voc of a module at 25 °C",
                                        strings.module().vocV(),
                                        "V"),
                                Input.of("lowest expected air temperature", strings.lowC(), "°C"),
                                new Input(
                                        "factor, by " + (own ? "the module's coefficient" : "the code's table"),
                                        Check.figure(strings.coldFactor())),
                                Input.of("inverter bears", strings.input().maxDcV(), "V"),
                                Input.of("module bears", strings.module().maxSystemV(), "V"),
                                Input.of(
                                        strings.place().words(), strings.place().mostV(), "V")),
                        "At most %d modules in series here; %d are drawn."
                                .formatted(strings.mostInSeries(), strings.modules()))
                .with(Input.of("Voc of a module in the cold", strings.vocColdV(), "V"));
    }

    public static Check hot(StringCase strings) {
        String subject = strings.name() + ": voltage in the heat";
        double volts = strings.modules() * strings.vmpHotV();
        List<Input> inputs = List.of(
                Input.of("modules in series", strings.modules(), "modules"),
                Input.of("Vmp of a module at 25 °C", strings.module().vmpV(), "V"),
                Input.of("cell in the heat", strings.hotCellC(), "°C"),
                Input.of("Vmp of a module in the heat", strings.vmpHotV(), "V"),
                Input.of("the input works from", strings.input().mpptFromV(), "V"),
                Input.of("the input works to", strings.input().mpptToV(), "V"));
        return volts > strings.input().mpptToV()
                ? Check.atMost(
                        subject,
                        MAKER,
                        volts,
                        strings.input().mpptToV(),
                        "V",
                        inputs,
                        "At most %d modules in series stay in the input's window."
                                .formatted(StringVoltage.mostInSeries(
                                        strings.input().mpptToV(), strings.vmpHotV())))
                : Check.atLeast(
                        subject,
                        MAKER,
                        volts,
                        strings.input().mpptFromV(),
                        "V",
                        inputs,
                        "At least %d modules in series are needed.".formatted(strings.leastInSeries()));
    }

    /** Outside the full-power window nothing breaks, but something is lost. */
    public static Check fullPower(StringCase strings) {
        String subject = strings.name() + ": full power in the heat";
        double volts = strings.modules() * strings.vmpHotV();
        double toV = strings.input().fullToV();
        List<Input> inputs = List.of(
                Input.of("string in the heat", volts, "V"),
                Input.of("full power from", strings.input().fullFromV(), "V"),
                Input.of("full power to", toV, "V"));
        Check check = volts > toV
                ? Check.atMost(
                        subject,
                        MAKER,
                        volts,
                        toV,
                        "V",
                        inputs,
                        "Above the full-power window: %d modules in series stay in it."
                                .formatted(StringVoltage.mostInSeries(toV, strings.vmpHotV())))
                : Check.atLeast(
                        subject,
                        MAKER,
                        volts,
                        strings.input().fullFromV(),
                        "V",
                        inputs,
                        "Below the full-power window: %d modules in series reach it."
                                .formatted(strings.leastForFullPower()));
        return check.verdict() == Verdict.FAIL ? check.but(Verdict.REMARK, check.remedy()) : check;
    }

    /** @param circuits that end on the input's terminals: strings by themselves and combiners */
    public static Check landed(StringCase strings, int circuits) {
        return Check.atMost(
                strings.name() + ": circuits on the input",
                MAKER,
                circuits,
                strings.input().stringsLanded(),
                "circuits",
                List.of(Input.of("strings on the input", strings.strings(), "strings")),
                "Use another input, or a combiner.");
    }

    public static Check shortCircuit(StringCase strings) {
        return Check.atMost(
                strings.name() + ": short-circuit current into the input",
                "NEC 690.8(A); maker's instructions",
                StringCurrent.maximumA(strings.module().iscA(), strings.strings()),
                strings.input().shortCircuitA(),
                "A",
                List.of(
                        Input.of("Isc of a module", strings.module().iscA(), "A"),
                        Input.of("strings in parallel", strings.strings(), "strings"),
                        new Input("sun above standard conditions", "× 1.25")),
                "Land fewer strings on this input, or choose an inverter that bears more.");
    }

    private static Check operating(StringCase strings) {
        Check check = Check.atMost(
                strings.name() + ": operating current of the input",
                MAKER,
                strings.module().impA() * strings.strings(),
                strings.input().maxA(),
                "A",
                List.of(
                        Input.of("Imp of a module", strings.module().impA(), "A"),
                        Input.of("strings in parallel", strings.strings(), "strings")),
                "The input limits the current in full sun: some energy is lost.");
        return check.verdict() == Verdict.FAIL ? check.but(Verdict.REMARK, check.remedy()) : check;
    }

    public static Check fuses(StringCase strings) {
        String subject = strings.name() + ": fuses of the strings";
        double limit = strings.module().maxSeriesFuseA();
        Double fuse = strings.fuseA();
        if (fuse == null) {
            return withoutFuses(strings, subject);
        }
        double needed = StringCurrent.deviceA(strings.module().iscA(), 1);
        List<Input> inputs = List.of(
                Input.of("Isc × 1.25 × 1.25", needed, "A"), Input.of("largest fuse the module bears", limit, "A"));
        return fuse > limit
                ? Check.atMost(subject, "NEC 690.9(A)", fuse, limit, "A", inputs, "Use a smaller fuse.")
                : Check.atLeast(subject, "NEC 690.9(B)", fuse, needed, "A", inputs, "Use the next larger fuse.");
    }

    private static Check withoutFuses(StringCase strings, String subject) {
        double fed = StringCurrent.feedIntoFaultA(strings.module().iscA(), strings.strings());
        double limit = strings.module().maxSeriesFuseA();
        String sentence = strings.strings() == 1
                ? subject + ": none, and none are needed, as no other string can feed into this one."
                : "%s: none; the others can feed %s A into a faulted one, its modules bear %s A."
                        .formatted(subject, Check.figure(fed), Check.figure(limit));
        return Check.atMost(
                        subject,
                        "NEC 690.9(A)",
                        fed,
                        limit,
                        "A",
                        List.of(
                                Input.of("strings in parallel", strings.strings(), "strings"),
                                Input.of("Isc of a module", strings.module().iscA(), "A"),
                                Input.of("largest fuse the module bears", limit, "A")),
                        "A fuse in every string.")
                .saying(sentence);
    }

    /** DC over AC: a house band, no code. */
    public static Check dcAcRatio(double kwDc, double kwAc) {
        double ratio = kwDc / kwAc;
        boolean usual = ratio >= 1.1 && ratio <= 1.35;
        return new Check(
                "DC to AC ratio",
                "house rule (common practice, 1.1 to 1.35)",
                List.of(Input.of("modules", kwDc, "kW DC"), Input.of("inverters", kwAc, "kW AC")),
                ratio,
                1.35,
                "",
                (1.35 - ratio) / 1.35,
                usual ? Verdict.PASS : Verdict.REMARK,
                "DC to AC ratio: %s.".formatted(Check.figure(ratio)),
                usual
                        ? ""
                        : ratio > 1.35
                                ? "Much is clipped: look at the yield."
                                : "The inverters are large for the array.");
    }
}
