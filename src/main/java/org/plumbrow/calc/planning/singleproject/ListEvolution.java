package org.plumbrow.calc.planning.singleproject;

import java.util.Arrays;
import java.util.HashSet;
import java.util.Set;
import org.plumbrow.calc.planning.search.Chance;

/**
 * Looks for a short timetable by a genetic algorithm on orders of steps: two parents of the population, each the better of
 * two drawn, give a child by two-point crossover; its serial schedule is pushed to the end and back again (forward-backward
 * improvement: Li, Willis 1992; Tormos, Lova 2001); it takes the place of the worst unless it is worse still or there already.
 * Of equally short ones the better has more slack: its steps together begin later by more when pushed to the end.
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
    private final SearchWatch watch;
    private final Found[] population;
    /** The rank of each of the population, side by side as every child looks through them. */
    private final long[] ranks;

    private final Set<Integer> there = new HashSet<>();
    private int count;
    private Found best;
    private long left;

    /**
     * @param order the steps by their start
     * @param slack periods by which all steps together begin later when pushed to the end
     */
    private record Found(int[] starts, int[] order, int makespan, int slack) {

        /** The smaller, the better. */
        long rank() {
            return ((long) makespan << Integer.SIZE) - slack;
        }

        /** Almost surely unlike that of any other timetable. */
        int mark() {
            return Arrays.hashCode(starts);
        }

        Timetable timetable() {
            return new Timetable(Arrays.stream(starts).boxed().toList(), makespan);
        }
    }

    private ListEvolution(SingleProject single, long schedules, long seed, SearchWatch watch) {
        project = ProjectArrays.of(single);
        forward = new SerialGeneration(project);
        backward = new SerialGeneration(project.mirrored());
        chance = new Chance(seed);
        this.watch = watch;
        population = new Found[size(schedules)];
        ranks = new long[population.length];
        orders = new StepOrders(project, chance);
        left = schedules;
        int[] starts = new int[project.size()];
        int[] order = single.order().stream().mapToInt(Integer::intValue).toArray();
        best = known(starts, forward.generate(order, starts), 0);
        left--;
    }

    /**
     * @param schedules how many serial generations it may take, 1 or more
     * @param criticalPath the search ends at a timetable no longer than this
     */
    public static Timetable best(SingleProject project, long schedules, long seed) {
        return best(project, schedules, seed, SearchWatch.NOBODY);
    }

    /** The same with somebody who is told of every better timetable and may end it. */
    public static Timetable best(SingleProject project, long schedules, long seed, SearchWatch watch) {
        ListEvolution evolution = new ListEvolution(project, schedules, seed, watch);
        evolution.run(project.criticalPath());
        return evolution.best.timetable();
    }

    private static int size(long schedules) {
        double fitting = POPULATION_FACTOR * Math.pow(schedules, POPULATION_POWER);
        return Math.toIntExact(Math.max(SMALLEST_POPULATION, Math.round(fitting)));
    }

    private void run(int shortest) {
        watch.found(best.timetable());
        while (count < population.length && goesOn(shortest)) {
            Found drawn = improved(orders.drawn());
            there.add(drawn.mark());
            put(count++, drawn);
        }
        while (goesOn(shortest)) {
            int[] child = orders.crossed(parent().order(), parent().order());
            orders.shake(child, SHAKEN);
            settle(improved(child));
        }
    }

    private boolean goesOn(int shortest) {
        return left >= A_CHILD_COSTS && best.makespan() > shortest && !watch.isOver();
    }

    private Found known(int[] starts, int makespan, int slack) {
        return new Found(starts, orders.byStart(starts, makespan), makespan, slack);
    }

    private Found parent() {
        int one = chance.below(count);
        int other = chance.below(count);
        return population[ranks[other] < ranks[one] ? other : one];
    }

    private Found improved(int[] order) {
        int[] early = new int[project.size()];
        int first = forward.generate(order, early);
        int[] fromEnd = new int[project.size()];
        int pushed = backward.generate(orders.lastFirst(early, first), fromEnd);
        int[] again = new int[project.size()];
        int makespan = forward.generate(orders.firstAgain(fromEnd, pushed), again);
        left -= A_CHILD_COSTS;
        Found found = known(again, makespan, slack(again, fromEnd, makespan));
        if (found.makespan() < best.makespan()) {
            best = found;
            watch.found(best.timetable());
        }
        return found;
    }

    /** Against the mirrored timetable, made to end at the makespan. */
    private int slack(int[] starts, int[] fromEnd, int makespan) {
        int slack = 0;
        for (int step = 0; step < starts.length; step++) {
            slack += makespan - fromEnd[step] - project.durations()[step] - starts[step];
        }
        return slack;
    }

    private void settle(Found child) {
        int worst = oneOfTheWorst();
        if (child.rank() <= ranks[worst] && there.add(child.mark())) {
            there.remove(population[worst].mark());
            put(worst, child);
        }
    }

    private void put(int at, Found found) {
        population[at] = found;
        ranks[at] = found.rank();
    }

    private int oneOfTheWorst() {
        long last = 0;
        int alike = 0;
        for (long rank : ranks) {
            if (rank > last) {
                last = rank;
                alike = 0;
            }
            alike += rank == last ? 1 : 0;
        }
        int skipped = chance.below(alike);
        int at = 0;
        while (ranks[at] != last || skipped-- > 0) {
            at++;
        }
        return at;
    }
}
