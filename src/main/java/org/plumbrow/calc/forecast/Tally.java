package org.plumbrow.calc.forecast;

/** In how many runs each target was reached on each day. Each is reached on few of all days, so no others are looked at. */
final class Tally {

    private final int[][] reachedOn;
    private final int[] firstDay;
    private final int[] lastDay;

    Tally(int targets, int days) {
        reachedOn = new int[targets][days];
        firstDay = new int[targets];
        lastDay = new int[targets];
        for (int target = 0; target < targets; target++) {
            reset(target);
        }
    }

    private void reset(int target) {
        firstDay[target] = reachedOn[target].length;
        lastDay[target] = -1;
    }

    void reached(int target, int day) {
        add(target, Math.min(reachedOn[target].length - 1, Math.max(0, day)), 1);
    }

    private void add(int target, int day, int runs) {
        reachedOn[target][day] += runs;
        firstDay[target] = Math.min(firstDay[target], day);
        lastDay[target] = Math.max(lastDay[target], day);
    }

    /** Adds what was counted here to another tally and begins anew. */
    void moveTo(Tally other) {
        for (int target = 0; target < reachedOn.length; target++) {
            for (int day = firstDay[target]; day <= lastDay[target]; day++) {
                other.add(target, day, reachedOn[target][day]);
                reachedOn[target][day] = 0;
            }
            reset(target);
        }
    }

    int runs(int target) {
        return reachedUntil(target, lastDay[target]);
    }

    private int reachedUntil(int target, int day) {
        int sum = 0;
        for (int at = firstDay[target]; at <= Math.min(day, lastDay[target]); at++) {
            sum += reachedOn[target][at];
        }
        return sum;
    }

    /** The first day by which at least that share of the runs has reached it. */
    int dayOf(int target, double share) {
        double wanted = share * runs(target);
        int sum = 0;
        for (int day = firstDay[target]; day <= lastDay[target]; day++) {
            sum += reachedOn[target][day];
            if (sum >= wanted - 1e-9 && sum > 0) {
                return day;
            }
        }
        return reachedOn[target].length - 1;
    }

    double shareBy(int target, int day) {
        return (double) reachedUntil(target, day) / runs(target);
    }
}
