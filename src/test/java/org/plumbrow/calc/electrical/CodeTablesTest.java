package org.plumbrow.calc.electrical;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.aggregator.ArgumentsAccessor;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.plumbrow.calc.electrical.ServiceVoltage.OwnLimits;

/** Every cell of every code table against its reprint; an empty cell is a conductor that does not exist. */
class CodeTablesTest {

    private static void sameCell(ArgumentsAccessor row, int column, OptionalDouble coded) {
        Double printed = row.getDouble(column);
        if (printed == null) {
            assertThat(coded).isEmpty();
        } else {
            assertThat(coded).hasValue(printed);
        }
    }

    @ParameterizedTest
    @CsvFileSource(resources = "/reference/electrical/ampacity.csv", numLinesToSkip = 2)
    void ampacity(ArgumentsAccessor row) {
        ConductorSize size = ConductorSize.of(row.getString(0)).orElseThrow();
        for (ConductorMaterial material : ConductorMaterial.values()) {
            for (TemperatureRating column : TemperatureRating.values()) {
                sameCell(row, 1 + 3 * material.ordinal() + column.ordinal(), size.ampacity(material, column));
            }
        }
        assertThat(size.circularMils()).isEqualTo(row.getInteger(7));
    }

    @ParameterizedTest
    @CsvFileSource(resources = "/reference/electrical/resistance.csv", numLinesToSkip = 2)
    void resistance(ArgumentsAccessor row) {
        ConductorSize size = ConductorSize.of(row.getString(0)).orElseThrow();
        for (ConductorMaterial material : ConductorMaterial.values()) {
            sameCell(row, 1 + material.ordinal(), size.dcOhmsPerKft(material));
            sameCell(row, 3 + material.ordinal(), size.acOhmsPerKft(material));
            sameCell(row, 7 + material.ordinal(), size.effectiveOhmsPerKft(material));
        }
        sameCell(row, 5, size.reactanceOhmsPerKft(Raceway.PVC_40));
        sameCell(row, 6, size.reactanceOhmsPerKft(Raceway.EMT));
    }

    /** Z = R cosφ + X sinφ at 0.85, R and Z printed to two digits: the tables agree with one another. */
    @ParameterizedTest
    @CsvFileSource(resources = "/reference/electrical/resistance.csv", numLinesToSkip = 2)
    void resistanceAndReactanceGiveTheEffectiveColumn(ArgumentsAccessor row) {
        ConductorSize size = ConductorSize.of(row.getString(0)).orElseThrow();
        double z = size.acOhmsPerKft(ConductorMaterial.COPPER).orElseThrow() * 0.85
                + size.reactanceOhmsPerKft(Raceway.PVC_40).orElseThrow() * Math.sqrt(1 - 0.85 * 0.85);
        double printed = size.effectiveOhmsPerKft(ConductorMaterial.COPPER).orElseThrow();
        assertThat(z).isCloseTo(printed, within(0.06 * printed));
    }

    @ParameterizedTest
    @CsvFileSource(resources = "/reference/electrical/ambient-correction.csv", numLinesToSkip = 2)
    void ambient(ArgumentsAccessor row) {
        for (TemperatureRating column : TemperatureRating.values()) {
            Double printed = row.getDouble(2 + column.ordinal());
            double factor = printed == null ? 0 : printed;
            assertThat(Ampacity.ambientFactor(row.getDouble(0), column)).isEqualTo(factor);
            assertThat(Ampacity.ambientFactor(row.getDouble(1), column)).isEqualTo(factor);
        }
    }

    @Test
    void betweenTwoRowsOfAmbientTheHotterCounts() {
        assertThat(Ampacity.ambientFactor(35.1, TemperatureRating.C90)).isEqualTo(0.91);
        assertThat(Ampacity.ambientFactor(86, TemperatureRating.C90)).isZero();
    }

    @ParameterizedTest
    @CsvFileSource(resources = "/reference/electrical/bundling.csv", numLinesToSkip = 2)
    void bundling(int from, int to, double factor) {
        assertThat(Ampacity.bundlingFactor(from)).isEqualTo(factor);
        assertThat(Ampacity.bundlingFactor(to)).isEqualTo(factor);
    }

    @ParameterizedTest
    @CsvFileSource(resources = "/reference/electrical/small-conductors.csv", numLinesToSkip = 2)
    void smallConductors(ConductorMaterial material, String size, int mostA) {
        assertThat(Ampacity.smallConductorMostA(ConductorSize.of(size).orElseThrow(), material))
                .hasValue(mostA);
        assertThat(Ampacity.smallConductorMostA(ConductorSize.AWG_8, material)).isEmpty();
    }

    @Test
    void standardDevices() throws Exception {
        List<Integer> printed;
        try (var lines = new java.io.BufferedReader(new java.io.InputStreamReader(
                        CodeTablesTest.class.getResourceAsStream("/reference/electrical/standard-devices.csv"),
                        java.nio.charset.StandardCharsets.UTF_8))
                .lines()) {
            printed = lines.skip(2).map(Integer::valueOf).toList();
        }
        assertThat(Overcurrent.standardSizes()).isEqualTo(printed);
    }

    @ParameterizedTest
    @CsvFileSource(resources = "/reference/electrical/equipment-ground.csv", numLinesToSkip = 2)
    void equipmentGround(int deviceA, String copper, String aluminum) {
        assertThat(EquipmentGround.forDevice(deviceA, ConductorMaterial.COPPER)).isEqualTo(ConductorSize.of(copper));
        assertThat(EquipmentGround.forDevice(deviceA, ConductorMaterial.ALUMINUM))
                .isEqualTo(ConductorSize.of(aluminum));
        assertThat(EquipmentGround.forDevice(deviceA + 1, ConductorMaterial.COPPER))
                .isNotEqualTo(ConductorSize.of(copper));
    }

