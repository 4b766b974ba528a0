package org.plumbrow.design.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.plumbrow.calc.electrical.Verdict.CANNOT_TELL;
import static org.plumbrow.calc.electrical.Verdict.FAIL;
import static org.plumbrow.calc.electrical.Verdict.NEEDS_ENGINEER;
import static org.plumbrow.calc.electrical.Verdict.PASS;
import static org.plumbrow.calc.electrical.Verdict.REMARK;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.plumbrow.branch.PermitOfficeFacts.CodeEdition;
import org.plumbrow.calc.duration.Mounting;
import org.plumbrow.calc.electrical.Check;
import org.plumbrow.calc.electrical.ConductorMaterial;
import org.plumbrow.calc.electrical.Raceway;
import org.plumbrow.calc.electrical.Service;
import org.plumbrow.calc.electrical.Verdict;
import org.plumbrow.design.Combiner;
import org.plumbrow.design.Connection;
import org.plumbrow.design.ConnectionKind;
import org.plumbrow.design.Device;
import org.plumbrow.design.DeviceKind;
import org.plumbrow.design.Generator;
import org.plumbrow.design.Label;
import org.plumbrow.design.PlacedInverter;
import org.plumbrow.design.PvString;
import org.plumbrow.design.Run;
import org.plumbrow.design.ServicePoint;
import org.plumbrow.design.part.Part;

/** A whole design held against the rules: the example passes, and each thing that is spoiled is found by its own check. */
class DesignChecksTest {

    private final ExampleDesign design = new ExampleDesign();

    private List<Check> all() {
        return DesignChecks.of(design.facts()).stream()
                .flatMap(group -> group.checks().stream())
                .toList();
    }

    private Check one(String subject) {
        List<Check> found = all().stream()
                .filter(check -> check.subject().contains(subject))
                .toList();
        assertThat(found).as(subject).hasSize(1);
        return found.get(0);
    }

    private Verdict verdict(String subject) {
        return one(subject).verdict();
    }

    @Test
    void theExamplePassesWhole() {
        assertThat(all())
                .filteredOn(check -> check.verdict() != PASS)
                .extracting(Check::sentence, Check::remedy)
                .isEmpty();
        assertThat(DesignChecks.of(design.facts()))
                .extracting(DesignChecks.Group::title)
                .containsExactly(
                        "Strings and inputs",
                        "Conductor runs",
                        "Combiners and devices",
                        "Connection to the service",
                        "Disconnect",
                        "Structure",
                        "Setbacks");
    }

    /** Examples S1, S3, S4, S6, S10, C1 and V7's kind, read from a design instead of from the core. */
    @ParameterizedTest
    @CsvSource({
        "INV 1 input 1: voltage in the cold, 1019.46, 1100, 0.005",
        "INV 1 input 1: voltage in the heat, 666.91, 200, 0.005",
        "INV 1 input 1: short-circuit current, 17.4375, 50, 0.0001",
        "DC to AC ratio, 1.2375, 1.35, 0.00001",
        "'R3, 1.1.1 to INV 1: voltage drop', 0.947, 2, 0.0005",
        "'R3, 1.1.1 to INV 1: in its heat and company', 38.4, 17.4375, 0.0001",
        "Device of the array, 125, 120.275, 0.0001",
        "'AC disconnect: rated current', 125, 120.275, 0.0001",
        "Interrupting rating of D1, 100, 18, 0",
        "Disconnect to meter, 8, 10, 0"
    })
    void figuresComeOutAsPublished(String subject, double value, double limit, double tolerance) {
        Check check = all().stream()
                .filter(one -> one.subject().contains(subject))
                .findFirst()
                .orElseGet(() -> one(subject));
        assertThat(check.value()).isCloseTo(value, within(Math.max(tolerance, 1e-9)));
        assertThat(check.limit()).isCloseTo(limit, within(Math.max(tolerance, 1e-9)));
    }

