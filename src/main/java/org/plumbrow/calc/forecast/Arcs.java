package org.plumbrow.calc.forecast;

/**
 * What the steps of a block wait for, as plain numbers side by side in the order of play: a run fetches them from memory one
 * after the other.
 */
final class Arcs {

    /** In {@link #bind}: nothing held the step back. */
    static final int UNBOUND = 0;

    /** Of each step where its arcs begin; one entry more than steps. */
    private final int[] from;
    /** Of each arc the step that is waited for, and where its runs lie. */
    private final int[] step;

    private final int[] at;
    private final int[] lagSlots;
    private final int[] lagClock;

    private final DayTables time;
    /** Of each row and run: the slot from which a successor may start, and the half-day of the clock with which it is finished. */
    private final char[] after;

    private final char[] finish;

    Arcs(Step[] steps, Rows rows, DayTables time, char[] after, char[] finish) {
        this.time = time;
        this.after = after;
        this.finish = finish;
        from = new int[steps.length + 1];
        for (int number = 0; number < steps.length; number++) {
            from[number + 1] = from[number] + steps[number].arcs().length;
        }
        step = new int[from[steps.length]];
        at = new int[step.length];
        lagSlots = new int[step.length];
        lagClock = new int[step.length];
        int next = 0;
        for (Step each : steps) {
            for (Step.Arc arc : each.arcs()) {
                step[next] = arc.step();
                at[next] = rows.of()[arc.step()] * Block.RUNS;
                lagSlots[next] = arc.lagSlots();
                lagClock[next++] = arc.lagClock();
            }
        }
    }

    /** Puts off a step until everything is over that it waits for. @param ready of each run a slot; raised, at most to the last */
    void putOff(int number, int[] ready) {
        for (int arc = from[number]; arc < from[number + 1]; arc++) {
            int row = at[arc];
            int slots = lagSlots[arc];
            int clock = lagClock[arc];
            for (int run = 0; run < Block.RUNS; run++) {
                ready[run] = Math.max(ready[run], over(row + run, slots, clock));
            }
        }
        if (from[number] < from[number + 1]) {
            int last = time.lastSlot();
            for (int run = 0; run < Block.RUNS; run++) {
                ready[run] = Math.min(ready[run], last);
            }
        }
    }

    /**
     * Says which of them held a step back.
     *
     * @param ready of each run a slot; raised
     * @param back of each step and run, see {@link #back}; written where something is over later than the step was ready
     */
    void bind(int number, int[] ready, char[] back) {
        for (int arc = from[number]; arc < from[number + 1]; arc++) {
            for (int run = 0; run < Block.RUNS; run++) {
                int over = over(at[arc] + run, lagSlots[arc], lagClock[arc]);
                if (over > ready[run]) {
                    ready[run] = over;
                    back[number * Block.RUNS + run] = back(number, step[arc]);
                }
            }
        }
    }

    /** The slot from which what is waited for lets its step start; the arc's numbers are fetched once for all runs. */
    private int over(int cell, int slots, int clock) {
        int slot = clock == 0 ? after[cell] : time.slotFrom(finish[cell] + clock + 1);
        return slot + slots;
    }

    /**
     * How many places one step stands before another. What is farther back than two bytes can say (on a branch of thousands
     * of projects) is not followed.
     */
    static char back(int number, int before) {
        return (char) (number - before > Character.MAX_VALUE ? UNBOUND : number - before);
    }
}
