package org.plumbrow.calc.forecast;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * What drives a date: how often each step lay on the chain that bound it, in the runs that were late, and in all where none
 * was. Only the first runs of a forecast are followed, a fixed {@link #RUNS} whatever the number played: the same seed says
 * the same, and of that many a share is known to within 4.5 points (95 %, at one half; late runs are fewer and theirs less
 * well known: 10 points at a hundred of them).
 */
final class Drivers {

    static final int RUNS = 10 * Block.RUNS;

    /** Links followed back from a date: on a full branch the chain goes on through a crew's whole past. */
    private static final int LINKS = 64;

    private static final int MOST = 10;

    private final List<String> ids;
    private final Followed[] followed = new Followed[RUNS / Block.RUNS];
    private final ConcurrentLinkedQueue<Counts> spare = new ConcurrentLinkedQueue<>();

    /**
     * The runs of one block.
     *
     * @param binding see {@link Block#bindings}
     * @param lasts of each target and run (as {@code target * Block.RUNS + run}) the step with which it was reached
     * @param late of the same, whether that was after the promise
     */
    record Followed(int[] binding, int[] lasts, boolean[] late) {}

    /** Of each step in how many runs it was met, and above that in how many late ones; which were met at all. */
    private static final class Counts {

        private static final int LATE = 1 << 16;

        private final int[] times;
        private final int[] met;
        private final int[] at = new int[Block.RUNS];
        private int count;
        private int lateRuns;

        private Counts(int steps) {
            times = new int[steps];
            met = new int[steps];
        }

        /**
         * Follows the chains of all runs of a block side by side, link by link, back from the step with which the target was
         * reached: what one run looks up does not wait for another's.
         */
        private void follow(Followed block, int target) {
            int row = target * Block.RUNS;
            System.arraycopy(block.lasts(), row, at, 0, Block.RUNS);
            for (int run = 0; run < Block.RUNS; run++) {
                lateRuns += block.late()[row + run] ? 1 : 0;
            }
            for (int link = 0; link < LINKS; link++) {
                for (int run = 0; run < Block.RUNS; run++) {
                    if (at[run] >= 0) {
                        meet(at[run], block.late()[row + run]);
                        at[run] = block.binding()[at[run] * Block.RUNS + run];
                    }
                }
            }
        }

        private void meet(int step, boolean late) {
            if (times[step] == 0) {
                met[count++] = step;
            }
            times[step] += late ? LATE + 1 : 1;
        }

        private int times(int step) {
            return lateRuns > 0 ? times[step] / LATE : times[step] % LATE;
        }

        /** Those met, of equals the last first: nearest to the date. */
        private List<Driver> strongest(List<String> ids) {
            double runs = lateRuns > 0 ? lateRuns : RUNS;
            long[] timesAndStep = Arrays.stream(met, 0, count)
                    .mapToLong(step -> ((long) times(step) << Integer.SIZE) | step)
                    .filter(one -> one >>> Integer.SIZE > 0)
                    .sorted()
                    .toArray();
            return IntStream.rangeClosed(1, Math.min(MOST, timesAndStep.length))
                    .mapToLong(rank -> timesAndStep[timesAndStep.length - rank])
                    .mapToObj(one -> new Driver(ids.get((int) one), (one >>> Integer.SIZE) / runs))
                    .toList();
        }

        /** What was not met is empty already, so a target costs no more on a large branch than on a small one. */
        private void empty() {
            for (int place = 0; place < count; place++) {
                times[met[place]] = 0;
            }
            count = 0;
            lateRuns = 0;
        }
    }

    /** @param ids of the steps, in the order of play */
    Drivers(List<String> ids) {
        this.ids = ids;
    }

    /** From any thread, each block once. */
    void keep(int firstRun, Followed block) {
        followed[firstRun / Block.RUNS] = block;
    }

    /**
     * Of each of these targets, once all blocks are there. Those that are reached at about the same time come one after the
     * other: their chains go through the same steps, which are near in memory then.
     */
    Map<Integer, List<Driver>> strongest(List<Integer> targets) {
        int[] lasts = followed[0].lasts();
        return targets.stream()
                .sorted(Comparator.comparingInt(target -> lasts[target * Block.RUNS]))
                .toList()
                .parallelStream()
                .collect(Collectors.toConcurrentMap(target -> target, this::strongest));
    }

    private List<Driver> strongest(int target) {
        Counts counts = spare.poll();
        Counts own = counts == null ? new Counts(ids.size()) : counts;
        for (Followed block : followed) {
            own.follow(block, target);
        }
        List<Driver> strongest = own.strongest(ids);
        own.empty();
        spare.add(own);
        return strongest;
    }
}
