package org.plumbrow.calc.planning.singleproject;

import java.util.List;

/**
 * When each step of a {@link SingleProject} begins.
 *
 * @param starts first period of each step, in the project's order
 * @param makespan periods from 0 to the last end
 */
public record Timetable(List<Integer> starts, int makespan) {

    public Timetable {
        starts = List.copyOf(starts);
    }
}
