package org.plumbrow.calc.planning.search;

import org.plumbrow.calc.planning.PlanCost;

/** Where a decoded order puts each task. */
public final class Dates {

    /** What a weighted half-day late adds to {@link #cost}. */
    public static final long LATE = 1_000_000;

    /** In the sequence in which they were placed. */
    public final int[] served;

    public final int[] start;
    /** The last slot; of a wait the last working one. */
    public final int[] finish;
    /** The crew, -1 where none is needed. */
    public final int[] crew;
    /** Tasks that found no room. */
    int unplaced;

    long lateness;
    long disturbance;

    Dates(int size) {
        served = new int[size];
        start = new int[size];
        finish = new int[size];
        crew = new int[size];
    }

    public int unplaced() {
        return unplaced;
    }

    public long lateness() {
        return lateness;
    }

    public long disturbance() {
        return disturbance;
    }

    /** Its lateness first and disturbance next, as one number; what has no room costs more than any lateness. */
    public long cost() {
        return (unplaced * 1_000_000L + lateness) * LATE + Math.min(disturbance, LATE - 1);
    }

    public void take(Dates other) {
        System.arraycopy(other.served, 0, served, 0, served.length);
        System.arraycopy(other.start, 0, start, 0, start.length);
        System.arraycopy(other.finish, 0, finish, 0, finish.length);
        System.arraycopy(other.crew, 0, crew, 0, crew.length);
        unplaced = other.unplaced;
        lateness = other.lateness;
        disturbance = other.disturbance;
    }

    long moved(BranchModel model, int number) {
        Task task = model.tasks[number];
        return task.knownStart < 0
                ? 0
                : Math.min(PlanCost.MOST_MOVED, Math.abs(task.knownStart - start[number]))
                        + (task.knownCrew == crew[number] ? 0 : PlanCost.CREW_CHANGED);
    }
}
