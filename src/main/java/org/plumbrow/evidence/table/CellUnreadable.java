package org.plumbrow.evidence.table;

/** A cell does not hold what its column should; the message says what it holds instead: "13/32/2026" is no date. */
public final class CellUnreadable extends Exception {

    CellUnreadable(String sentence) {
        super(sentence);
    }

    public String sentence() {
        return String.valueOf(getMessage());
    }
}
