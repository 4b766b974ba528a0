package org.plumbrow.calc.planning.singleproject;

import java.util.Arrays;
import org.plumbrow.calc.planning.search.Chance;

/** Makes and mixes orders of steps in which every step stands behind its predecessors. Not to be shared between threads. */
final class StepOrders {

    private final ProjectArrays project;
    private final Chance chance;
    private final int[] network;
    private final int[] networkFromEnd;
    private final int[] tails;
    private final int[] places;
    private final int[] keys;

    StepOrders(ProjectArrays project, Chance chance) {
        this.project = project;
        this.chance = chance;
        this.network = network(project);
        this.networkFromEnd = new int[network.length];
        Arrays.setAll(networkFromEnd, place -> network[network.length - 1 - place]);
        this.tails = tails(project, network);
        this.places = new int[project.horizon() + 2];
        this.keys = new int[project.size()];
    }

    /**
     * An order drawn step by step from those whose predecessors are in it: the longer what follows a step, the likelier,
     * by the square of its lead over the shortest (regret sampling, Drexl 1991, on the latest finish).
     */
    int[] drawn() {
        int[] waitsFor = new int[project.size()];
        int[] free = new int[project.size()];
        int count = 0;
        for (int step = 0; step < project.size(); step++) {
            waitsFor[step] = project.before()[step].length;
            if (waitsFor[step] == 0) {
                free[count++] = step;
            }
        }
        int[] order = new int[project.size()];
        for (int place = 0; place < order.length; place++) {
            int chosen = drawnFrom(free, count);
            int step = free[chosen];
            free[chosen] = free[--count];
            order[place] = step;
            for (int successor : project.after()[step]) {
                if (--waitsFor[successor] == 0) {
                    free[count++] = successor;
                }
            }
        }
        return order;
    }

    private int drawnFrom(int[] free, int count) {
        int shortest = Integer.MAX_VALUE;
        for (int at = 0; at < count; at++) {
            shortest = Math.min(shortest, tails[free[at]]);
        }
        long sum = 0;
        for (int at = 0; at < count; at++) {
            sum += weight(free[at], shortest);
        }
        long drawn = (long) (chance.share() * sum);
        int at = 0;
        while (at < count - 1) {
            drawn -= weight(free[at], shortest);
            if (drawn < 0) {
                break;
            }
            at++;
        }
        return at;
    }

    private long weight(int step, int shortest) {
        long lead = tails[step] - shortest + 1L;
        return lead * lead;
    }

    /** The steps by their start, of equal ones the predecessor first. */
    int[] byStart(int[] starts, int makespan) {
        return byKey(starts, makespan, network);
    }

    /** The order in which the mirrored project takes the steps: what ends last first, of equal ones the successor. */
    int[] lastFirst(int[] starts, int makespan) {
        return byKey(mirrored(starts, makespan), makespan, networkFromEnd);
    }

    /** The order of a mirrored timetable's steps in the project itself. */
    int[] firstAgain(int[] fromEnd, int makespan) {
        return byKey(mirrored(fromEnd, makespan), makespan, network);
    }

    private int[] mirrored(int[] starts, int makespan) {
        for (int step = 0; step < starts.length; step++) {
            keys[step] = makespan - starts[step] - project.durations()[step];
        }
        return keys;
    }

    /** By key, the smallest first, equal ones as in the given order; keys from 0 to the largest. */
    private int[] byKey(int[] keys, int largest, int[] ofEqual) {
        Arrays.fill(places, 0, largest + 2, 0);
        for (int key : keys) {
            places[key + 1]++;
        }
        for (int key = 1; key <= largest; key++) {
            places[key] += places[key - 1];
        }
        int[] order = new int[keys.length];
        for (int step : ofEqual) {
            order[places[keys[step]]++] = step;
        }
        return order;
    }

    /**
     * Two-point crossover of activity lists (Hartmann, "A competitive genetic algorithm for resource-constrained project
     * scheduling", Naval Research Logistics 45, 1998): a stretch of one tenth to nine tenths stands as the father has it,
     * what is before and behind as the mother has it.
     */
    int[] crossed(int[] mother, int[] father) {
        int size = mother.length;
        int length = (int) (size * (0.1 + 0.8 * chance.share()));
        int from = chance.below(size - length + 1);
        int[] child = Arrays.copyOf(mother, size);
        boolean[] taken = new boolean[size];
        for (int place = 0; place < from; place++) {
            taken[mother[place]] = true;
        }
        int place = from;
        for (int at = 0; place < from + length; at++) {
            if (!taken[father[at]]) {
                taken[father[at]] = true;
                child[place++] = father[at];
            }
        }
        for (int step : mother) {
            if (!taken[step]) {
                child[place++] = step;
            }
        }
        return child;
    }

    /** Swaps neighbours, each with this chance, that do not wait for each other. */
    void shake(int[] order, double share) {
        for (int place = 0; place + 1 < order.length; place++) {
            if (chance.share() < share && !follows(order[place], order[place + 1])) {
                int first = order[place];
                order[place] = order[place + 1];
                order[place + 1] = first;
            }
        }
    }

    private boolean follows(int first, int second) {
        for (int predecessor : project.before()[second]) {
            if (predecessor == first) {
                return true;
            }
        }
        return false;
    }

    private static int[] network(ProjectArrays project) {
        int[] waitsFor = new int[project.size()];
        int[] order = new int[project.size()];
        int known = 0;
        for (int step = 0; step < order.length; step++) {
            waitsFor[step] = project.before()[step].length;
            if (waitsFor[step] == 0) {
                order[known++] = step;
            }
        }
        for (int place = 0; place < known; place++) {
            for (int successor : project.after()[order[place]]) {
                if (--waitsFor[successor] == 0) {
                    order[known++] = successor;
                }
            }
        }
        return order;
    }

    /** Periods from the start of each step to the end of the longest chain behind it. */
    private static int[] tails(ProjectArrays project, int[] network) {
        int[] tails = new int[project.size()];
        for (int place = network.length - 1; place >= 0; place--) {
            int step = network[place];
            int longest = 0;
            for (int successor : project.after()[step]) {
                longest = Math.max(longest, tails[successor]);
            }
            tails[step] = longest + project.durations()[step];
        }
        return tails;
    }
}
