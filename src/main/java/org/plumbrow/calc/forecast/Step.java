package org.plumbrow.calc.forecast;

import org.jspecify.annotations.Nullable;

/**
 * One activity as the runs meet it.
 *
 * @param earliest slot before which it cannot start
 * @param crew null for waits and desk work
 * @param wait null for work
 * @param claims what it holds while it is worked on; empty where runs keep the plan's order, which is in the arcs then
 * @param settledFinish half-day of the clock at which it is finished whatever happens, or {@link #OPEN}
 * @param waitBegan day on which a wait began that is under way, or {@link #OPEN}
 */
record Step(
        String id,
        int earliest,
        Arc[] arcs,
        Draw draw,
        @Nullable CrewDays crew,
        DayTables.@Nullable WaitDays waiting,
        boolean inTheWeather,
        Claim[] claims,
        int settledFinish,
        int waitBegan) {

    static final int OPEN = Integer.MIN_VALUE;

    /**
     * What has to be over before.
     *
     * @param step its place in the order of play
     * @param lagSlots working half-days after
     * @param lagClock half-days of the clock after, 0 where the next slot is meant
     */
    record Arc(int step, int lagSlots, int lagClock) {}
}
