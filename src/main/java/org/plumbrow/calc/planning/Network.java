package org.plumbrow.calc.planning;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;

/** Who comes before whom, by number. A settled activity does not wait for its predecessors: they are only checked. */
final class Network {

    final List<Activity> activities;
    final Map<String, Integer> numbers = new HashMap<>();
    final int[][] predecessors;
    final int[][] successors;
    /** Each activity behind its predecessors; those in or behind a circle are missing. */
    final int[] order;

    private final BitSet ordered = new BitSet();

    Network(List<Activity> activities) {
        this.activities = activities;
        int count = activities.size();
        for (int number = 0; number < count; number++) {
            numbers.put(activities.get(number).id(), number);
        }
        predecessors = new int[count][];
        int[] followers = new int[count];
        for (int number = 0; number < count; number++) {
            List<Predecessor> links = activities.get(number).predecessors();
            predecessors[number] = new int[links.size()];
            for (int link = 0; link < links.size(); link++) {
                int before = numbers.get(links.get(link).activityId());
                predecessors[number][link] = before;
                followers[before]++;
            }
        }
        successors = new int[count][];
        for (int number = 0; number < count; number++) {
            successors[number] = new int[followers[number]];
        }
        for (int number = 0; number < count; number++) {
            for (int before : predecessors[number]) {
                successors[before][--followers[before]] = number;
            }
        }
        order = inOrder();
    }

    boolean isFree(int number) {
        return activities.get(number).fix() instanceof Fix.Free;
    }

    /** How many predecessors a free activity has to wait for. */
    int[] openPredecessors() {
        int[] open = new int[activities.size()];
        for (int number = 0; number < open.length; number++) {
            open[number] = isFree(number) ? predecessors[number].length : 0;
        }
        return open;
    }

    private int[] inOrder() {
        int[] open = openPredecessors();
        ArrayDeque<Integer> ready = new ArrayDeque<>();
        for (int number = 0; number < open.length; number++) {
            if (open[number] == 0) {
                ready.add(number);
            }
        }
        int[] found = new int[open.length];
        int count = 0;
        while (!ready.isEmpty()) {
            int number = ready.remove();
            ordered.set(number);
            found[count++] = number;
            for (int next : successors[number]) {
                if (isFree(next) && --open[next] == 0) {
                    ready.add(next);
                }
            }
        }
        return Arrays.copyOf(found, count);
    }

    /** The circles among those that cannot be put in order, each in the order of the work. */
    List<List<Integer>> circles() {
        List<List<Integer>> circles = new ArrayList<>();
        BitSet walked = new BitSet();
        for (int start = 0; start < activities.size(); start++) {
            LinkedHashSet<Integer> path = new LinkedHashSet<>();
            int number = start;
            while (!ordered.get(number) && !walked.get(number) && path.add(number)) {
                number = unorderedPredecessor(number);
            }
            if (path.contains(number)) {
                circles.add(circleOf(List.copyOf(path), number));
            }
            path.forEach(walked::set);
        }
        return circles;
    }

    private static List<Integer> circleOf(List<Integer> path, int first) {
        List<Integer> circle = new ArrayList<>(path.subList(path.indexOf(first), path.size()));
        Collections.reverse(circle);
        return circle;
    }

    int unorderedPredecessor(int number) {
        for (int before : predecessors[number]) {
            if (!ordered.get(before)) {
                return before;
            }
        }
        throw new IllegalStateException(
                "activity " + activities.get(number).id() + " is out of order without a reason");
    }

    boolean isOrdered(int number) {
        return ordered.get(number);
    }
}
