package org.plumbrow.calc.planning.exact;

import org.plumbrow.calc.planning.search.BranchModel;
import org.plumbrow.calc.planning.search.Dates;

/**
 * A part of a plan that the solver may move; all else stays where it is.
 *
 * @param free of each task: whether it may move
 * @param latest of each free task: the last slot in which it may start
 */
public record Piece(BranchModel model, Dates now, boolean[] free, int[] latest) {

    public int size() {
        int count = 0;
        for (boolean each : free) {
            count += each ? 1 : 0;
        }
        return count;
    }
}