    @Test
    void onABuildingEighteenInSeriesAreTooMany() {
        design.arrays.set(0, ExampleDesign.array(Mounting.FLAT_ROOF, ExampleDesign.MODULE));
        Check cold = one("INV 1 input 1: voltage in the cold");
        assertThat(cold.verdict()).isEqualTo(FAIL);
        assertThat(cold.remedy()).isEqualTo("At most 17 modules in series here; 18 are drawn.");
        assertThat(cold.margin()).isCloseTo(-0.01946, within(0.00001));
    }

    @Test
    void aSilentModuleIsJudgedByTheTableAndBelowItsEndByTheMaker() {
        design.arrays.set(0, ExampleDesign.array(Mounting.GROUND, ExampleDesign.module(null)));
        assertThat(one("INV 1 input 1: voltage in the cold").value()).isCloseTo(18 * 60.379, within(0.001));
        design.lowC = -41.0;
        assertThat(verdict("INV 1 input 1: voltage in the cold")).isEqualTo(NEEDS_ENGINEER);
        design.arrays.set(0, ExampleDesign.array(Mounting.FLAT_ROOF, ExampleDesign.module(null)));
        assertThat(verdict("Arc-fault")).isEqualTo(PASS);
    }

    @Test
    void withoutTemperaturesNothingIsSaidOfStrings() {
        design.lowC = null;
        assertThat(verdict("Strings")).isEqualTo(CANNOT_TELL);
    }

    @Test
    void aStringAboveTheInputsWindowIsFound() {
        design.inverters.replaceAll(inverter -> new PlacedInverter(
                inverter.mark(),
                new org.plumbrow.design.InverterType(
                        "low", 40, 3, 480, 48.11, 1100, 200, 600, 300, 550, 5, 2, 40, 50, 97.5, true, true),
                inverter.array(),
                inverter.place()));
        assertThat(verdict("INV 1 input 1: voltage in the heat")).isEqualTo(FAIL);
        assertThat(one("INV 1 input 1: voltage in the heat").remedy()).contains("At most 16 modules");
        assertThat(verdict("INV 1 input 1: full power in the heat")).isEqualTo(REMARK);
    }

    @Test
    void stringsOfOneInputAreAlike() {
        design.strings.set(1, new PvString("1.1.2", "A1", "INV 1", 1, 17, 19, null));
        assertThat(verdict("strings alike")).isEqualTo(FAIL);
        assertThat(verdict("A1: modules in strings")).isEqualTo(FAIL);
    }

    @Test
    void aModuleStandsInOneStringOnly() {
        design.strings.set(1, new PvString("1.2.1", "A1", "INV 1", 2, 18, 1, null));
        assertThat(one("A1: modules in strings").sentence()).contains("in two strings");
    }

    @Test
    void threeStringsOnAnInputNeedFuses() {
        onOneInput(null);
        assertThat(one("INV 1 input 1: fuses").value()).isCloseTo(34.875, within(1e-9));
        assertThat(verdict("INV 1 input 1: fuses")).isEqualTo(FAIL);
        assertThat(verdict("INV 1 input 1: circuits on the input")).isEqualTo(FAIL);
    }

    /** Three strings, through a combiner or without, on the first input. */
    private void onOneInput(String combiner) {
        for (int at = 0; at < 3; at++) {
            design.strings.set(at, new PvString("1.1." + (at + 1), "A1", "INV 1", 1, 18, 1 + 18 * at, combiner));
        }
    }

    @Test
    void aCombinerLandsAsOneCircuitAndItsFusesGuardTheStringRuns() {
        onOneInput("C1");
        design.combiners.add(new Combiner("C1", "row 1", 3, 25.0, 1500, 100));
        design.run("R3", run -> ExampleDesign.dcRun("R3", "1.1.1", "C1", 220, "12"));
        assertThat(one("INV 1 input 1: circuits on the input").value()).isEqualTo(1);
        assertThat(verdict("INV 1 input 1: fuses")).isEqualTo(PASS);
        assertThat(verdict("R3, 1.1.1 to C1: device of a small conductor")).isEqualTo(FAIL);
        design.run("R3", run -> ExampleDesign.dcRun("R3", "1.1.1", "C1", 220, "10"));
        assertThat(verdict("R3, 1.1.1 to C1: device of a small conductor")).isEqualTo(PASS);
    }

