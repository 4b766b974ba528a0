package org.plumbrow.calc.planning.exact;

/**
 * What the solver says.
 *
 * @param start of each free task; empty without a solution
 * @param crew of each free task, -1 without
 * @param value weighted lateness (and small change) of the solution
 * @param bound no placing of the piece costs less
 */
public record Answer(Kind kind, int[] start, int[] crew, long value, long bound) {

    /** How far the solver came. */
    public enum Kind {
        /** Nothing is better. */
        OPTIMAL,
        FOUND,
        /** No placing keeps all limits. */
        IMPOSSIBLE,
        /** The limit came first. */
        NOTHING
    }

    public boolean hasDates() {
        return kind == Kind.OPTIMAL || kind == Kind.FOUND;
    }
}
