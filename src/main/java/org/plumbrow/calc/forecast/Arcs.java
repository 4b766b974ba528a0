package org.plumbrow.calc.forecast;

/**
 * What the steps of a block wait for, as plain numbers side by side in the order of play: a run fetches them from memory one
 * after the other.
 */
final class Arcs {

    /** Of each step where its arcs begin; one entry more than steps. */
    private final int[] from;
    /** Of each arc where the runs of its step lie. */
    private final int[] at;

    private final int[] lagSlots;
    private final int[] lagClock;

    Arcs(Step[] steps, Rows rows) {
        from = new int[steps.length + 1];
        for (int number = 0; number < steps.length; number++) {
            from[number + 1] = from[number] + steps[number].arcs().length;
        }
        at = new int[from[steps.length]];
        lagSlots = new int[at.length];
        lagClock = new int[at.length];
        int next = 0;
        for (Step step : steps) {
            for (Step.Arc arc : step.arcs()) {
                at[next] = rows.of()[arc.step()] * Block.RUNS;
                lagSlots[next] = arc.lagSlots();
                lagClock[next++] = arc.lagClock();
            }
        }
    }

    /**
     * Puts off a step until everything is over that it waits for.
     *
     * @param ready of each run a slot; raised, at most to the last slot
     * @param after of each row and run the slot from which a successor may start
     * @param finish of each row and run the half-day of the clock with which it is finished
     */
    void putOff(int number, int[] ready, char[] after, char[] finish, DayTables time) {
        for (int arc = from[number]; arc < from[number + 1]; arc++) {
            int row = at[arc];
            int slots = lagSlots[arc];
            int clock = lagClock[arc];
            for (int run = 0; run < Block.RUNS; run++) {
                int slot = clock == 0 ? after[row + run] : time.slotFrom(finish[row + run] + clock + 1);
                ready[run] = Math.max(ready[run], slot + slots);
            }
        }
        if (from[number] < from[number + 1]) {
            int last = time.lastSlot();
            for (int run = 0; run < Block.RUNS; run++) {
                ready[run] = Math.min(ready[run], last);
            }
        }
    }
}
