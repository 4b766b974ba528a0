package org.plumbrow.calc.planning.exact;

import org.plumbrow.calc.planning.search.BranchModel;
import org.plumbrow.calc.planning.search.Dates;

/**
 * A part of a plan that the solver may move; all else stays where it is.
 *
 * @param free of each task: whether it may move
 * @param latest of each free task: the last slot in which it may start
 * @param strict whether every figure must hold for any plan, so that the answer's bound is one, and what is not free does
 *     not hold up what comes before it; else the figures are those near the present dates, which is better for finding
 *     plans
 */
public record Piece(BranchModel model, Dates now, boolean[] free, int[] latest, boolean strict) {

    public int size() {
        int count = 0;
        for (boolean each : free) {
            count += each ? 1 : 0;
        }
        return count;
    }
}
