package org.plumbrow.calc.energy;

/** What is left of a section's energy after each step, kWh; the light counts as what it would give at the modules' rating. */
public enum Stage {
    OPEN_LIGHT("Light on the plane, nothing in the way"),
    LIGHT("after shade of horizon and rows"),
    ENTERED("after reflection at the glass"),
    WARM_DC("after the cells' temperature"),
    DC("after the losses listed");

    static final int COUNT = values().length;

    private final String words;

    Stage(String words) {
        this.words = words;
    }

    public String words() {
        return words;
    }
}
