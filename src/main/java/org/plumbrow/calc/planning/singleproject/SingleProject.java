package org.plumbrow.calc.planning.singleproject;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;

/**
 * One project by itself: steps of fixed length that follow each other and share renewable resources (the
 * resource-constrained project scheduling problem). Its plan is to end as early as possible. Time is counted in whole
 * periods from 0.
 *
 * @param capacities of each resource, units that are there in every period, 0 or more
 * @param steps at least one; a step is known by its place in this list
 */
public record SingleProject(List<Integer> capacities, List<Step> steps) {

    /**
     * @param duration whole periods, 0 or more
     * @param demands of each resource, units that are taken in every period of the step, at most the capacity
     * @param successors places of the steps that begin at its end at the earliest
     */
    public record Step(int duration, List<Integer> demands, List<Integer> successors) {

        public Step {
            demands = List.copyOf(demands);
            successors = List.copyOf(successors);
            if (duration < 0) {
                throw new IllegalArgumentException("A step lasts " + duration + " periods.");
            }
        }
    }

    public SingleProject {
        capacities = List.copyOf(capacities);
        steps = List.copyOf(steps);
        if (steps.isEmpty()) {
            throw new IllegalArgumentException("The project has no steps.");
        }
        for (int step = 0; step < steps.size(); step++) {
            refuseWhatCannotBe(step, steps.get(step), capacities, steps.size());
        }
        if (inOrder(steps).size() < steps.size()) {
            throw new IllegalArgumentException("Some steps wait for each other in a circle.");
        }
    }

    public int size() {
        return steps.size();
    }

    /** Places of all steps, each behind its predecessors; of several that could be next the one that became free first. */
    public List<Integer> order() {
        return inOrder(steps);
    }

    /** The longest chain of steps: no plan ends earlier. In periods. */
    public int criticalPath() {
        int[] begin = new int[size()];
        int longest = 0;
        for (int place : order()) {
            Step step = steps.get(place);
            int end = begin[place] + step.duration();
            longest = Math.max(longest, end);
            for (int successor : step.successors()) {
                begin[successor] = Math.max(begin[successor], end);
            }
        }
        return longest;
    }

    private static void refuseWhatCannotBe(int place, Step step, List<Integer> capacities, int size) {
        if (step.demands().size() != capacities.size()) {
            throw new IllegalArgumentException("Step " + (place + 1) + " names "
                    + step.demands().size() + " demands for " + capacities.size() + " resources.");
        }
        for (int resource = 0; resource < capacities.size(); resource++) {
            int demand = step.demands().get(resource);
            if (demand < 0 || demand > capacities.get(resource)) {
                throw new IllegalArgumentException("Step " + (place + 1) + " asks for " + demand + " of resource "
                        + (resource + 1) + ", of which there are " + capacities.get(resource) + ".");
            }
        }
        for (int successor : step.successors()) {
            if (successor < 0 || successor >= size) {
                throw new IllegalArgumentException(
                        "Step " + (place + 1) + " is followed by step " + (successor + 1) + ", which is not there.");
            }
        }
    }

    private static List<Integer> inOrder(List<Step> steps) {
        int[] waitsFor = new int[steps.size()];
        steps.forEach(step -> step.successors().forEach(successor -> waitsFor[successor]++));
        Deque<Integer> free = new ArrayDeque<>();
        for (int step = 0; step < steps.size(); step++) {
            if (waitsFor[step] == 0) {
                free.add(step);
            }
        }
        List<Integer> order = new ArrayList<>();
        while (!free.isEmpty()) {
            int step = free.remove();
            order.add(step);
            for (int successor : steps.get(step).successors()) {
                if (--waitsFor[successor] == 0) {
                    free.add(successor);
                }
            }
        }
        return order;
    }
}