    @Test
    void aCombinerBearsTheVoltageTheCurrentAndTheNumberOfItsStrings() {
        onOneInput("C1");
        design.combiners.add(new Combiner("C1", "row 1", 2, 25.0, 1000, 60));
        assertThat(verdict("Combiner C1: circuits")).isEqualTo(FAIL);
        assertThat(verdict("Combiner C1: rated voltage")).isEqualTo(FAIL);
        assertThat(one("Combiner C1: rated current").limit()).isCloseTo(3 * 21.796875, within(1e-9));
        assertThat(verdict("Combiner C1: rated current")).isEqualTo(FAIL);
    }

    @Test
    void aStringRunNeedsNoThickerGroundForVoltageDrop() {
        design.run("R3", run -> ExampleDesign.dcRun("R3", "1.1.1", "INV 1", 220, "6"));
        assertThat(verdict("R3, 1.1.1 to INV 1: equipment ground")).isEqualTo(PASS);
    }

    @Test
    void theGroundGrowsWithThePhasesButNeverBeyondThem() {
        design.run("R1", run -> ExampleDesign.acRun("R1", "INV 1", "P1", 20, "4", ConductorMaterial.COPPER, "8"));
        assertThat(one("R1, INV 1 to P1: equipment ground").remedy()).isEqualTo("Use at least 4 AWG copper.");
        design.run("R1", run -> ExampleDesign.acRun("R1", "INV 1", "P1", 20, "2/0", ConductorMaterial.COPPER, "2/0"));
        assertThat(verdict("R1, INV 1 to P1: equipment ground")).isEqualTo(PASS);
    }

    @Test
    void whatNoSingleConductorCarriesLiesInSets() {
        design.run("R4", run -> ExampleDesign.acRun("R4", "P1", "D1", 300, "1", ConductorMaterial.ALUMINUM, "2"));
        assertThat(one("R4, P1 to D1: terminals").remedy()).isEqualTo("Use at least 2/0 AWG.");
        for (int number = 3; number <= 9; number++) {
            design.inverters.add(new PlacedInverter("INV " + number, ExampleDesign.inverter(true), "A1", "row 1"));
            design.runs.add(
                    ExampleDesign.acRun("R1" + number, "INV " + number, "P1", 20, "6", ConductorMaterial.COPPER, "8"));
        }
        assertThat(one("R4, P1 to D1: terminals").remedy())
                .isEqualTo("No conductor of the tables carries it: lay more sets side by side, or divide the run.");
        design.run("R4", run -> run.laidAs("600", 2, "4/0", null));
        assertThat(verdict("R4, P1 to D1: terminals")).isEqualTo(PASS);
        assertThat(verdict("R4, P1 to D1: sets side by side")).isEqualTo(PASS);
        design.run("R4", run -> run.laidAs("1", 12, "2", null));
        assertThat(one("R4, P1 to D1: sets side by side").remedy())
                .isEqualTo("Use at least 1/0 AWG in each set, or fewer sets.");
        design.edition = CodeEdition.NEC_2017;
        assertThat(one("R4, P1 to D1: sets side by side").clause()).isEqualTo("NEC 2017 310.10(H)");
    }

    @Test
    void aConductorThatTheTablesDoNotHaveFailsAndBreaksNothing() {
        design.run("R4", run -> ExampleDesign.acRun("R4", "P1", "D1", 300, "14", ConductorMaterial.ALUMINUM, "2"));
        assertThat(verdict("R4, P1 to D1: ampacity")).isEqualTo(FAIL);
        assertThat(one("Voltage at the inverter").remedy()).contains("runs from INV 1", "runs from INV 2");
    }

    @Test
    void eachRunMayPassWhileTheWholeWayDoesNot() {
        design.run("R1", run -> ExampleDesign.acRun("R1", "INV 1", "P1", 200, "6", ConductorMaterial.COPPER, "8"));
        assertThat(verdict("R1, INV 1 to P1: voltage rise")).isEqualTo(PASS);
        assertThat(verdict("R4, P1 to D1: voltage rise")).isEqualTo(PASS);
        Check whole = one("INV 1 to the service: voltage rise");
        assertThat(whole.verdict()).isEqualTo(FAIL);
        assertThat(whole.inputs().get(0).value()).isEqualTo("R1, R4, R5");
    }

