package org.plumbrow.calc.duration;

/** Few inverters for whole strings, or one device at each module. */
public enum InverterKind {
    STRING_INVERTERS("string inverters"),
    MICROINVERTERS("microinverters or optimisers");

    private final String words;

    InverterKind(String words) {
        this.words = words;
    }

    public String words() {
        return words;
    }

    /** As many inverters as at least half the modules can only be microinverters. */
    public static InverterKind from(int inverters, int modules) {
        return inverters > 1 && 2 * inverters >= modules ? MICROINVERTERS : STRING_INVERTERS;
    }
}
