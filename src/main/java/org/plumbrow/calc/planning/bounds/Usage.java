package org.plumbrow.calc.planning.bounds;

import java.util.Arrays;
import org.plumbrow.calc.planning.search.BranchModel;
import org.plumbrow.calc.planning.search.Task;

/** How many works the jobs, each on its own, put on each crew and each kind of equipment. */
final class Usage {

    final int[][] crew;
    final int[][] pool;
    private final BranchModel model;

    Usage(BranchModel model) {
        this.model = model;
        crew = new int[model.crews.length][];
        for (int number = 0; number < crew.length; number++) {
            crew[number] = new int[model.crews[number].present.length];
        }
        pool = new int[model.pools.length][model.slots.size];
    }

    void clear() {
        for (int[] each : crew) {
            Arrays.fill(each, 0);
        }
        for (int[] each : pool) {
            Arrays.fill(each, 0);
        }
    }

    void add(Usage other) {
        for (int number = 0; number < crew.length; number++) {
            add(crew[number], other.crew[number]);
        }
        for (int number = 0; number < pool.length; number++) {
            add(pool[number], other.pool[number]);
        }
    }

    private static void add(int[] sum, int[] more) {
        for (int at = 0; at < sum.length; at++) {
            sum[at] += more[at];
        }
    }

    void add(Task task, int number, int index, int length) {
        for (int at = index; at < index + length; at++) {
            crew[number][at]++;
        }
        int[] present = model.crews[number].present;
        for (int need = 0; need < task.pools.length; need++) {
            for (int slot = present[index]; slot <= present[index + length - 1]; slot++) {
                pool[task.pools[need]][slot] += task.pieces[need];
            }
        }
    }
}
