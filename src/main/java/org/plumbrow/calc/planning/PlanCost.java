package org.plumbrow.calc.planning;

import java.util.Comparator;

/**
 * What a plan costs, part by part in the order that counts: a later part matters only between plans whose earlier parts
 * are equal.
 *
 * @param broken agreements and activities that the plan cannot keep or place
 * @param lateness half-days late times the promise's weight, summed
 * @param disturbance half-days by which known starts move (at most 40 each) and 4 for each known crew that changes
 * @param idle half-days on which crews are there with nothing to do before their last work
 * @param travelMinutes of crews between consecutive sites
 */
public record PlanCost(int broken, long lateness, long disturbance, long idle, long travelMinutes)
        implements Comparable<PlanCost> {

    /** Half-days: a start that moves by a month or by a year is the same trouble. */
    public static final int MOST_MOVED = 40;

    /** Half-days that a changed crew counts for. */
    public static final int CREW_CHANGED = 4;

    /** A half-day of work, in minutes, for reading travel in the same unit. */
    public static final int MINUTES_A_HALF_DAY = 240;

    private static final Comparator<PlanCost> IN_ORDER = Comparator.comparingInt(PlanCost::broken)
            .thenComparingLong(PlanCost::lateness)
            .thenComparingLong(PlanCost::disturbance)
            .thenComparingLong(PlanCost::idle)
            .thenComparingLong(PlanCost::travelMinutes);

    public double travelHalfDays() {
        return (double) travelMinutes / MINUTES_A_HALF_DAY;
    }

    public boolean isBetterThan(PlanCost other) {
        return compareTo(other) < 0;
    }

    @Override
    public int compareTo(PlanCost other) {
        return IN_ORDER.compare(this, other);
    }
}
