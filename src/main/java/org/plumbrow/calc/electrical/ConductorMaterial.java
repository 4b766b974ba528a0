package org.plumbrow.calc.electrical;

/** What a conductor is made of. */
public enum ConductorMaterial {
    COPPER("copper", "Cu"),
    ALUMINUM("aluminum", "Al");

    private final String words;
    private final String symbol;

    ConductorMaterial(String words, String symbol) {
        this.words = words;
        this.symbol = symbol;
    }

    public String words() {
        return words;
    }

    /** As drawings write it: "Cu". */
    public String symbol() {
        return symbol;
    }
}
