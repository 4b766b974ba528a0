package org.plumbrow.calc.energy;

import java.util.List;

/**
 * Arrays that feed one inverter, or several alike that share their load evenly.
 *
 * @param inverter with the rating of all of them together
 * @param sections at least one
 */
public record InverterGroup(String name, Inverter inverter, List<ArraySection> sections) {

    public InverterGroup {
        sections = List.copyOf(sections);
        if (sections.isEmpty()) {
            throw new IllegalArgumentException("inverter group " + name + " has no array");
        }
    }

    public double kwDc() {
        return sections.stream().mapToDouble(ArraySection::kwDc).sum();
    }

    /** DC over AC rating. */
    public double dcToAc() {
        return kwDc() / inverter.acKw();
    }
}
