package org.plumbrow.calc.planning.singleproject;

/** A text that does not hold a project: which line, and what was looked for there. */
public final class UnreadableProject extends IllegalArgumentException {

    private static final long serialVersionUID = 1L;

    private final int line;

    UnreadableProject(int line, String what) {
        super("line " + line + ": " + what);
        this.line = line;
    }

    /** Counted from 1. */
    public int line() {
        return line;
    }
}
