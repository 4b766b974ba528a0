package org.plumbrow.calc.electrical;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What must hold for every size, length and temperature. */
class ElectricalPropertiesTest {

    @ParameterizedTest
    @EnumSource(ConductorMaterial.class)
    void aThickerConductorCarriesMoreAndLosesLess(ConductorMaterial material) {
        ConductorSize last = null;
        for (ConductorSize size : ConductorSize.values()) {
            OptionalDouble carries = size.ampacity(material, TemperatureRating.C75);
            if (carries.isEmpty()) {
                continue;
            }
            if (last != null) {
                assertThat(size.circularMils()).isGreaterThan(last.circularMils());
                assertThat(carries.getAsDouble())
                        .isGreaterThan(
                                last.ampacity(material, TemperatureRating.C75).orElseThrow());
                assertThat(size.dcOhmsPerKft(material).orElseThrow())
                        .isLessThan(last.dcOhmsPerKft(material).orElseThrow());
            }
            last = size;
        }
    }

    /** ρ / circular mils: 12.9 and 21.2 ohm cmil a foot at 75 °C, the trade's constants, within 2 %. */
    @ParameterizedTest
    @EnumSource(ConductorSize.class)
    void resistanceFollowsTheSectionalArea(ConductorSize size) {
        assertThat(size.dcOhmsPerKft(ConductorMaterial.COPPER).orElseThrow())
                .isCloseTo(12_900.0 / size.circularMils(), within(0.02 * 12_900 / size.circularMils()));
        assertThat(size.dcOhmsPerKft(ConductorMaterial.ALUMINUM).orElseThrow())
                .isCloseTo(21_200.0 / size.circularMils(), within(0.02 * 21_200 / size.circularMils()));
    }

    /** The correction is √((T - ambient) / (T - 30)) at the upper end of each row, as the code's own formula has it. */
    @ParameterizedTest
    @ValueSource(ints = {35, 40, 45, 50, 55})
    void ambientFactorsFollowTheirFormula(int ambientC) {
        for (TemperatureRating column : TemperatureRating.values()) {
            double formula = Math.sqrt((column.celsius() - ambientC) / (column.celsius() - 30.0));
            assertThat(Ampacity.ambientFactor(ambientC, column)).isCloseTo(formula, within(0.006));
        }
    }

    @Test
    void dropGrowsWithLengthAndCurrentAndFallsWithVoltage() {
        var base = VoltageDrop.dc(ConductorSize.AWG_10, ConductorMaterial.COPPER, 100, 10, 600);
        assertThat(VoltageDrop.dc(ConductorSize.AWG_10, ConductorMaterial.COPPER, 200, 10, 600)
                        .volts())
                .isCloseTo(2 * base.volts(), within(1e-12));
        assertThat(VoltageDrop.dc(ConductorSize.AWG_10, ConductorMaterial.COPPER, 100, 20, 600)
                        .volts())
                .isCloseTo(2 * base.volts(), within(1e-12));
        assertThat(VoltageDrop.dc(ConductorSize.AWG_10, ConductorMaterial.COPPER, 100, 10, 1200)
                        .percent())
                .isCloseTo(base.percent() / 2, within(1e-12));
    }

    @Test
    void aDeviceOfTheNextSizeUpProtectsToEightHundredAmperesOnly() {
        assertThat(Overcurrent.largestFor(130)).hasValue(150);
        assertThat(Overcurrent.largestFor(150)).hasValue(150);
        assertThat(Overcurrent.largestFor(701)).hasValue(800);
        assertThat(Overcurrent.largestFor(805)).hasValue(800);
        assertThat(Overcurrent.sizeFor(60.1407)).hasValue(70);
        assertThat(Overcurrent.sizeFor(6001)).isEmpty();
    }

