package org.plumbrow.design;

/** What flows in a run. */
public enum Flow {
    DC_STRING("direct current of one string"),
    DC_COMBINED("direct current of several strings"),
    AC("alternating current");

    private final String words;

    Flow(String words) {
        this.words = words;
    }

    public String words() {
        return words;
    }
}
