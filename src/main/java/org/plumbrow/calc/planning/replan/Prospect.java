package org.plumbrow.calc.planning.replan;

import java.util.List;
import org.plumbrow.calc.planning.Promise;

/**
 * Whether a promise can be kept, and what is proved about it. All of it holds with what is settled (begun, pinned, away) where
 * it stands.
 *
 * @param halfDays of {@link Kind#KEPT}: by how many its last work may end later before it breaks; of {@link Kind#NEVER}: that it
 *     is late in any plan; else 0
 * @param breaking promises that break by more in the plan found than in the plan that people know, those that it kept first
 * @param provedTogether no plan keeps this promise and all of {@link #breaking}; false where that is not known
 * @param moved open activities that the plan found puts elsewhere
 */
public record Prospect(
        Promise promise, Kind kind, int halfDays, List<Breaking> breaking, boolean provedTogether, int moved) {

    /** What is known. */
    public enum Kind {
        /** The plan that people know keeps it. */
        KEPT,
        /** Proved: its own chain of work and waits, with the whole branch free for it, ends too late. */
        NEVER,
        /** A plan was found that keeps it, and no other breaks by more. */
        FREELY,
        /** A plan was found that keeps it, in which others break. */
        AT_A_PRICE,
        /** No plan was found that keeps it; that there is none is not proved. */
        NOT_FOUND
    }

    /** @param halfDaysLate in the plan found @param was in the plan that people know */
    public record Breaking(Promise promise, int halfDaysLate, int was) {}

    public Prospect {
        breaking = List.copyOf(breaking);
    }
}
