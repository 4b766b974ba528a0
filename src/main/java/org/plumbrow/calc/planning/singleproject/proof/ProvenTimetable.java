package org.plumbrow.calc.planning.singleproject.proof;

import org.plumbrow.calc.planning.singleproject.Timetable;

/**
 * @param best the shortest timetable that was found
 * @param lower periods; no timetable of the project is shorter
 */
public record ProvenTimetable(Timetable best, int lower) {

    public boolean isOptimal() {
        return best.makespan() == lower;
    }
}
