package org.plumbrow.calc.planning.search;

/**
 * What a work asks for; many works of a branch ask for the same, so that it is held once.
 *
 * @param crews who may do it, and how long each takes
 * @param teams the same crews by how long they take, the fastest first
 * @param tolled the same crews by how long they take and by their toll, the smallest toll first
 */
record CrewJob(
        int[] crews, int[] halfDays, boolean inTheWeather, int[] pools, int[] pieces, Team[] teams, Tolled[] tolled) {

    /** @param toll in parts of a half-day ({@link Tolls#UNIT}) */
    record Tolled(Team team, int toll) {}
}
