package org.plumbrow.calc.forecast;

import java.util.ArrayDeque;
import java.util.BitSet;
import java.util.stream.IntStream;

/**
 * In which row of a block the runs of each step lie.
 *
 * @param of of each step, its row
 * @param count rows in all
 */
record Rows(int[] of, int count) {

    /** A row for each step: all can be asked for afterwards. */
    static Rows all(int steps) {
        return new Rows(IntStream.range(0, steps).toArray(), steps);
    }

    /**
     * As few rows as will do, so that they stay in the nearest memory: a row is free again once the last step has begun that
     * waits for it.
     *
     * @param kept steps that are asked for afterwards
     */
    static Rows reused(Step[] steps, BitSet kept) {
        int[] lastUse = lastUse(steps);
        int[] row = new int[steps.length];
        ArrayDeque<Integer> free = new ArrayDeque<>();
        int count = 0;
        for (int number = 0; number < steps.length; number++) {
            for (int before : before(steps[number])) {
                if (lastUse[before] == number && !kept.get(before)) {
                    free.push(row[before]);
                }
            }
            row[number] = free.isEmpty() ? count++ : free.pop();
            if (lastUse[number] == number && !kept.get(number)) {
                free.push(row[number]);
            }
        }
        return new Rows(row, count);
    }

    /** Of each step the last one that waits for it; itself where none does. */
    private static int[] lastUse(Step[] steps) {
        int[] last = IntStream.range(0, steps.length).toArray();
        for (int number = 0; number < steps.length; number++) {
            for (int before : before(steps[number])) {
                last[before] = number;
            }
        }
        return last;
    }

    private static int[] before(Step step) {
        return IntStream.range(0, step.arcs().length)
                .map(arc -> step.arcs()[arc].step())
                .distinct()
                .toArray();
    }
}
