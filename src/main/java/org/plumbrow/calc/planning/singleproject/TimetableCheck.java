package org.plumbrow.calc.planning.singleproject;

import java.util.ArrayList;
import java.util.List;

/** Holds a {@link Timetable} against its project, period by period, sharing nothing with the engines that made it. */
public final class TimetableCheck {

    private TimetableCheck() {}

    /** What is wrong with it, in words; steps and resources are counted from 1. Empty when nothing is. */
    public static List<String> faults(SingleProject project, Timetable timetable) {
        if (timetable.starts().size() != project.size()) {
            return List.of(timetable.starts().size() + " starts for " + project.size() + " steps");
        }
        List<String> faults = new ArrayList<>();
        int last = 0;
        for (int step = 0; step < project.size(); step++) {
            int start = timetable.starts().get(step);
            int end = start + project.steps().get(step).duration();
            last = Math.max(last, end);
            if (start < 0) {
                faults.add("step " + (step + 1) + " begins before the project");
            }
            for (int successor : project.steps().get(step).successors()) {
                if (timetable.starts().get(successor) < end) {
                    faults.add("step " + (successor + 1) + " begins before step " + (step + 1) + " ends");
                }
            }
        }
        if (last != timetable.makespan()) {
            faults.add("the last step ends at " + last + ", not at " + timetable.makespan());
        }
        if (faults.isEmpty()) {
            faults.addAll(overloads(project, timetable));
        }
        return faults;
    }

    private static List<String> overloads(SingleProject project, Timetable timetable) {
        List<String> faults = new ArrayList<>();
        for (int resource = 0; resource < project.capacities().size(); resource++) {
            int[] taken = new int[timetable.makespan()];
            for (int step = 0; step < project.size(); step++) {
                int start = timetable.starts().get(step);
                for (int at = start; at < start + project.steps().get(step).duration(); at++) {
                    taken[at] += project.steps().get(step).demands().get(resource);
                }
            }
            for (int at = 0; at < taken.length; at++) {
                if (taken[at] > project.capacities().get(resource)) {
                    faults.add("period " + at + " takes " + taken[at] + " of resource " + (resource + 1) + ", of which "
                            + project.capacities().get(resource) + " are there");
                }
            }
        }
        return faults;
    }
}
