package org.plumbrow.calc.electrical;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.plumbrow.calc.electrical.ConductorMaterial.ALUMINUM;
import static org.plumbrow.calc.electrical.ConductorMaterial.COPPER;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.DoubleSupplier;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.plumbrow.calc.electrical.StringTest.SunTerm;
import org.plumbrow.calc.electrical.StringVoltage.Place;

/**
 * Each worked example under its id. The equipment is the examples' own: a 550 W module, inverters of 40 kW at 480 V and of
 * 7.6 kW at 240 V; the site is a ground mount at -29 to 34 °C.
 */
class WorkedExamplesTest {

    private static final StringCase.Module MODULE =
            new StringCase.Module(49.9, 41.96, 13.95, 13.11, -0.25, -0.30, -0.34, 25, 1500);
    private static final StringCase.Module SILENT =
            new StringCase.Module(49.9, 41.96, 13.95, 13.11, null, null, -0.34, 25, 1500);
    private static final StringCase.Input INPUT_A = new StringCase.Input(1100, 200, 1000, 500, 850, 40, 50, 2);
    private static final double OUTPUT_A = StringCurrent.inverterA(40, 480, 3);
    private static final double OUTPUT_H = StringCurrent.inverterA(7.6, 240, 1);
    private static final double[] TEN_STRINGS = {838, 841, 839, 836, 840, 791, 838, 842, 837, 839};

    private final Map<String, DoubleSupplier> computed = new HashMap<>();

    WorkedExamplesTest() {
        serviceVoltage();
        strings();
        currents();
        drops();
        busbars();
        measurements();
    }

    @ParameterizedTest(name = "{0} {1}")
    @CsvFileSource(resources = "/reference/electrical/worked-examples.csv", numLinesToSkip = 2)
    void comesOutAsPublished(String id, String quantity, double expected, double tolerance) {
        double value = computed.get(id + " " + quantity).getAsDouble();
        assertThat(value).isCloseTo(expected, within(Math.max(tolerance, 1e-12)));
    }

    private void is(String name, DoubleSupplier value) {
        computed.put(name, value);
    }

    private void serviceVoltage() {
        var v1 = judged(Service.WYE_208_120, "A-N", 118.4, "B-N", 119.1, "C-N", 117.2);
        is("V1 worst band", () -> v1.worst().ordinal());
        is("V1 unbalance %", () -> v1.unbalancePercent().orElseThrow());
        var v2 = ServiceVoltage.judge(Service.DELTA_480, Map.of("A-B", 481.0, "B-C", 478.0, "A-C", 470.0));
        is("V2 worst band", () -> v2.worst().ordinal());
        is("V2 unbalance %", () -> v2.unbalancePercent().orElseThrow());
        is(
                "V3 worst band",
                () -> judged(Service.WYE_480_277, "A-B", 452, "B-C", 455, "A-C", 449)
                        .worst()
                        .ordinal());
        is(
                "V4 worst band",
                () -> ServiceVoltage.judge(Service.WYE_480_277, Map.of("A-B", 437.0))
                        .worst()
                        .ordinal());
        var v5 = judged(Service.DELTA_240, "A-N", 121, "B-N", 210, "C-N", 120);
        is("V5 high leg", () -> v5.warning().orElse("").contains("high leg") ? 1 : 0);
        is("V5 expected high leg V", () -> Math.sqrt(3) * (121 + 120) / 2);
        var v6 = judged(Service.SINGLE_PHASE_120_240, "A-N", 131, "B-N", 109, "A-B", 240);
        is("V6 open neutral", () -> v6.warning().orElse("").contains("neutral may be open") ? 1 : 0);
        var v7 = VoltageRise.atInverter(Service.WYE_480_277, 498, feeder(1).volts());
        is("V7 volts at inverter", v7::value);
        is("V7 verdict", () -> v7.verdict().ordinal());
        is("V7 trip V", () -> GridTiming.highTripPu() * Service.WYE_480_277.lineV());
    }

    private static ServiceVoltage.Result judged(
            Service service, String one, double v1, String two, double v2, String three, double v3) {
        return ServiceVoltage.judge(service, Map.of(one, v1, two, v2, three, v3));
    }

    private static StringCase of(StringCase.Module module, Place place, int modules, int strings) {
        return new StringCase("strings", module, INPUT_A, modules, strings, null, -29, 34, place, false);
    }

