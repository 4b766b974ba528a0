package org.plumbrow.calc.forecast;

import java.util.Arrays;

/** In how many runs each target was reached on each day. */
final class Tally {

    private final int[][] reachedOn;

    Tally(int targets, int days) {
        reachedOn = new int[targets][days];
    }

    void reached(int target, int day) {
        reachedOn[target][Math.min(reachedOn[target].length - 1, Math.max(0, day))]++;
    }

    /** Adds what was counted here to another tally and begins anew. */
    void moveTo(Tally other) {
        for (int target = 0; target < reachedOn.length; target++) {
            int[] days = reachedOn[target];
            for (int day = 0; day < days.length; day++) {
                other.reachedOn[target][day] += days[day];
            }
            Arrays.fill(days, 0);
        }
    }

    int runs(int target) {
        return Arrays.stream(reachedOn[target]).sum();
    }

    /** The first day by which at least that share of the runs has reached it. */
    int dayOf(int target, double share) {
        double wanted = share * runs(target);
        int sum = 0;
        for (int day = 0; day < reachedOn[target].length; day++) {
            sum += reachedOn[target][day];
            if (sum >= wanted - 1e-9 && sum > 0) {
                return day;
            }
        }
        return reachedOn[target].length - 1;
    }

    double shareBy(int target, int day) {
        int sum = 0;
        for (int at = 0; at <= Math.min(day, reachedOn[target].length - 1); at++) {
            sum += reachedOn[target][at];
        }
        return (double) sum / runs(target);
    }
}