    @ParameterizedTest
    @CsvFileSource(resources = "/reference/electrical/conduit-area.csv", numLinesToSkip = 2)
    void conduitAreas(Raceway raceway, String tradeSize, double areaIn2) {
        assertThat(ConduitFill.areaIn2(raceway, tradeSize)).hasValue(areaIn2);
    }

    @ParameterizedTest
    @CsvFileSource(resources = "/reference/electrical/conductor-area.csv", numLinesToSkip = 2)
    void conductorAreas(Insulation insulation, String size, double areaIn2) {
        assertThat(ConductorSize.of(size).orElseThrow().areaIn2(insulation)).hasValue(areaIn2);
    }

    @ParameterizedTest
    @CsvFileSource(resources = "/reference/electrical/conduit-fill.csv", numLinesToSkip = 2)
    void conduitFill(int conductors, boolean nipple, int mostPercent) {
        assertThat(ConduitFill.mostPercent(conductors, nipple)).isEqualTo(mostPercent);
    }

    @ParameterizedTest
    @CsvFileSource(resources = "/reference/electrical/burial-cover.csv", numLinesToSkip = 2)
    void burialCover(BurialCover location, int direct, int rigid, int pvc, int branch, int control) {
        assertThat(location.leastIn(Raceway.DIRECT_BURIED)).isEqualTo(direct);
        assertThat(location.leastIn(Raceway.RMC)).isEqualTo(rigid);
        assertThat(location.leastIn(Raceway.PVC_40)).isEqualTo(pvc);
        assertThat(location.branchCircuitIn()).isEqualTo(branch);
        assertThat(location.controlCircuitIn()).isEqualTo(control);
    }

    @ParameterizedTest
    @CsvFileSource(resources = "/reference/electrical/cold-voltage.csv", numLinesToSkip = 2)
    void coldVoltage(int fromC, int toC, double factor) {
        assertThat(StringVoltage.factorByTable(fromC)).isEqualTo(factor);
        assertThat(StringVoltage.factorByTable(toC)).isEqualTo(factor);
        assertThat(StringVoltage.factorByTable(toC + 0.5))
                .as("between two rows the colder one")
                .isEqualTo(factor);
    }

    @Test
    void theColdTableEndsAtFortyBelow() {
        assertThatThrownBy(() -> StringVoltage.factorByTable(-40.5)).isInstanceOf(IllegalArgumentException.class);
    }

    @ParameterizedTest
    @CsvFileSource(resources = "/reference/electrical/design-temperatures.csv", numLinesToSkip = 2)
    void designTemperatures(String station, double heating, double min, double deviation, double max, double cooling) {
        DesignStation coded = java.util.Arrays.stream(DesignStation.values())
                .filter(one -> one.words().equals(station))
                .findFirst()
                .orElseThrow();
        assertThat(new double[] {
                    coded.heating996C(),
                    coded.meanExtremeMinC(),
                    coded.deviationOfMinK(),
                    coded.meanExtremeMaxC(),
                    coded.cooling2C()
                })
                .containsExactly(heating, min, deviation, max, cooling);
    }

    @ParameterizedTest
    @CsvFileSource(resources = "/reference/electrical/insulation-test.csv", numLinesToSkip = 2)
    void insulationTest(double aboveV, double uptoV, int testV, double leastMohm) {
        assertThat(InsulationTest.ofString(uptoV / 1.25)).isEqualTo(new InsulationTest(testV, leastMohm));
        assertThat(InsulationTest.ofString((aboveV + 0.001) / 1.25)).isEqualTo(new InsulationTest(testV, leastMohm));
    }

    @ParameterizedTest
    @CsvFileSource(resources = "/reference/electrical/grid-timing.csv", numLinesToSkip = 2)
    void gridTiming(GridTiming.What what, String category, Double value, String unit, Double seconds) {
        var printed = new GridTiming(
                what,
                category == null ? "" : category,
                value == null ? Double.NaN : value,
                unit == null ? "" : unit,
                seconds == null ? Double.NaN : seconds);
        assertThat(GridTiming.all()).contains(printed).hasSize(22);
    }

    @ParameterizedTest
    @CsvFileSource(resources = "/reference/electrical/state-limits.csv", numLinesToSkip = 2)
    void aStatesOwnLimitsTakeThePlaceOfTheStandards(
            Service service, Double legLeast, Double legMost, double lineLeast, double lineMost) {
        var own = new OwnLimits(
                legLeast == null
                        ? java.util.Optional.empty()
                        : java.util.Optional.of(OwnLimits.between(legLeast, legMost)),
                OwnLimits.between(lineLeast, lineMost));
        String line = service.isThreePhase() ? "B-C" : "A-B";
        assertThat(worst(service, line, lineMost, own)).isEqualTo(Service.Band.A);
        assertThat(worst(service, line, lineMost + 0.1, own)).isEqualTo(Service.Band.OUTSIDE);
        assertThat(worst(service, line, lineLeast - 0.1, own)).isEqualTo(Service.Band.OUTSIDE);
        if (legLeast != null) {
            assertThat(worst(service, "A-N", legLeast, own)).isEqualTo(Service.Band.A);
            assertThat(worst(service, "A-N", legLeast - 0.1, own)).isEqualTo(Service.Band.OUTSIDE);
        }
    }

    private static Service.Band worst(Service service, String pair, double volts, OwnLimits own) {
        return ServiceVoltage.judge(service, java.util.Map.of(pair, volts), java.util.Optional.of(own))
                .worst();
    }
}