    private void strings() {
        var own = of(MODULE, Place.GROUND, 18, 1);
        var table = of(SILENT, Place.GROUND, 18, 1);
        for (var one : Map.of("S1", own, "S2", table).entrySet()) {
            StringCase strings = one.getValue();
            is(one.getKey() + " factor", strings::coldFactor);
            is(one.getKey() + " cold V", strings::vocColdV);
            for (int limit : new int[] {1000, 1100, 1500}) {
                is(
                        one.getKey() + " most at " + limit + " V",
                        () -> StringVoltage.mostInSeries(limit, strings.vocColdV()));
            }
        }
        is("S3 string V", () -> StringChecks.cold(own).value());
        is("S3 on the ground", () -> StringChecks.cold(own).verdict().ordinal());
        is(
                "S3 on a building",
                () -> StringChecks.cold(of(MODULE, Place.OTHER_BUILDING, 18, 1))
                        .verdict()
                        .ordinal());
        is("S4 cell C", own::hotCellC);
        is("S4 factor", () -> own.vmpHotV() / 41.96);
        is("S4 hot V", own::vmpHotV);
        is("S4 least", own::leastInSeries);
        is("S4 least for full power", own::leastForFullPower);
        is("S4 18 in series V", () -> StringChecks.hot(own).value());
        is("S5 factor", () -> StringVoltage.factorByCoefficient(-0.27, -10));
        is("S5 cold V", () -> 49.5 * StringVoltage.factorByCoefficient(-0.27, -10));
        is(
                "S5 most",
                () -> StringVoltage.mostInSeries(
                        Place.DWELLING.mostV(), 49.5 * StringVoltage.factorByCoefficient(-0.27, -10)));
        is("S11 two feed A", () -> StringCurrent.feedIntoFaultA(13.95, 2));
        is("S11 two need fuses", () -> StringCurrent.needsFuses(13.95, 2, 25) ? 1 : 0);
        is(
                "S11 three feed A",
                () -> StringChecks.fuses(of(MODULE, Place.GROUND, 18, 3)).value());
        is("S11 three need fuses", () -> StringCurrent.needsFuses(13.95, 3, 25) ? 1 : 0);
    }

    private static ConductorCase run(double maximumA, Double deviceA, ConductorSize size, ConductorMaterial material) {
        return new ConductorCase(
                "run",
                0,
                maximumA,
                13.11,
                755.28,
                220,
                deviceA,
                size,
                material,
                Insulation.THWN_2,
                TemperatureRating.C75,
                34,
                4,
                ConductorSize.AWG_10,
                COPPER,
                Raceway.PVC_40,
                "1",
                false,
                null,
                BurialCover.ELSEWHERE,
                1);
    }

    private static ConductorCase feeder(double maximumA, ConductorSize size, ConductorMaterial material) {
        return new ConductorCase(
                "feeder",
                3,
                maximumA,
                maximumA,
                480,
                350,
                125.0,
                size,
                material,
                Insulation.XHHW_2,
                TemperatureRating.C75,
                30,
                3,
                ConductorSize.AWG_4,
                ALUMINUM,
                Raceway.PVC_40,
                "2",
                false,
                null,
                BurialCover.ELSEWHERE,
                1);
    }

    private static int worst(ConductorCase run) {
        return ConductorChecks.of(run).stream()
                .filter(check -> !check.subject().contains("ground"))
                .mapToInt(check -> check.verdict().ordinal())
                .max()
                .orElseThrow();
    }

