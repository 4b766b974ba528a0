package org.plumbrow.calc.planning.singleproject;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.plumbrow.calc.planning.search.Chance;

/**
 * Looks for a short timetable by a genetic algorithm on orders of steps: two parents of the population, each the better of
 * two drawn, give a child by two-point crossover; its serial schedule is pushed to the end and back again (forward-backward
 * improvement: Li, Willis 1992; Tormos, Lova 2001); it takes the place of the worst unless it is worse still or there already.
 *
 * <p>Every serial generation counts as one schedule, those of the improvement too: a child costs three.
 */
public final class ListEvolution {

    /** Set by trial: 80 for 5,000 schedules, 400 for 50,000, and a power between and beyond. */
    private static final double POPULATION_FACTOR = 0.206;

    private static final double POPULATION_POWER = 0.7;
    private static final int SMALLEST_POPULATION = 10;
    private static final double SHAKEN = 0.05;
    private static final int A_CHILD_COSTS = 3;

    private final ProjectArrays project;
    private final SerialGeneration forward;
    private final SerialGeneration backward;
    private final StepOrders orders;
    private final Chance chance;
    private final List<Found> population = new ArrayList<>();
    private Found best;
    private long left;

    private record Found(int[] starts, int makespan) {}

    private ListEvolution(SingleProject single, long schedules, long seed) {
        project = ProjectArrays.of(single);
        forward = new SerialGeneration(project);
        backward = new SerialGeneration(project.mirrored());
        chance = new Chance(seed);
        orders = new StepOrders(project, chance);
        left = schedules;
        int[] starts = new int[project.size()];
        int[] order = single.order().stream().mapToInt(Integer::intValue).toArray();
        best = new Found(starts, forward.generate(order, starts));
        left--;
    }

    /**
     * @param schedules how many serial generations it may take, 1 or more
     * @param criticalPath the search ends at a timetable no longer than this
     */
    public static Timetable best(SingleProject project, long schedules, long seed) {
        ListEvolution evolution = new ListEvolution(project, schedules, seed);
        evolution.run(schedules, project.criticalPath());
        Found best = evolution.best;
        return new Timetable(Arrays.stream(best.starts()).boxed().toList(), best.makespan());
    }

    private void run(long schedules, int shortest) {
        long size =
                Math.max(SMALLEST_POPULATION, Math.round(POPULATION_FACTOR * Math.pow(schedules, POPULATION_POWER)));
        while (population.size() < size && left >= A_CHILD_COSTS && best.makespan() > shortest) {
            population.add(improved(orders.drawn()));
        }
        while (left >= A_CHILD_COSTS && best.makespan() > shortest) {
            int[] child = orders.crossed(orderOf(parent()), orderOf(parent()));
            orders.shake(child, SHAKEN);
            settle(improved(child));
        }
    }

    private int[] orderOf(Found found) {
        return orders.byStart(found.starts());
    }

    private Found parent() {
        Found one = population.get(chance.below(population.size()));
        Found other = population.get(chance.below(population.size()));
        return other.makespan() < one.makespan() ? other : one;
    }

    private Found improved(int[] order) {
        int[] early = new int[project.size()];
        int first = forward.generate(order, early);
        int[] fromEnd = new int[project.size()];
        int pushed = backward.generate(orders.lastFirst(early, first), fromEnd);
        int[] again = new int[project.size()];
        int makespan = forward.generate(orders.firstAgain(fromEnd, pushed), again);
        left -= A_CHILD_COSTS;
        Found found = makespan <= first ? new Found(again, makespan) : new Found(early, first);
        if (found.makespan() < best.makespan()) {
            best = found;
        }
        return found;
    }

    private void settle(Found child) {
        int worst = 0;
        for (int at = 0; at < population.size(); at++) {
            Found other = population.get(at);
            if (other.makespan() == child.makespan() && Arrays.equals(other.starts(), child.starts())) {
                return;
            }
            int worse = other.makespan() - population.get(worst).makespan();
            if (worse > 0 || (worse == 0 && chance.below(2) == 0)) {
                worst = at;
            }
        }
        if (child.makespan() <= population.get(worst).makespan()) {
            population.set(worst, child);
        }
    }
}
