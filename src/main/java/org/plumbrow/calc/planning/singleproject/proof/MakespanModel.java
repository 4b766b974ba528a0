package org.plumbrow.calc.planning.singleproject.proof;

import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.CpSolver;
import com.google.ortools.sat.CumulativeConstraint;
import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.IntervalVar;
import com.google.ortools.sat.LinearExpr;
import java.util.Arrays;
import java.util.List;
import org.plumbrow.calc.planning.singleproject.SingleProject;
import org.plumbrow.calc.planning.singleproject.Timetable;

/** The project as the constraint solver sees it, with nothing allowed to end after a horizon. */
final class MakespanModel {

    private final SingleProject project;
    private final int horizon;
    private final CpModel model = new CpModel();
    private final IntervalVar[] intervals;
    private final IntVar[] starts;

    /** @param horizon periods, the critical path or more */
    MakespanModel(SingleProject project, int horizon) {
        this.project = project;
        this.horizon = horizon;
        this.intervals = new IntervalVar[project.size()];
        this.starts = new IntVar[project.size()];
        placeSteps();
        shareResources();
    }

    CpModel model() {
        return model;
    }

    /**
     * The end of the last step, as something to be made small.
     *
     * @param lower no timetable is shorter
     */
    IntVar makespan(int lower) {
        IntVar makespan = model.newIntVar(Math.min(lower, horizon), horizon, "makespan");
        for (int step = 0; step < intervals.length; step++) {
            SingleProject.Step said = project.steps().get(step);
            if (said.successors().isEmpty()) {
                model.addGreaterOrEqual(makespan, LinearExpr.affine(starts[step], 1, said.duration()));
            }
        }
        return makespan;
    }

    void hint(Timetable known) {
        for (int step = 0; step < starts.length; step++) {
            model.addHint(starts[step], known.starts().get(step));
        }
    }

    /** What the solver has found. */
    Timetable timetable(CpSolver solver) {
        List<Integer> found =
                Arrays.stream(starts).map(start -> (int) solver.value(start)).toList();
        int makespan = 0;
        for (int step = 0; step < starts.length; step++) {
            makespan = Math.max(
                    makespan, found.get(step) + project.steps().get(step).duration());
        }
        return new Timetable(found, makespan);
    }

    private void placeSteps() {
        int[] heads = heads();
        int[] tails = tails();
        for (int step = 0; step < intervals.length; step++) {
            int duration = project.steps().get(step).duration();
            starts[step] = model.newIntVar(heads[step], horizon - tails[step], "start" + step);
            intervals[step] = model.newFixedSizeIntervalVar(starts[step], duration, "step" + step);
        }
        for (int step = 0; step < intervals.length; step++) {
            SingleProject.Step said = project.steps().get(step);
            LinearExpr end = LinearExpr.affine(starts[step], 1, said.duration());
            for (int successor : said.successors()) {
                model.addGreaterOrEqual(starts[successor], end);
            }
        }
    }

    private void shareResources() {
        for (int resource = 0; resource < project.capacities().size(); resource++) {
            CumulativeConstraint shared =
                    model.addCumulative(project.capacities().get(resource));
            for (int step = 0; step < intervals.length; step++) {
                int demand = project.steps().get(step).demands().get(resource);
                if (demand > 0 && project.steps().get(step).duration() > 0) {
                    shared.addDemand(intervals[step], demand);
                }
            }
        }
    }

    private int[] heads() {
        int[] heads = new int[project.size()];
        for (int step : project.order()) {
            int end = heads[step] + project.steps().get(step).duration();
            for (int successor : project.steps().get(step).successors()) {
                heads[successor] = Math.max(heads[successor], end);
            }
        }
        return heads;
    }

    /** Periods from the start of each step to the end of the longest chain behind it. */
    private int[] tails() {
        List<Integer> order = project.order();
        int[] tails = new int[project.size()];
        for (int place = order.size() - 1; place >= 0; place--) {
            int step = order.get(place);
            int longest = 0;
            for (int successor : project.steps().get(step).successors()) {
                longest = Math.max(longest, tails[successor]);
            }
            tails[step] = longest + project.steps().get(step).duration();
        }
        return tails;
    }
}
