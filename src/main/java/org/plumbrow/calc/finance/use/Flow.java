package org.plumbrow.calc.finance.use;

/** Which way the electricity of a channel goes. */
public enum Flow {
    /** From the utility to the customer: use. */
    DELIVERED("delivered"),
    /** From the customer to the utility: export. */
    RECEIVED("received"),
    /** The file does not say; taken as use. */
    UNKNOWN("unknown");

    private final String words;

    Flow(String words) {
        this.words = words;
    }

    public String words() {
        return words;
    }
}
