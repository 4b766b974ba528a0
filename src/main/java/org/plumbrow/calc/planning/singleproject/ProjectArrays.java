package org.plumbrow.calc.planning.singleproject;

import java.util.Arrays;
import java.util.List;

/**
 * A {@link SingleProject} as arrays, and its mirror in time.
 *
 * <p>Four resources share one long, 16 bits each, the topmost of which is a guard: what is free with the guards set, less
 * what is asked for, keeps all guards exactly when it suffices. So one subtraction compares four resources.
 *
 * @param words longs for one period
 * @param demands of a step, {@code words} longs each
 * @param free of one empty period, {@code words} longs
 * @param horizon no serial plan is longer
 */
record ProjectArrays(
        int size, int words, int[] durations, long[] demands, long[] free, int[][] before, int[][] after, int horizon) {

    static final long GUARDS = 0x8000_8000_8000_8000L;
    private static final int LANES = 4;
    private static final int LANE_BITS = 16;
    private static final int MOST = 0x7FFF;

    static ProjectArrays of(SingleProject project) {
        int size = project.size();
        int words = Math.max(1, (project.capacities().size() + LANES - 1) / LANES);
        long[] demands = new long[size * words];
        for (int step = 0; step < size; step++) {
            long[] packed = packed(project.steps().get(step).demands(), words);
            System.arraycopy(packed, 0, demands, step * words, words);
        }
        long[] free = packed(project.capacities(), words);
        for (int word = 0; word < words; word++) {
            free[word] |= GUARDS;
        }
        int[] durations =
                project.steps().stream().mapToInt(SingleProject.Step::duration).toArray();
        int[][] after = project.steps().stream()
                .map(step -> step.successors().stream()
                        .distinct()
                        .mapToInt(Integer::intValue)
                        .toArray())
                .toArray(int[][]::new);
        int horizon = Arrays.stream(durations).sum();
        return new ProjectArrays(size, words, durations, demands, free, turned(after), after, horizon);
    }

    /** The same project with time running backward. */
    ProjectArrays mirrored() {
        return new ProjectArrays(size, words, durations, demands, free, after, before, horizon);
    }

    private static long[] packed(List<Integer> units, int words) {
        long[] packed = new long[words];
        for (int resource = 0; resource < units.size(); resource++) {
            if (units.get(resource) > MOST) {
                throw new IllegalArgumentException("More than " + MOST + " units of resource " + (resource + 1) + ".");
            }
            packed[resource / LANES] |= (long) units.get(resource) << (LANE_BITS * (resource % LANES));
        }
        return packed;
    }

    private static int[][] turned(int[][] after) {
        int[] count = new int[after.length];
        for (int[] successors : after) {
            for (int successor : successors) {
                count[successor]++;
            }
        }
        int[][] before = new int[after.length][];
        Arrays.setAll(before, step -> new int[count[step]]);
        for (int step = 0; step < after.length; step++) {
            for (int successor : after[step]) {
                before[successor][--count[successor]] = step;
            }
        }
        return before;
    }
}
