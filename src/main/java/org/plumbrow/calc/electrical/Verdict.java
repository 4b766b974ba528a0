package org.plumbrow.calc.electrical;

/** How a check ended. */
public enum Verdict {
    PASS("passes"),
    /** Allowed, but somebody should know. */
    REMARK("passes with a remark"),
    FAIL("fails"),
    /** The simple rule does not decide it: a licensed engineer does. */
    NEEDS_ENGINEER("needs a licensed engineer"),
    /** An input is missing. */
    CANNOT_TELL("cannot tell yet");

    private final String words;

    Verdict(String words) {
        this.words = words;
    }

    public String words() {
        return words;
    }
}
