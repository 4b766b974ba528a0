package org.plumbrow.calc.planning.singleproject.proof;

import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.CpSolver;
import com.google.ortools.sat.CpSolverStatus;
import com.google.ortools.sat.CumulativeConstraint;
import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.IntervalVar;
import com.google.ortools.sat.LinearExpr;
import java.util.Arrays;
import java.util.List;
import org.plumbrow.calc.planning.exact.PieceSolver;
import org.plumbrow.calc.planning.singleproject.SingleProject;
import org.plumbrow.calc.planning.singleproject.Timetable;

/**
 * Narrows the gap between a known timetable and a lower bound. The known one is the hint, and nothing longer is looked at.
 *
 * <p>The workers are named: of those that CP-SAT takes by itself for two cores none makes good bounds for this problem.
 * One worker more than names stays for its own neighbourhood search.
 */
public final class MakespanProof {

    private static final List<String> WORKERS = List.of("reduced_costs", "objective_lb_search");

    private final SingleProject project;
    private final Timetable known;
    private final CpModel model = new CpModel();
    private final IntervalVar[] intervals;
    private final IntVar[] starts;
    private final IntVar makespan;

    private MakespanProof(SingleProject project, Timetable known) {
        this.project = project;
        this.known = known;
        this.intervals = new IntervalVar[project.size()];
        this.starts = new IntVar[project.size()];
        this.makespan = model.newIntVar(project.criticalPath(), known.makespan(), "makespan");
        placeSteps();
        shareResources();
        model.minimize(makespan);
        model.addHint(makespan, known.makespan());
    }

    /** Whether this machine has the solver's library. */
    public static boolean isThere() {
        return PieceSolver.isThere();
    }

    /**
     * @param known a timetable without faults
     * @param seconds at most, by the clock
     */
    public static ProvenTimetable run(SingleProject project, Timetable known, double seconds, int seed) {
        if (known.makespan() == project.criticalPath()) {
            return new ProvenTimetable(known, known.makespan());
        }
        if (!isThere()) {
            throw new IllegalStateException("the solver's library is missing");
        }
        return new MakespanProof(project, known).solved(seconds, seed);
    }

    private void placeSteps() {
        int[] tails = tails();
        int[] heads = heads();
        for (int step = 0; step < intervals.length; step++) {
            int duration = project.steps().get(step).duration();
            starts[step] = model.newIntVar(heads[step], known.makespan() - tails[step], "start" + step);
            intervals[step] = model.newFixedSizeIntervalVar(starts[step], duration, "step" + step);
            model.addHint(starts[step], known.starts().get(step));
        }
        for (int step = 0; step < intervals.length; step++) {
            SingleProject.Step said = project.steps().get(step);
            LinearExpr end = LinearExpr.affine(starts[step], 1, said.duration());
            for (int successor : said.successors()) {
                model.addGreaterOrEqual(starts[successor], end);
            }
            if (said.successors().isEmpty()) {
                model.addGreaterOrEqual(makespan, end);
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

    private ProvenTimetable solved(double seconds, int seed) {
        CpSolver solver = new CpSolver();
        solver.getParameters()
                .setMaxTimeInSeconds(seconds)
                .setRandomSeed(seed)
                .setNumWorkers(WORKERS.size() + 1)
                .addAllSubsolvers(WORKERS);
        CpSolverStatus status = solver.solve(model);
        if (status == CpSolverStatus.UNKNOWN) {
            return new ProvenTimetable(known, Math.max(project.criticalPath(), bound(solver)));
        }
        if (status != CpSolverStatus.OPTIMAL && status != CpSolverStatus.FEASIBLE) {
            throw new IllegalStateException("the solver says " + status + ": " + model.validate());
        }
        List<Integer> found =
                Arrays.stream(starts).map(start -> (int) solver.value(start)).toList();
        Timetable best = new Timetable(found, (int) solver.value(makespan));
        int lower = status == CpSolverStatus.OPTIMAL ? best.makespan() : bound(solver);
        return new ProvenTimetable(best, Math.max(project.criticalPath(), lower));
    }

    private static int bound(CpSolver solver) {
        double bound = solver.bestObjectiveBound();
        return Double.isFinite(bound) && bound > 0 ? (int) Math.ceil(bound - 1e-6) : 0;
    }
}