    @Test
    void aWayThatEndsNowhereIsNotTakenForOneWithoutRise() {
        design.runs.removeIf(run -> run.mark().equals("R5"));
        assertThat(verdict("Voltage at the inverter")).isEqualTo(CANNOT_TELL);
    }

    @Test
    void aCircleOfRunsComesToAnEnd() {
        design.run("R4", run -> ExampleDesign.acRun("R4", "P1", "INV 1", 300, "4/0", ConductorMaterial.ALUMINUM, "2"));
        assertThat(verdict("Voltage at the inverter")).isEqualTo(CANNOT_TELL);
    }

    @ParameterizedTest
    @CsvSource({"490, PASS", "498, REMARK", "506, FAIL"})
    void theServiceAndTheRiseAddUpAtTheInverter(double highestV, Verdict verdict) {
        design.service =
                new ServicePoint(Service.WYE_480_277, highestV, "M", 800.0, 800.0, 42.0, 18.0, 800.0, 150.0, "T", null);
        assertThat(verdict("Voltage at the inverter")).isEqualTo(verdict);
    }

    @Test
    void aBuriedRunSaysHowDeep() {
        design.run("R4", run -> buried(run, Raceway.PVC_40, null, "ELSEWHERE"));
        assertThat(verdict("R4, P1 to D1: cover")).isEqualTo(CANNOT_TELL);
        design.run("R4", run -> buried(run, Raceway.PVC_40, 17.0, "ELSEWHERE"));
        assertThat(verdict("R4, P1 to D1: cover")).isEqualTo(FAIL);
        design.run("R4", run -> buried(run, Raceway.PVC_40, 18.0, "ELSEWHERE"));
        assertThat(verdict("R4, P1 to D1: cover")).isEqualTo(PASS);
        design.run("R4", run -> buried(run, Raceway.PVC_40, 18.0, "UNDER_STREETS_AND_DRIVEWAYS"));
        assertThat(verdict("R4, P1 to D1: cover")).isEqualTo(FAIL);
    }

    @Test
    void underABuildingNoCableLiesBareAndTheMarginIsNoNumber() {
        design.run("R4", run -> buried(run, Raceway.DIRECT_BURIED, 30.0, "UNDER_A_BUILDING"));
        assertThat(verdict("R4, P1 to D1: cover")).isEqualTo(FAIL);
        design.run("R4", run -> buried(run, Raceway.PVC_40, 0.0, "UNDER_A_BUILDING"));
        assertThat(verdict("R4, P1 to D1: cover")).isEqualTo(PASS);
        assertThat(all()).extracting(Check::margin).noneMatch(margin -> Double.isInfinite(margin));
    }

    private static Run buried(Run run, Raceway raceway, Double coverIn, String under) {
        return new Run(
                run.mark(),
                run.flow(),
                run.from(),
                run.to(),
                run.lengthFt(),
                run.size(),
                run.material(),
                run.insulation(),
                run.conductors(),
                run.groundSize(),
                run.groundMaterial(),
                raceway,
                run.racewaySize(),
                run.ambientC(),
                coverIn,
                under,
                run.terminalC(),
                run.crossings(),
                null);
    }

    @Test
    void aDeviceBearsItsVoltageAndCurrent() {
        design.devices.set(0, ExampleDesign.device("B1", DeviceKind.BREAKER, "R1", 60, 240, 35.0));
        assertThat(verdict("B1, breaker: rated voltage")).isEqualTo(FAIL);
        assertThat(verdict("B1, breaker: rated current")).isEqualTo(FAIL);
        assertThat(one("R1, INV 1 to P1: its device").remedy()).isEqualTo("Use a device of 70 A.");
    }

    @Test
    void aDeviceThatInterruptsLessThanCanFlowIsFound() {
        design.devices.set(0, ExampleDesign.device("B1", DeviceKind.BREAKER, "R1", 70, 480, 14.0));
        assertThat(verdict("Interrupting rating of B1")).isEqualTo(NEEDS_ENGINEER);
        design.devices.set(0, ExampleDesign.device("B1", DeviceKind.BREAKER, "R1", 70, 480, null));
        assertThat(one("Interrupting rating of the devices").remedy()).isEqualTo("Missing: interrupting rating of B1.");
    }