    @Test
    void theCorrectedFigureNeverExceedsTheTerminals() {
        assertThat(Ampacity.corrected(ConductorSize.AWG_10, ConductorMaterial.COPPER, TemperatureRating.C60, 20, 3))
                .hasValue(30);
        assertThat(Ampacity.corrected(ConductorSize.AWG_10, ConductorMaterial.COPPER, TemperatureRating.C75, 55, 3)
                        .orElseThrow())
                .isCloseTo(40 * 0.76, within(1e-9));
        assertThat(Ampacity.corrected(ConductorSize.AWG_14, ConductorMaterial.ALUMINUM, TemperatureRating.C75, 30, 3))
                .isEmpty();
    }

    @Test
    void aSumEqualToTheLimitPassesAndAHairMoreFails() {
        assertThat(Busbar.with(Busbar.Rule.FAR_END, 200, 200, 32).within()).isTrue();
        assertThat(Busbar.with(Busbar.Rule.FAR_END, 200, 200, 32.001).within()).isFalse();
        assertThat(check(32.001).remedy()).contains("main of 175 A");
        assertThat(check(120).remedy()).doesNotContain("main of 0");
    }

    private static Check check(double outputA) {
        return ConnectionChecks.bus(connection(outputA, 200.0, 200.0));
    }

    private static ConnectionCase connection(double outputA, Double busA, Double mainA) {
        return new ConnectionCase(
                Service.SINGLE_PHASE_120_240,
                Busbar.Rule.FAR_END,
                outputA,
                0,
                7.6,
                busA,
                mainA,
                40.0,
                null,
                null,
                22.0,
                10.0,
                null);
    }

    @Test
    void whatIsMissingIsNamed() {
        Check bus = ConnectionChecks.bus(connection(20, null, 200.0));
        assertThat(bus.verdict()).isEqualTo(Verdict.CANNOT_TELL);
        assertThat(bus.remedy()).isEqualTo("Missing: busbar rating.");
    }

    @Test
    void aFarDisconnectNeedsTheUtilitysLetter() {
        Check far = ConnectionChecks.disconnect(14.0, 10, false);
        assertThat(far.sentence()).isEqualTo("Disconnect to meter: 14 ft of at most 10 ft.");
        assertThat(far.verdict()).isEqualTo(Verdict.FAIL);
        assertThat(far.remedy()).isEqualTo("Move it, or attach the utility's letter.");
        assertThat(ConnectionChecks.disconnect(14.0, 10, true).verdict()).isEqualTo(Verdict.REMARK);
        assertThat(ConnectionChecks.disconnect(10.0, 10, false).verdict()).isEqualTo(Verdict.PASS);
    }

    @Test
    void aRunNamesTheSizeThatWouldDo() {
        ConductorCase thin = new ConductorCase(
                "R1",
                3,
                96.225,
                96.225,
                480,
                700,
                125.0,
                ConductorSize.AWG_2_0,
                ConductorMaterial.ALUMINUM,
                Insulation.XHHW_2,
                TemperatureRating.C75,
                30,
                3,
                ConductorSize.AWG_4,
                ConductorMaterial.ALUMINUM,
                Raceway.PVC_40,
                "2",
                false,
                18.0,
                BurialCover.UNDER_STREETS_AND_DRIVEWAYS,
                1);
        assertThat(ConductorChecks.of(thin))
                .filteredOn(check -> check.verdict() == Verdict.FAIL)
                .extracting(Check::sentence, Check::remedy)
                .containsExactly(
                        org.assertj.core.api.Assertions.tuple(
                                "R1: voltage rise: 3.89 % of at most 2 %.",
                                ConductorChecks.smallest(thin).orElseThrow().words() + " keeps it within the limit."),
                        org.assertj.core.api.Assertions.tuple(
                                "R1: cover: 18 in, at least 24 in are needed.", "Bury it deeper."));
        ConductorCase thick = thin.with(ConductorChecks.smallest(thin).orElseThrow());
        assertThat(thick.drop().percent()).isLessThanOrEqualTo(2);
        assertThat(ConductorChecks.of(thick))
                .as("the ground grows with the phases")
                .anyMatch(check -> check.subject().contains("ground") && check.verdict() == Verdict.FAIL);
    }

