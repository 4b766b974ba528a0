package org.plumbrow.calc.electrical;

/** The insulations met on a solar job; all are rated 90 °C dry and wet. */
public enum Insulation {
    THWN_2("THWN-2"),
    XHHW_2("XHHW-2"),
    USE_2("USE-2"),
    PV_WIRE("PV wire");

    private final String words;

    Insulation(String words) {
        this.words = words;
    }

    public String words() {
        return words;
    }
}
