package org.plumbrow.calc.planning.search;

import org.plumbrow.calc.planning.Promise;

/** A promise that some free task still decides. */
public final class Due {

    public final Promise promise;
    /** The tasks whose finish counts. */
    public final int[] tasks;
    /** The last slot of the promised day. */
    public final int slot;
    /** The project's number, or -1 when none of its tasks is free. */
    public final int project;
    /** Half-days late that what is settled makes already. */
    public final int settled;

    public final int weight;
    private final long lastDay;

    Due(Promise promise, int[] tasks, int slot, int project, int settled) {
        this.promise = promise;
        this.tasks = tasks;
        this.slot = slot;
        this.project = project;
        this.settled = settled;
        weight = promise.weight();
        lastDay = promise.date().toEpochDay();
    }

    /** Half-days late when a task ends with that slot, on that day. */
    public int late(int finishSlot, long finishDay) {
        return finishDay > lastDay ? Math.max(1, finishSlot - slot) : 0;
    }
}
