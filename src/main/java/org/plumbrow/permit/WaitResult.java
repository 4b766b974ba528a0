package org.plumbrow.permit;

/** How an inspection or a locate ended. The names are stored. */
public enum WaitResult {
    PASSED("passed"),
    CORRECTION("correction asked for"),
    CLEAR("clear: every member answered"),
    NOT_CLEAR("not clear");

    private final String words;

    WaitResult(String words) {
        this.words = words;
    }

    public String words() {
        return words;
    }

    boolean fits(AwaitedKind kind) {
        return this == CLEAR || this == NOT_CLEAR ? kind == AwaitedKind.LOCATE : kind.isInspection();
    }

    /** Whether what was waited for is there. */
    public boolean isGood() {
        return this == PASSED || this == CLEAR;
    }
}
