package org.plumbrow.calc.forecast;

import java.util.Arrays;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/** Some runs side by side, step by step: what one step needs lies in the nearest memory for all of them. */
final class Block {

    /** An even number, so that pairs stay together; with more, a large branch's finishes leave the nearest memory. */
    static final int RUNS = 50;

    private final Step[] steps;
    private final DayTables time;
    private final FairDays sky;
    private final int[] row;
    private final Arcs arcs;
    /** Of each row and run: the slot from which a successor may start. Two bytes each: to fetch them is what a run costs. */
    private final char[] after;
    /** Of each row and run: the half-day of the clock with which it is finished. */
    private final char[] finish;

    private final int[] ready = new int[RUNS];
    private final int[] amount = new int[RUNS];
    private final long[] fair;
    private final Holdings holdings;
    /** Null where nobody asks who held what. */
    private final @Nullable Holders holders;

    private Block(Step[] steps, DayTables time, FairDays sky, Claims claims, Rows rows, boolean explained) {
        this.steps = steps;
        row = rows.of();
        this.time = time;
        this.sky = sky;
        holdings = new Holdings(claims.units(), time.clockOf.length, RUNS);
        claims.holdAway(holdings);
        holders = explained ? new Holders(steps, claims.kinds(), RUNS) : null;
        after = new char[rows.count() * RUNS];
        finish = new char[rows.count() * RUNS];
        arcs = new Arcs(steps, rows, time, after, finish);
        fair = new long[sky.isAlwaysFair() ? 0 : RUNS * sky.words()];
    }

    /** Of which afterwards {@link #bindings} may be asked, and every step. */
    static Block explained(Step[] steps, DayTables time, FairDays sky, Claims claims) {
        return new Block(steps, time, sky, claims, Rows.all(steps.length), true);
    }

    /** @param rows of which afterwards only the steps may be asked that keep theirs */
    static Block counted(Step[] steps, DayTables time, FairDays sky, Claims claims, Rows rows) {
        return new Block(steps, time, sky, claims, rows, false);
    }

    /** Plays the runs from an even one on. */
    void play(int firstRun, long seed) {
        sky.fill(fair, firstRun, RUNS, seed);
        holdings.clear();
        for (int number = 0; number < steps.length; number++) {
            Step step = steps[number];
            int from = row[number] * RUNS;
            if (step.settledFinish() != Step.OPEN) {
                Arrays.fill(finish, from, from + RUNS, (char)
                        Math.max(0, Math.min(Character.MAX_VALUE, step.settledFinish())));
                Arrays.fill(after, from, from + RUNS, (char) time.slotFrom(step.settledFinish() + 1));
                continue;
            }
            Arrays.fill(ready, step.earliest());
            arcs.putOff(number, ready);
            step.draw().fill(amount, firstRun, RUNS, seed);
            if (step.waiting() != null) {
                waitFrom(step, from);
            } else {
                workFrom(number, from);
            }
        }
    }

    private void waitFrom(Step step, int from) {
        DayTables.WaitDays days = Objects.requireNonNull(step.waiting());
        for (int run = 0; run < RUNS; run++) {
            int clock = time.clockOf[ready[run]];
            int day = step.waitBegan() == Step.OPEN ? clock >> 1 : Math.max(0, step.waitBegan());
            // A wait of no days is over as it begins; any other ends with the last half of its last day.
            int over = amount[run] == 0 ? clock : 2 * days.after(day, amount[run]) + 1;
            finish[from + run] = (char) over;
            after[from + run] = (char) time.slotFrom(over + 1);
        }
    }

    private void workFrom(int number, int from) {
        Step step = steps[number];
        int last = time.lastSlot();
        for (int run = 0; run < RUNS; run++) {
            int slot = step.claims().length == 0 ? workedUntil(step, run, ready[run]) : holdFrom(number, run);
            finish[from + run] = (char) time.clockOf[slot];
            after[from + run] = (char) Math.min(last, slot + 1);
        }
    }

    /** The slot in which work that begins at or after a slot ends. */
    private int workedUntil(Step step, int run, int start) {
        CrewDays crew = step.crew();
        if (crew == null) {
            return Math.min(time.lastSlot(), start + amount[run] - 1);
        }
        return step.inTheWeather() && fair.length > 0
                ? crew.finishInFairWeather(fair, run * sky.words(), start, amount[run], time.lastSlot())
                : crew.finish(start, amount[run]);
    }

    /** Takes the first stretch in which everything that it claims is free, and gives the slot in which it ends. */
    private int holdFrom(int number, int run) {
        Step step = steps[number];
        int last = time.lastSlot();
        int from = ready[run];
        while (true) {
            int start = step.crew() == null ? from : Math.max(from, step.crew().presentFrom(from));
            int end = Math.max(start, workedUntil(step, run, start));
            int again = holdings.clash(step.claims(), run, start, end);
            if (again == Holdings.FREE || again >= last) {
                holdings.hold(step.claims(), run, start, end);
                if (holders != null) {
                    holders.began(number * RUNS + run, start);
                }
                return end;
            }
            from = again;
        }
    }

    int finish(int step, int run) {
        return finish[row[step] * RUNS + run];
    }

    /**
     * Of each step and run (as {@code step * RUNS + run}) how many places before it in the order of play the step stands for
     * which it waited; {@link Arcs#UNBOUND} when nothing but its own earliest slot held it back.
     */
    char[] bindings() {
        Holders held = Objects.requireNonNull(holders, "only of explained runs");
        char[] binding = new char[steps.length * RUNS];
        for (int number = 0; number < steps.length; number++) {
            Step step = steps[number];
            if (step.settledFinish() == Step.OPEN && step.waitBegan() == Step.OPEN) {
                Arrays.fill(ready, step.earliest());
                arcs.bind(number, ready, binding);
                for (int run = 0; run < RUNS && step.claims().length > 0; run++) {
                    int holder = held.before(number, run, ready[run], after);
                    binding[number * RUNS + run] =
                            holder < 0 ? binding[number * RUNS + run] : Arcs.back(number, holder);
                }
            }
        }
        return binding;
    }
}
