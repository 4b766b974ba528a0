package org.plumbrow.estimate.site;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import org.plumbrow.calc.duration.Mounting;
import org.plumbrow.calc.energy.ArraySection;
import org.plumbrow.calc.energy.Inverter;
import org.plumbrow.estimate.DesignedSystem;
import org.plumbrow.project.ProjectFacts;
import org.plumbrow.project.ProjectFacts.ArrayFacts;

/**
 * The system as the contract has it, all arrays on all inverters together: the contract does not say which feeds which.
 * What it leaves open is missing or assumed, and said.
 */
final class ContractSystem {

    private static final double USUAL_DC_TO_AC = 1.2;

    private final ProjectFacts.Contract contract;
    private final YieldTerms terms;
    private final List<String> missing = new ArrayList<>();
    private final List<String> remarks = new ArrayList<>();
    private final List<DesignedSystem.Array> arrays = new ArrayList<>();

    ContractSystem(ProjectFacts.Contract contract, YieldTerms terms) {
        this.contract = contract;
        this.terms = terms;
        if (contract.arrays().isEmpty()) {
            missing.add("The contract names no array. Add one with its modules, tilt and azimuth.");
        }
        for (int at = 0; at < contract.arrays().size(); at++) {
            add(at, contract.arrays().get(at));
        }
    }

    List<String> missing() {
        return missing;
    }

    List<String> remarks() {
        return remarks;
    }

    private void add(int at, ArrayFacts array) {
        String name = name(at, array);
        if (array.modules() == null || array.moduleW() == null) {
            missing.add(name + " lacks its number of modules or their watts.");
            return;
        }
        double kwDc = array.modules() * array.moduleW().doubleValue() / 1000;
        if (!ArraySection.KW_DC.holds(kwDc)) {
            missing.add(name + " has no module.");
            return;
        }
        if (array.tiltDeg() == null || array.azimuthDeg() == null) {
            missing.add(name + " lacks its tilt or its azimuth.");
            return;
        }
        arrays.add(array(at, array, kwDc));
    }

    private DesignedSystem.Array array(int at, ArrayFacts array, double kwDc) {
        YieldTerms.RowFeet rows = terms.rowsOf(at);
        return new DesignedSystem.Array(
                name(at, array),
                kwDc,
                java.util.Objects.requireNonNull(array.tiltDeg()).doubleValue(),
                java.util.Objects.requireNonNull(array.azimuthDeg()).doubleValue(),
                array.mounting(),
                terms.gammaPercent() / 100,
                rows.widthM(),
                rows.pitchM());
    }

    static String name(int at, ArrayFacts array) {
        return "Array %d, %s".formatted(at + 1, array.mounting().words());
    }

    /** Only when nothing is missing. */
    List<DesignedSystem.Group> groups() {
        double kwDc = arrays.stream().mapToDouble(DesignedSystem.Array::kwDc).sum();
        if (arrays.size() > 1) {
            remarks.add(
                    "All arrays are taken to share the inverters evenly, as the contract does not say which feeds which.");
        }
        if (arrays.stream().anyMatch(array -> array.mounting() != Mounting.PITCHED_ROOF && array.rowPitchM() == null)) {
            remarks.add("The shade of rows on one another is not counted: row height and pitch are not known.");
        }
        return List.of(new DesignedSystem.Group(
                inverterName(), kwAc(kwDc), terms.efficiencyPercent() / 100, List.copyOf(arrays)));
    }

    private String inverterName() {
        Integer count = contract.inverters();
        return count == null || count == 1 ? "Inverter" : count + " inverters";
    }

    private double kwAc(double kwDc) {
        BigDecimal each = contract.inverterKwAc();
        Integer count = contract.inverters();
        if (each != null && count != null && Inverter.AC_KW.holds(each.doubleValue() * count)) {
            return each.doubleValue() * count;
        }
        BigDecimal all = contract.systemKwAc();
        if (all != null && Inverter.AC_KW.holds(all.doubleValue())) {
            return all.doubleValue();
        }
        remarks.add("The contract names no inverter rating; %.1f kW DC for each kW AC was taken."
                .formatted(USUAL_DC_TO_AC));
        return Math.max(Inverter.AC_KW.least(), kwDc / USUAL_DC_TO_AC);
    }
}
