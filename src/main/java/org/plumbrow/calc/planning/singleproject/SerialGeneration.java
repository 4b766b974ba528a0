package org.plumbrow.calc.planning.singleproject;

import java.util.Arrays;

/**
 * Serial schedule generation: takes the steps in a given order and starts each as early as its predecessors and what is
 * left of the resources allow (Kelley 1963). Not to be shared between threads.
 */
final class SerialGeneration {

    private final ProjectArrays project;
    private final long[] free;
    private final int[] ends;
    /** The predecessors of all steps in one row; those of a step begin at its place in {@code firstBefore}. */
    private final int[] before;

    private final int[] firstBefore;
    private int used;

    SerialGeneration(ProjectArrays project) {
        this.project = project;
        this.free = new long[Math.max(1, project.horizon()) * project.words()];
        this.ends = new int[project.size()];
        this.before =
                Arrays.stream(project.before()).flatMapToInt(Arrays::stream).toArray();
        this.firstBefore = new int[project.size() + 1];
        for (int step = 0; step < project.size(); step++) {
            firstBefore[step + 1] = firstBefore[step] + project.before()[step].length;
        }
        this.used = project.horizon();
    }

    /**
     * @param order every step once, behind its predecessors
     * @param starts filled with the first period of each step
     * @return the makespan
     */
    int generate(int[] order, int[] starts) {
        clear();
        int makespan = 0;
        for (int step : order) {
            int earliest = 0;
            for (int at = firstBefore[step]; at < firstBefore[step + 1]; at++) {
                earliest = Math.max(earliest, ends[before[at]]);
            }
            int start = project.words() == 1 ? book(step, earliest) : bookWide(step, earliest);
            starts[step] = start;
            ends[step] = start + project.durations()[step];
            makespan = Math.max(makespan, ends[step]);
        }
        used = makespan;
        return makespan;
    }

    private void clear() {
        if (project.words() == 1) {
            Arrays.fill(free, 0, used, project.free()[0]);
            return;
        }
        for (int at = 0; at < used * project.words(); at++) {
            free[at] = project.free()[at % project.words()];
        }
    }

    private int book(int step, int earliest) {
        long demand = project.demands()[step];
        int duration = project.durations()[step];
        int start = earliest;
        if (demand == 0) {
            return start;
        }
        int knownFree = start;
        int at = start + duration - 1;
        while (at >= knownFree) {
            if (((free[at] - demand) & ProjectArrays.GUARDS) == ProjectArrays.GUARDS) {
                at--;
            } else {
                knownFree = start + duration;
                start = at + 1;
                at = start + duration - 1;
            }
        }
        for (int period = start; period < start + duration; period++) {
            free[period] -= demand;
        }
        return start;
    }

    private int bookWide(int step, int earliest) {
        int duration = project.durations()[step];
        int start = earliest;
        for (int at = start; at < start + duration; at++) {
            if (!fits(step, at)) {
                start = at + 1;
            }
        }
        for (int at = start; at < start + duration; at++) {
            for (int word = 0; word < project.words(); word++) {
                free[at * project.words() + word] -= project.demands()[step * project.words() + word];
            }
        }
        return start;
    }

    private boolean fits(int step, int at) {
        for (int word = 0; word < project.words(); word++) {
            long left = free[at * project.words() + word] - project.demands()[step * project.words() + word];
            if ((left & ProjectArrays.GUARDS) != ProjectArrays.GUARDS) {
                return false;
            }
        }
        return true;
    }
}