    private void currents() {
        double maximum = StringCurrent.maximumA(13.95, 1);
        is("S6 maximum A", () -> maximum);
        is("S6 device A", () -> StringCurrent.deviceA(13.95, 1));
        is(
                "S6 next standard A",
                () -> Overcurrent.sizeFor(StringCurrent.deviceA(13.95, 1)).orElseThrow());
        is(
                "S6 verdict",
                () -> StringChecks.fuses(
                                new StringCase("s", MODULE, INPUT_A, 18, 3, 25.0, -29, 34, Place.GROUND, false))
                        .verdict()
                        .ordinal());
        for (ConductorSize size : List.of(ConductorSize.AWG_12, ConductorSize.AWG_10)) {
            var sized = run(maximum, 25.0, size, COPPER);
            is(
                    "S7 " + size.words() + " corrected A",
                    () -> Ampacity.conditionsOfUse(
                            size.ampacity(COPPER, TemperatureRating.C90).orElseThrow(), 34, 4));
            is("S7 " + size.words() + " verdict", () -> worst(sized));
        }
        is(
                "S7 smallest cmil",
                () -> ConductorChecks.smallestForCurrent(run(maximum, 25.0, ConductorSize.AWG_14, COPPER))
                        .orElseThrow()
                        .circularMils());
        is("S8 output A", () -> OUTPUT_A);
        is("S8 with a quarter A", () -> Overcurrent.CONTINUOUS * OUTPUT_A);
        is(
                "S8 device A",
                () -> Overcurrent.sizeFor(Overcurrent.CONTINUOUS * OUTPUT_A).orElseThrow());
        is("S9 output A", () -> 2 * OUTPUT_A);
        is("S9 with a quarter A", () -> Overcurrent.CONTINUOUS * 2 * OUTPUT_A);
        is(
                "S9 device A",
                () -> Overcurrent.sizeFor(Overcurrent.CONTINUOUS * 2 * OUTPUT_A).orElseThrow());
        is(
                "S9 copper cmil",
                () -> ConductorChecks.smallestForCurrent(feeder(2 * OUTPUT_A, ConductorSize.AWG_14, COPPER))
                        .orElseThrow()
                        .circularMils());
        is(
                "S9 aluminum cmil",
                () -> ConductorChecks.smallestForCurrent(feeder(2 * OUTPUT_A, ConductorSize.AWG_12, ALUMINUM))
                        .orElseThrow()
                        .circularMils());
        is(
                "S9 ground copper cmil",
                () -> EquipmentGround.forDevice(125, COPPER).orElseThrow().circularMils());
        is(
                "S9 ground aluminum cmil",
                () -> EquipmentGround.forDevice(125, ALUMINUM).orElseThrow().circularMils());
        is("S10 ratio", () -> StringChecks.dcAcRatio(99, 80).value());
        is("S10 verdict", () -> StringChecks.dcAcRatio(99, 80).verdict().ordinal());
    }

    private static VoltageDrop.Result feeder(double powerFactor) {
        return VoltageDrop.ac(3, ConductorSize.AWG_2_0, ALUMINUM, Raceway.PVC_40, 350, 2 * OUTPUT_A, 480, powerFactor);
    }

    private void drops() {
        var string = VoltageDrop.dc(ConductorSize.AWG_10, COPPER, 220, 13.11, 18 * 41.96);
        is("C1 drop V", string::volts);
        is("C1 drop %", string::percent);
        is("C2 drop V", () -> feeder(1).volts());
        is("C2 drop %", () -> feeder(1).percent());
        is("C3 impedance", () -> feeder(0.95).ohmsPerKft());
        is("C3 drop V", () -> feeder(0.95).volts());
        is("C3 drop %", () -> feeder(0.95).percent());
        var contents = List.of(
                new ConduitFill.Content(ConductorSize.AWG_2_0, Insulation.XHHW_2, 4),
                new ConduitFill.Content(ConductorSize.AWG_6, Insulation.XHHW_2, 1));
        is("C4 fill %", () -> ConduitFill.percent(Raceway.PVC_40, "2", contents).orElseThrow());
        is("C4 most %", () -> ConduitFill.mostPercent(5, false));
        is(
                "C5 volts at inverter",
                () -> VoltageRise.atInverter(Service.WYE_480_277, 498, feeder(1).volts())
                        .value());
        is(
                "C6 ground cmil",
                () -> EquipmentGround.enlarged(ConductorSize.AWG_4, ConductorSize.AWG_2_0, ConductorSize.AWG_4_0)
                        .orElseThrow()
                        .circularMils());
    }

    private void bus(String id, Busbar.Load one, Busbar.Load two) {
        is(id + " rule 1 used A", one::usedA);
        is(id + " rule 1", () -> one.within() ? 1 : 0);
        is(id + " rule 2 allowed A", two::allowedA);
        is(id + " rule 2", () -> two.within() ? 1 : 0);
    }

    private void allowed(String id, Busbar.Load load) {
        is(id + " used A", load::usedA);
        is(id + " allowed", () -> load.within() ? 1 : 0);
    }

