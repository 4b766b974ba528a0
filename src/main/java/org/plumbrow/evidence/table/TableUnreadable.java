package org.plumbrow.evidence.table;

/** The file as a whole cannot be read as a table; the message says why and what to do. */
public final class TableUnreadable extends Exception {

    TableUnreadable(String sentence) {
        super(sentence);
    }

    public String sentence() {
        return String.valueOf(getMessage());
    }
}
