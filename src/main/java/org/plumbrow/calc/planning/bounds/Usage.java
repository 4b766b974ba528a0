package org.plumbrow.calc.planning.bounds;

import java.util.Arrays;
import org.plumbrow.calc.planning.search.BranchModel;
import org.plumbrow.calc.planning.search.Task;

/** How many works the jobs, each on its own, put on each crew and each kind of equipment. */
final class Usage {

    final int[][] crew;
    final int[][] pool;
    private static final int AT_BITS = 20;

    private final BranchModel model;
    /** What was added since it was last asked for: a cell for each half-day of a crew and of each piece. */
    private int[] cells = new int[256];

    private int cellCount;

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
            note(number, at);
        }
        int[] present = model.crews[number].present;
        for (int need = 0; need < task.pools.length; need++) {
            for (int slot = present[index]; slot <= present[index + length - 1]; slot++) {
                pool[task.pools[need]][slot] += task.pieces[need];
                for (int piece = 0; piece < task.pieces[need]; piece++) {
                    note(crew.length + task.pools[need], slot);
                }
            }
        }
    }

    private void note(int resource, int at) {
        cells = cellCount == cells.length ? Arrays.copyOf(cells, 2 * cellCount) : cells;
        cells[cellCount++] = resource << AT_BITS | at;
    }

    /** What was added since this was last asked. */
    int[] cellsSince() {
        int[] since = Arrays.copyOf(cells, cellCount);
        cellCount = 0;
        return since;
    }

    /** Of a cell: a crew by number, then the kinds of equipment. */
    static int resource(int cell) {
        return cell >>> AT_BITS;
    }

    /** Of a cell: the present slot of the crew by number, or the slot. */
    static int at(int cell) {
        return cell & ((1 << AT_BITS) - 1);
    }
}
