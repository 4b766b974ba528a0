package org.plumbrow.calc.planning.search;

import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.plumbrow.calc.planning.Activity;

/** A free activity as numbers. */
public final class Task {

    /** What a task takes. */
    public enum Kind {
        CREW,
        DESK,
        WAIT
    }

    public final Activity activity;
    public final Kind kind;
    public final int project;
    /** Not before this slot, whatever its free predecessors do: today, its release, what is settled. */
    public final int release;
    /** Tasks that come first. */
    public final int[] predecessors;
    /** Of each of them: the first slot ready, by the slot in which it starts (a wait) or ends (a work). */
    public final int[][] readyAfter;
    /** Crews that may do it. */
    public final int[] crews;
    /** Half-days that each of these takes; of a desk the one figure. */
    public final int[] halfDays;

    public final boolean inTheWeather;
    /** The group that one crew does, or -1. */
    public final int group;

    public final int[] pools;
    public final int[] pieces;
    /** The slot in which people know it to start, or -1. */
    public final int knownStart;
    /** The crew that people know, or -1. */
    public final int knownCrew;

    final Slots.@Nullable Table wait;

    Task(Making from) {
        activity = from.activity;
        kind = from.kind;
        project = from.project;
        release = from.release;
        predecessors = from.predecessors;
        readyAfter = from.readyAfter;
        crews = from.crews;
        halfDays = from.halfDays;
        inTheWeather = from.inTheWeather;
        group = from.group;
        pools = from.pools;
        pieces = from.pieces;
        knownStart = from.knownStart;
        knownCrew = from.knownCrew;
        wait = from.waitTable;
    }

    /** What a task is made from. */
    record Making(
            Activity activity,
            Kind kind,
            int project,
            int release,
            int[] predecessors,
            int[][] readyAfter,
            int[] crews,
            int[] halfDays,
            boolean inTheWeather,
            int group,
            int[] pools,
            int[] pieces,
            int knownStart,
            int knownCrew,
            Slots.@Nullable Table waitTable) {}

    /** The last working slot of a wait that starts then. */
    public int waitEnd(int start) {
        return Objects.requireNonNull(wait).finish()[start];
    }

    /** Half-days late of a promise when a wait starts then. */
    public int waitLate(Due due, int start) {
        return due.late(waitEnd(start), waitEndDay(start));
    }

    long waitEndDay(int start) {
        return Objects.requireNonNull(wait).day()[start];
    }
}
