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
     * @param back see {@link Block#bindings}
     * @param lasts of each target and run (as {@code target * Block.RUNS + run}) the step with which it was reached
     * @param late of the same, whether that was after the promise
     */
    record Followed(char[] back, int[] lasts, boolean[] late) {

        private boolean isLate(int target) {
            for (int at = target * Block.RUNS; at < (target + 1) * Block.RUNS; at++) {
                if (late[at]) {
                    return true;
                }
            }
            return false;
        }
    }

    /** Of each step in how many runs it was met; which were met at all. */
    private static final class Counts {

        private final int[] times;
        private final int[] met;
        private int count;
        private int runs;

        private final int[] step = new int[Block.RUNS];
        private final int[] run = new int[Block.RUNS];

        private Counts(int steps) {
            times = new int[steps];
            met = new int[steps];
        }

        /**
         * Follows the chains of a block's runs side by side, link by link, back from the step with which the target was
         * reached: what one run looks up does not wait for another's.
         */
        private void follow(Followed block, int target, boolean lateOnly) {
            int open = 0;
            for (int each = 0; each < Block.RUNS; each++) {
                if (!lateOnly || block.late[target * Block.RUNS + each]) {
                    step[open] = block.lasts[target * Block.RUNS + each];
                    run[open++] = each;
                }
            }
            runs += open;
            for (int link = 0; link < LINKS && open > 0; link++) {
                open = meetAndGoBack(block, open);
            }
        }

        /** How many runs go on. */
        private int meetAndGoBack(Followed block, int open) {
            int left = 0;
            for (int at = 0; at < open; at++) {
                meet(step[at]);
                int back = block.back[step[at] * Block.RUNS + run[at]];
                if (back != Arcs.UNBOUND) {
                    step[left] = step[at] - back;
                    run[left++] = run[at];
                }
            }
            return left;
        }

        private void meet(int one) {
            if (times[one]++ == 0) {
                met[count++] = one;
            }
        }

        /** Those met, of equals the last first: nearest to the date. */
        private List<Driver> strongest(List<String> ids) {
            long[] timesAndStep = Arrays.stream(met, 0, count)
                    .mapToLong(one -> ((long) times[one] << Integer.SIZE) | one)
                    .sorted()
                    .toArray();
            return IntStream.rangeClosed(1, Math.min(MOST, timesAndStep.length))
                    .mapToLong(rank -> timesAndStep[timesAndStep.length - rank])
                    .mapToObj(one -> new Driver(ids.get((int) one), (double) (one >>> Integer.SIZE) / runs))
                    .toList();
        }

        /** What was not met is empty already, so a target costs no more on a large branch than on a small one. */
        private void empty() {
            for (int place = 0; place < count; place++) {
                times[met[place]] = 0;
            }
            count = 0;
            runs = 0;
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
        boolean lateOnly = Arrays.stream(followed).anyMatch(block -> block.isLate(target));
        for (Followed block : followed) {
            own.follow(block, target, lateOnly);
        }
        List<Driver> strongest = own.strongest(ids);
        own.empty();
        spare.add(own);
        return strongest;
    }
}
