package org.plumbrow.calc.forecast;

/** How often each step lay on the chain that bound a target: in the runs that were late, and in all. */
final class Drivers {

    /** Links followed back from a date: on a full branch the chain goes on through a crew's whole past. */
    private static final int LINKS = 64;

    private final int steps;
    private final int[] late;
    private final int[] all;
    private final int[] lateRuns;
    private final int[] allRuns;

    /** @param targets how many are explained */
    Drivers(int steps, int targets) {
        this.steps = steps;
        late = new int[steps * targets];
        all = new int[steps * targets];
        lateRuns = new int[targets];
        allRuns = new int[targets];
    }

    /**
     * Follows the chain of one run back from the step with which the target was reached.
     *
     * @param binding see {@link Block#bindings}
     */
    void follow(int[] binding, int target, int run, int last, boolean isLate) {
        int row = target * steps;
        allRuns[target]++;
        lateRuns[target] += isLate ? 1 : 0;
        int step = last;
        for (int link = 0; step >= 0 && link < LINKS; link++) {
            all[row + step]++;
            late[row + step] += isLate ? 1 : 0;
            step = binding[step * Block.RUNS + run];
        }
    }

    /** Of each step its share of the late runs, of all runs where none was late. */
    double[] shares(int target) {
        boolean anyLate = lateRuns[target] > 0;
        int runs = anyLate ? lateRuns[target] : allRuns[target];
        double[] shares = new double[steps];
        for (int step = 0; step < steps && runs > 0; step++) {
            shares[step] = (double) (anyLate ? late : all)[target * steps + step] / runs;
        }
        return shares;
    }
}