    @Test
    void inABreakerPanelTheBusCounts() {
        design.connection = at(ConnectionKind.BREAKER_AT_FAR_END, null, false);
        design.service =
                new ServicePoint(Service.WYE_480_277, 490.0, "M", 400.0, 400.0, 42.0, 18.0, null, 150.0, "T", null);
        Check bus = one("Busbar");
        assertThat(bus.verdict()).isEqualTo(FAIL);
        assertThat(bus.value()).isCloseTo(520.275, within(0.001));
        assertThat(bus.remedy()).startsWith("With a main of 350 A it fits");
        design.connection = at(ConnectionKind.BREAKER_AT_FAR_END, 350.0, false);
        assertThat(verdict("Busbar")).isEqualTo(REMARK);
        assertThat(one("Busbar").remedy())
                .isEqualTo("With a smaller main: a load calculation has to show that 350 A carry the loads.");
    }

    private static Connection at(ConnectionKind kind, Double newMainA, boolean dwelling) {
        return new Connection(kind, 125.0, 200.0, 0, newMainA, dwelling, "panel");
    }

    @Test
    void theRuleForCenterFedPanelsIsForDwellings() {
        design.connection = at(ConnectionKind.CENTER_FED_PANEL, null, false);
        assertThat(verdict("Busbar")).isEqualTo(FAIL);
        design.connection = at(ConnectionKind.CENTER_FED_PANEL, null, true);
        assertThat(verdict("Busbar")).isEqualTo(PASS);
    }

    @Test
    void theSumRuleAddsTheArraysOwnBreaker() {
        design.connection = at(ConnectionKind.BY_SUM_OF_DEVICES, null, false);
        assertThat(one("Busbar").value()).isEqualTo(325);
    }

    @Test
    void aTapIsNotThinAndItsDeviceIsNear() {
        design.run("R5", run -> ExampleDesign.acRun("R5", "D1", "POI", 20, "8", ConductorMaterial.COPPER, "8"));
        assertThat(verdict("Tap ahead of the main: size of R5")).isEqualTo(FAIL);
        assertThat(verdict("Tap ahead of the main: length of R5")).isEqualTo(REMARK);
    }

    @Test
    void fartherThanTenFeetNeedsTheUtilitysLetter() {
        design.devices.set(3, disconnect(14, false));
        assertThat(verdict("Disconnect to meter")).isEqualTo(FAIL);
        design.devices.set(3, disconnect(14, true));
        assertThat(verdict("Disconnect to meter")).isEqualTo(REMARK);
        design.devices.remove(3);
        assertThat(one("Disconnect to meter").remedy()).isEqualTo("Missing: the disconnect that the utility asks for.");
    }

    @Test
    void whatTheUtilityAllowsIsTheLimitAndTheDisconnectIsAGroupByItself() {
        design.devices.set(3, disconnect(14, false));
        design.service =
                new ServicePoint(Service.WYE_480_277, 490.0, "M", 800.0, 800.0, 42.0, 18.0, 800.0, 150.0, "T", 30);
        assertThat(one("Disconnect to meter").sentence()).isEqualTo("Disconnect to meter: 14 ft of at most 30 ft.");
        assertThat(DesignChecks.of(design.facts()))
                .extracting(DesignChecks.Group::title, DesignChecks.Group::part)
                .containsSubsequence(
                        org.assertj.core.groups.Tuple.tuple("Connection to the service", Part.CONNECTION),
                        org.assertj.core.groups.Tuple.tuple("Disconnect", Part.DEVICES));
    }

    private static Device disconnect(double feet, boolean letter) {
        return new Device(
                "D1",
                DeviceKind.FUSED_DISCONNECT,
                "AC disconnect",
                "R4",
                125,
                480,
                100.0,
                "outside",
                "anybody",
                true,
                feet,
                letter);
    }

