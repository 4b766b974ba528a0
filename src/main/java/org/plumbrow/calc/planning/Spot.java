package org.plumbrow.calc.planning;

/**
 * Where a work fits: a crew, a run of its present half-days, and what kept it from being earlier.
 *
 * @param index of the first half-day among the crew's present ones
 * @param start its slot
 * @param finish slot of the last one
 */
record Spot(int crew, int index, int length, int start, int finish, Bound bound) {

    boolean isBetterThan(Spot other) {
        return finish < other.finish || (finish == other.finish && !waitsForCrew() && other.waitsForCrew());
    }

    /** A better one ends by then. */
    int latestBetter() {
        return waitsForCrew() ? finish : finish - 1;
    }

    private boolean waitsForCrew() {
        return bound instanceof Bound.CrewBusy || bound instanceof Bound.CrewAway;
    }
}
