package org.plumbrow.calc.outage.ranking;

/** What one factor says of an hour; the later, the worse. */
public enum Verdict {
    MET,
    /** Allowed, but somebody should look at it. */
    CAUTION,
    /** Nobody knows yet; to be settled before the day. */
    OPEN,
    /** With this the hour is no window. */
    BROKEN
}