    /**
     * By hand, no published example at hand: 3/0 copper carries 200 A at 75 °C and 225 A at 90 °C (Table 310.16), two sets
     * 400 and 450 A; 320 A with a quarter are 400 A. Chapter 9 gives 3/0 copper 0.077 ohms a 1000 ft in PVC:
     * √3 × 0.3 × 0.077 × 160 A = 6.402 V, 1.334 % of 480 V. Table 250.122: 3 AWG copper beside 400 A, in each raceway.
     */
    @Test
    void twoSetsShareTheCurrentAndAreNotThin() {
        ConductorCase one = sets("3/0", 1);
        assertThat(ConductorChecks.of(one)).anyMatch(check -> check.verdict() == Verdict.FAIL);
        ConductorCase two = one.inSets(2);
        assertThat(ConductorChecks.of(two)).allMatch(check -> check.verdict() == Verdict.PASS);
        assertThat(value(two, "terminals")).isEqualTo(400);
        assertThat(value(two, "in its heat and company")).isEqualTo(450);
        assertThat(value(two, "voltage rise")).isCloseTo(1.334, org.assertj.core.api.Assertions.within(0.001));
        assertThat(ConductorChecks.leastGround(two)).contains(ConductorSize.AWG_3);
        assertThat(two.drop().volts()).isCloseTo(one.drop().volts() / 2, org.assertj.core.api.Assertions.within(1e-9));
        assertThat(ConductorChecks.of(sets("1", 4)))
                .filteredOn(check -> check.verdict() == Verdict.FAIL)
                .extracting(Check::remedy)
                .containsExactly("Use at least 1/0 AWG in each set, or fewer sets.");
        assertThat(ConductorChecks.smallest(sets("10", 2))).contains(ConductorSize.AWG_3_0);
        org.assertj.core.api.Assertions.assertThatThrownBy(() -> one.inSets(0))
                .isInstanceOf(IllegalArgumentException.class);
    }

    private static double value(ConductorCase run, String what) {
        return ConductorChecks.of(run).stream()
                .filter(check -> check.subject().endsWith(": " + what))
                .findFirst()
                .orElseThrow()
                .value();
    }

    private static ConductorCase sets(String size, int sets) {
        return new ConductorCase(
                "R1",
                3,
                320,
                320,
                480,
                300,
                400.0,
                ConductorSize.of(size).orElseThrow(),
                ConductorMaterial.COPPER,
                Insulation.THWN_2,
                TemperatureRating.C75,
                30,
                3,
                ConductorSize.AWG_3,
                ConductorMaterial.COPPER,
                Raceway.PVC_40,
                "2",
                false,
                24.0,
                BurialCover.ELSEWHERE,
                sets);
    }

    @Test
    void rapidShutdownIsAskedOnBuildingsOnly() {
        assertThat(RoofChecks.rapidShutdown(false, false, false).verdict()).isEqualTo(Verdict.PASS);
        assertThat(RoofChecks.rapidShutdown(true, false, true).verdict()).isEqualTo(Verdict.FAIL);
        assertThat(RoofChecks.rapidShutdown(true, true, false).verdict()).isEqualTo(Verdict.FAIL);
        assertThat(RoofChecks.rapidShutdown(true, true, true).verdict()).isEqualTo(Verdict.PASS);
        assertThat(RoofChecks.arcFault(true, 500, false).verdict()).isEqualTo(Verdict.FAIL);
        assertThat(RoofChecks.arcFault(true, 60, false).verdict()).isEqualTo(Verdict.PASS);
    }

    @Test
    void aRiseAboveRangeBFails() {
        assertThat(VoltageRise.atInverter(Service.WYE_480_277, 500, 9.33).verdict())
                .isEqualTo(Verdict.FAIL);
        assertThat(VoltageRise.atInverter(Service.WYE_480_277, 490, 9.33).verdict())
                .isEqualTo(Verdict.PASS);
        assertThat(VoltageRise.atInverter(Service.SINGLE_PHASE_120_240, 250, 3).verdict())
                .isEqualTo(Verdict.REMARK);
        assertThat(Optional.of(Service.DELTA_240.lineV())).hasValue(240);
    }
}
