package org.plumbrow.calc.forecast;

import java.util.ArrayList;
import java.util.List;

/** When the steps of a block began that hold something, and who held it until then. */
final class Holders {

    private final Step[] steps;
    private final int runs;
    /** Of each kind of claim the steps that hold it, in the order of play. */
    private final int[][] users;

    private final char[] began;

    Holders(Step[] steps, int kinds, int runs) {
        this.steps = steps;
        this.runs = runs;
        began = new char[steps.length * runs];
        List<List<Integer>> found = new ArrayList<>();
        for (int kind = 0; kind < kinds; kind++) {
            found.add(new ArrayList<>());
        }
        for (int step = 0; step < steps.length; step++) {
            for (Claim claim : steps[step].claims()) {
                found.get(claim.kind()).add(step);
            }
        }
        users = found.stream()
                .map(list -> list.stream().mapToInt(Integer::intValue).toArray())
                .toArray(int[][]::new);
    }

    void began(int stepAndRun, int slot) {
        began[stepAndRun] = (char) slot;
    }

    /**
     * The step that let go last before this one began; -1 where it began as soon as it was ready.
     *
     * @param after of each step and run the slot from which a successor may start
     */
    int before(int step, int run, int ready, char[] after) {
        int start = began[step * runs + run];
        int holder = -1;
        int latest = ready;
        for (Claim claim : steps[step].claims()) {
            int[] others = users[claim.kind()];
            for (int at = others.length - 1; at >= 0 && latest < start; at--) {
                int free = others[at] < step ? after[others[at] * runs + run] : 0;
                if (free > latest && free <= start) {
                    latest = free;
                    holder = others[at];
                }
            }
        }
        return holder;
    }
}
