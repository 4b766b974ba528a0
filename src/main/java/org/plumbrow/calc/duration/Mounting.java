package org.plumbrow.calc.duration;

/** What an array stands on. */
public enum Mounting {
    GROUND("ground mount"),
    FLAT_ROOF("flat roof"),
    PITCHED_ROOF("pitched roof");

    private final String words;

    Mounting(String words) {
        this.words = words;
    }

    public String words() {
        return words;
    }
}
