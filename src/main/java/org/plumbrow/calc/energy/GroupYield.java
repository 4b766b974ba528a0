package org.plumbrow.calc.energy;

import java.util.List;

/**
 * What the arrays of one inverter make in a year.
 *
 * @param unclippedKwh after conversion, before the inverter's limit
 * @param acKwh at the inverter's terminals
 * @param clippedHours hours at the limit
 */
public record GroupYield(
        InverterGroup group, List<SectionYield> sections, double unclippedKwh, double acKwh, int clippedHours) {

    public double dcKwh() {
        return sections.stream().mapToDouble(section -> section.kwh(Stage.DC)).sum();
    }

    public double clippedKwh() {
        return unclippedKwh - acKwh;
    }
}
