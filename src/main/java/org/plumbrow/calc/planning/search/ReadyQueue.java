package org.plumbrow.calc.planning.search;

import java.util.Arrays;

/**
 * Tasks that are ready, the most urgent first. All tasks are ranked once, before an order is decoded; which of the ranks
 * that are present comes first is then told by bits, and by bits over those bits: a few steps however many there are.
 */
final class ReadyQueue {

    private static final int DIGIT = 8;

    /** Tasks in the order in which equals are served. */
    private final int[] byTie;

    private int[] taskOfRank;
    private int[] sorted;
    private final int[] counts = new int[(1 << DIGIT) + 1];
    /** Bits of the ranks present, then of the words that hold one, up to a single word. */
    private final long[][] levels;

    ReadyQueue(int[] tieRank) {
        int size = tieRank.length;
        byTie = new int[size];
        for (int number = 0; number < size; number++) {
            byTie[tieRank[number]] = number;
        }
        taskOfRank = new int[size];
        sorted = new int[size];
        int depth = 1;
        for (int words = size >> 6; words > 0; words >>= 6) {
            depth++;
        }
        levels = new long[depth][];
        for (int level = 0; level < depth; level++) {
            levels[level] = new long[(size >> (6 * (level + 1))) + 1];
        }
    }

    /**
     * Empties it and ranks all tasks, the one with the smallest key first.
     *
     * @param rows where the rank of each task is noted
     */
    void rank(int[] key, int[] rows) {
        for (long[] level : levels) {
            Arrays.fill(level, 0);
        }
        int least = Integer.MAX_VALUE;
        int most = Integer.MIN_VALUE;
        for (int each : key) {
            least = Math.min(least, each);
            most = Math.max(most, each);
        }
        System.arraycopy(byTie, 0, taskOfRank, 0, byTie.length);
        for (int shift = 0; shift < Integer.SIZE && (most - least) >>> shift != 0; shift += DIGIT) {
            sort(key, least, shift);
        }
        for (int at = 0; at < taskOfRank.length; at++) {
            rows[taskOfRank[at] * Decoder.ROW + Decoder.RANK] = at;
        }
    }

    /** By one digit of the key; those that have it alike stay as they are. */
    private void sort(int[] key, int least, int shift) {
        int last = (1 << DIGIT) - 1;
        Arrays.fill(counts, 0);
        for (int each : key) {
            counts[(((each - least) >>> shift) & last) + 1]++;
        }
        for (int digit = 0; digit < last; digit++) {
            counts[digit + 1] += counts[digit];
        }
        for (int number : taskOfRank) {
            sorted[counts[((key[number] - least) >>> shift) & last]++] = number;
        }
        int[] before = taskOfRank;
        taskOfRank = sorted;
        sorted = before;
    }

    void add(int rank) {
        int at = rank;
        for (long[] level : levels) {
            level[at >> 6] |= 1L << at;
            at >>= 6;
        }
    }

    boolean isEmpty() {
        return levels[levels.length - 1][0] == 0;
    }

    /** Takes the first one out. */
    int remove() {
        int at = 0;
        for (int level = levels.length - 1; level >= 0; level--) {
            at = (at << 6) + Long.numberOfTrailingZeros(levels[level][at]);
        }
        int first = taskOfRank[at];
        for (long[] level : levels) {
            long left = level[at >> 6] & ~(1L << at);
            level[at >> 6] = left;
            if (left != 0) {
                break;
            }
            at >>= 6;
        }
        return first;
    }
}