    private void busbars() {
        bus(
                "B1",
                Busbar.with(Busbar.Rule.ANYWHERE, 200, 200, OUTPUT_H),
                Busbar.with(Busbar.Rule.FAR_END, 200, 200, OUTPUT_H));
        is(
                "B1 device A",
                () -> Overcurrent.sizeFor(Overcurrent.CONTINUOUS * OUTPUT_H).orElseThrow());
        bus(
                "B2",
                Busbar.with(Busbar.Rule.ANYWHERE, 100, 100, OUTPUT_H),
                Busbar.with(Busbar.Rule.FAR_END, 100, 100, OUTPUT_H));
        is("B2 smaller main A", () -> Busbar.smallerMainA(100, 100, OUTPUT_H).orElseThrow());
        is(
                "B2 with 80 A main used A",
                () -> Busbar.with(Busbar.Rule.FAR_END, 100, 80, OUTPUT_H).usedA());
        is("B3 most output A", () -> Busbar.mostOutputA(Busbar.Rule.FAR_END, 225, 200));
        is("B4 most output A", () -> Busbar.mostOutputA(Busbar.Rule.FAR_END, 400, 400));
        allowed("B5", Busbar.sumOfDevices(200, 40 + 50 + 30 + 30 + 20 + 20));
        allowed("B6", Busbar.with(Busbar.Rule.CENTER_FED, 200, 200, OUTPUT_H));
        allowed("B7", Busbar.with(Busbar.Rule.ANYWHERE, 225, 200, 12.1));
        var tap = Busbar.supplySide(800, 2 * OUTPUT_A);
        is("B8 output A", tap::usedA);
        is("B8 allowed", () -> tap.within() ? 1 : 0);
        is(
                "B8 device A",
                () -> Overcurrent.sizeFor(Overcurrent.CONTINUOUS * 2 * OUTPUT_A).orElseThrow());
        is("K1 75 kVA 480 V 2 % A", () -> FaultCurrent.atTransformerA(75, 480, 3, 2));
        is("K2 150 kVA 480 V 2 % A", () -> FaultCurrent.atTransformerA(150, 480, 3, 2));
        is("K3 75 kVA 240 V single phase 2 % A", () -> FaultCurrent.atTransformerA(75, 240, 1, 2));
    }

    private static double voltage(SunTerm term, double cellC, double irradianceWm2) {
        return StringTest.openCircuitV(18, 49.9, -0.25, 72, cellC, irradianceWm2, term);
    }

    private void measurements() {
        is("I1 test V", () -> InsulationTest.ofString(18 * 49.9).testV());
        is("I1 least megohm", () -> InsulationTest.ofString(18 * 49.9).leastMohm());
        is("I2 test V", () -> InsulationTest.ofString(10 * 40).testV());
        is("I2 least megohm", () -> InsulationTest.ofString(10 * 40).leastMohm());
        List<SunTerm> terms = List.of(SunTerm.NONE, SunTerm.DIODE, SunTerm.SIX_PERCENT);
        for (int i = 0; i < 3; i++) {
            double expected = voltage(terms.get(i), 47, 820);
            is("M" + (i + 1) + " expected V", () -> expected);
            is("M" + (i + 1) + " difference %", () -> StringTest.differencePercent(838, expected));
        }
        is("M4 difference %", () -> StringTest.differencePercent(792, voltage(SunTerm.DIODE, 47, 820)));
        is("M5 no term V", () -> voltage(SunTerm.NONE, 30, 250));
        is("M5 diode V", () -> voltage(SunTerm.DIODE, 30, 250));
        is("M5 six percent V", () -> voltage(SunTerm.SIX_PERCENT, 30, 250));
        double current = StringTest.shortCircuitA(13.95, 0.045, 47, 820);
        is("M6 expected A", () -> current);
        is("M6 difference %", () -> StringTest.differencePercent(11.30, current));
        is("M7 difference %", () -> StringTest.differencePercent(10.60, current));
        double power = StringTest.powerKwAc(99, -0.34, 47, 820, 0.06, 0.975, 80);
        is("M8 expected kW", () -> power);
        is("M8 difference %", () -> StringTest.differencePercent(66.9, power));
        is("M9 unlimited kW", () -> StringTest.powerKwAc(99, -0.34, 35, 1000, 0.06, 0.975, 1000));
        is("M9 expected kW", () -> StringTest.powerKwAc(99, -0.34, 35, 1000, 0.06, 0.975, 80));
        double[] differences = StringTest.differencesFromMedian(TEN_STRINGS);
        is("M10 string 6 difference %", () -> differences[5]);
        List<Double> others = new ArrayList<>(Arrays.stream(differences).boxed().toList());
        others.remove(5);
        is(
                "M10 largest other difference %",
                () -> others.stream().mapToDouble(Math::abs).max().orElseThrow());
    }
}
