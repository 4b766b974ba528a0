package org.plumbrow.calc.finance.use;

/**
 * One thing that has to be said about use that was brought.
 *
 * @param severity whether it can be used
 * @param what what was found, with line or time
 * @param cure what to do about it; what was done, when the use was taken
 */
public record UseFinding(Severity severity, String what, String cure) {

    /** How much it matters. */
    public enum Severity {
        /** Nothing is taken in. */
        REFUSED,
        /** Taken in; the figures made from it carry the sentence. */
        WARNING,
        /** Taken in; good to know. */
        NOTE
    }

    static UseFinding warning(String what, String cure) {
        return new UseFinding(Severity.WARNING, what, cure);
    }

    static UseFinding note(String what, String cure) {
        return new UseFinding(Severity.NOTE, what, cure);
    }

    public String sentence() {
        return what + " " + cure;
    }
}
