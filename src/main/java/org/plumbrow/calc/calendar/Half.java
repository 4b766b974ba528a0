package org.plumbrow.calc.calendar;

/** The two halves of a working day, in their order. */
public enum Half {
    MORNING("morning"),
    AFTERNOON("afternoon");

    private final String words;

    Half(String words) {
        this.words = words;
    }

    public String words() {
        return words;
    }
}
