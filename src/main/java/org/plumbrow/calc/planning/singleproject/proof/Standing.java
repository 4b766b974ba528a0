package org.plumbrow.calc.planning.singleproject.proof;

import java.util.function.LongSupplier;
import org.plumbrow.calc.planning.singleproject.SearchWatch;
import org.plumbrow.calc.planning.singleproject.Timetable;

/** What is known so far, by those who look for shorter timetables and those who prove that there are none. */
final class Standing implements SearchWatch {

    private final LongSupplier clock;
    private final long begun;
    private final long nanos;
    private Timetable best;
    private int lower;

    /** @param clock nanoseconds since any moment */
    Standing(Timetable known, int lower, double seconds, LongSupplier clock) {
        this.clock = clock;
        this.begun = clock.getAsLong();
        this.best = known;
        this.lower = lower;
        this.nanos = (long) (seconds * 1e9);
    }

    @Override
    public synchronized void found(Timetable better) {
        if (better.makespan() < best.makespan()) {
            best = better;
        }
    }

    /** No timetable is shorter than that. */
    synchronized void atLeast(int proved) {
        lower = Math.max(lower, proved);
    }

    @Override
    public synchronized boolean isOver() {
        return lower >= best.makespan() || secondsLeft() <= 0;
    }

    double secondsLeft() {
        return (nanos - (clock.getAsLong() - begun)) / 1e9;
    }

    synchronized int lower() {
        return lower;
    }

    synchronized Timetable best() {
        return best;
    }

    synchronized ProvenTimetable proven() {
        return new ProvenTimetable(best, lower);
    }
}