    @Test
    void invertersFeedTheVoltageThatIsThere() {
        design.service =
                new ServicePoint(Service.WYE_208_120, 211.0, "M", 800.0, 800.0, 42.0, 18.0, 800.0, 150.0, "T", null);
        assertThat(verdict("Inverters and service")).isEqualTo(FAIL);
    }

    @Test
    void aRoofAsksForRapidShutdownOfTheInvertersThatItsStringsReach() {
        design.arrays.set(0, ExampleDesign.array(Mounting.FLAT_ROOF, ExampleDesign.MODULE));
        assertThat(one("Rapid shutdown").sentence()).contains("initiator is not shown");
        design.labels = List.of(new Label("outside", "Rapid Shutdown initiator", "NEC 690.56(C)"));
        design.inverters.add(new PlacedInverter("INV 9", ExampleDesign.inverter(false), null, "field"));
        assertThat(verdict("Rapid shutdown")).isEqualTo(PASS);
        design.strings.add(new PvString("9.1.1", "A1", "INV 9", 1, 17, 1, null));
        assertThat(verdict("Rapid shutdown")).isEqualTo(FAIL);
        assertThat(verdict("Arc-fault")).isEqualTo(FAIL);
    }

    @Test
    void theEngineersLetterCoversTheSite() {
        design.racking = ExampleDesign.racking(120, 115, 50);
        assertThat(verdict("Wind of the site")).isEqualTo(FAIL);
        assertThat(verdict("Embedment of the posts")).isEqualTo(NEEDS_ENGINEER);
        design.racking = null;
        assertThat(verdict("Structural letter")).isEqualTo(CANNOT_TELL);
    }

    @Test
    void nothingKeepsAGeneratorApartUntilItIsSaid() {
        design.generator = new Generator(60.0, "manual", "wall", false, "");
        assertThat(verdict("Generator and array")).isEqualTo(FAIL);
        design.generator = new Generator(60.0, "manual", "wall", false, "key interlock");
        assertThat(verdict("Generator and array")).isEqualTo(PASS);
        design.generator = new Generator(60.0, "manual", "wall", true, "");
        assertThat(verdict("Generator and array")).isEqualTo(PASS);
    }

    @ParameterizedTest
    @CsvSource({
        "NEC_2014, NEC 2014 705.12(D)(2)(3)(b)",
        "NEC_2017, NEC 2017 705.12(B)(2)(3)(b)",
        "NEC_2020, NEC 2020 705.12(B)(2)",
        "NEC_2023, NEC 2023 705.12(B)(2)",
        "NEC_2026, NEC 2026 (numbers of 2023) 705.12(B)(2)"
    })
    void aClauseIsNamedAsTheEditionInForceDoes(CodeEdition edition, String clause) {
        design.connection = at(ConnectionKind.BREAKER_AT_FAR_END, null, false);
        design.edition = edition;
        assertThat(one("Busbar").clause()).isEqualTo(clause);
        assertThat(all()).extracting(Check::clause).noneMatch(cited -> cited.matches(".*NEC [0-9]{3}[.].*"));
    }

    @Test
    void anEmptyDesignIsJudgedWithoutGuessing() {
        design.arrays.clear();
        design.inverters.clear();
        design.strings.clear();
        design.runs.clear();
        design.devices.clear();
        design.racking = null;
        assertThat(all()).isNotEmpty().allMatch(check -> check.verdict() == CANNOT_TELL);
    }

    /** What does not pass says what to do; what is known shows what went in. */
    @Test
    void everyCheckSaysItsClauseAndWhatToDo() {
        design.run("R4", run -> ExampleDesign.acRun("R4", "P1", "D1", 900, "1", ConductorMaterial.ALUMINUM, "8"));
        design.racking = ExampleDesign.racking(130, 115, 84);
        assertThat(all()).filteredOn(check -> check.verdict() == FAIL).hasSizeGreaterThan(3);
        assertThat(all()).allSatisfy(check -> {
            assertThat(check.clause()).isNotBlank();
            assertThat(check.sentence()).isNotBlank().endsWith(".");
            assertThat(check.remedy().isEmpty()).isEqualTo(check.verdict() == PASS);
        });
    }
}
