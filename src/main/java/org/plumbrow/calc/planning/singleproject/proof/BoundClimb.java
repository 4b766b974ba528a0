package org.plumbrow.calc.planning.singleproject.proof;

import com.google.ortools.sat.CpSolver;
import com.google.ortools.sat.CpSolverStatus;
import com.google.ortools.sat.IntVar;
import org.jspecify.annotations.Nullable;
import org.plumbrow.calc.planning.singleproject.SingleProject;

/**
 * Raises the lower bound: a linear relaxation first, then one horizon after the other (destructive improvement: Klein,
 * Scholl 1999). Is there a timetable no longer than the bound? If not, the bound is one more; if there is, it is a
 * shortest one. Where the best known is near, the same is asked just below it. Without an objective and without linear programs the solver learns fastest from its conflicts.
 */
final class BoundClimb implements Runnable {

    /** Share of the seconds for the relaxation; what it says at all it says early. */
    private static final double RELAXED_SHARE = 0.1;

    /** So near to the bound a shorter timetable, or that there is none, is worth looking for from above. */
    private static final double NEAR = 1.08;

    private static final double NEAR_SHARE = 0.6;

    private final SingleProject project;
    private final Standing standing;
    private final int seed;
    private volatile @Nullable CpSolver running;

    BoundClimb(SingleProject project, Standing standing, int seed) {
        this.project = project;
        this.standing = standing;
        this.seed = seed;
    }

    @Override
    public void run() {
        relax(standing.secondsLeft() * RELAXED_SHARE);
        if (standing.best().makespan() <= NEAR * standing.lower()) {
            closeIn(standing.secondsLeft() * (1 - NEAR_SHARE));
        }
        climb();
    }

    /** From the best timetable down; so many seconds stay for the bound unless both ask the same. */
    private void closeIn(double reserve) {
        boolean known = true;
        while (known && !standing.isOver()) {
            int horizon = standing.best().makespan() - 1;
            double kept = horizon == standing.lower() ? 0 : reserve;
            known = isDecided(horizon, standing.secondsLeft() - kept);
        }
    }

    /** From the bound up. */
    private void climb() {
        boolean known = true;
        while (known && !standing.isOver()) {
            known = isDecided(standing.lower(), standing.secondsLeft());
        }
    }

    /** Ends what is being solved now; to be repeated, as the next may be about to begin. */
    void stop() {
        CpSolver solver = running;
        if (solver != null) {
            solver.stopSearch();
        }
    }

    private void relax(double seconds) {
        MakespanModel model = new MakespanModel(project, standing.best().makespan());
        IntVar makespan = model.makespan();
        model.model().minimize(makespan);
        model.hint(standing.best());
        CpSolver solver = solver(seconds);
        solver.getParameters().addSubsolvers("reduced_costs");
        if (isTimetable(solved(solver, model))) {
            standing.found(model.timetable(solver));
        }
        double bound = solver.bestObjectiveBound();
        if (Double.isFinite(bound) && bound > 0) {
            standing.atLeast((int) Math.ceil(bound - 1e-6));
        }
    }

    private boolean isDecided(int horizon, double seconds) {
        MakespanModel model = new MakespanModel(project, horizon);
        CpSolver solver = solver(seconds);
        solver.getParameters().setLinearizationLevel(0);
        CpSolverStatus status = solved(solver, model);
        if (isTimetable(status)) {
            standing.found(model.timetable(solver));
        } else if (status == CpSolverStatus.INFEASIBLE) {
            standing.atLeast(horizon + 1);
        }
        return status != CpSolverStatus.UNKNOWN;
    }

    private CpSolver solver(double seconds) {
        CpSolver solver = new CpSolver();
        solver.getParameters()
                .setMaxTimeInSeconds(Math.max(0, seconds))
                .setRandomSeed(seed)
                .setNumWorkers(1);
        return solver;
    }

    private CpSolverStatus solved(CpSolver solver, MakespanModel model) {
        running = solver;
        CpSolverStatus status = solver.solve(model.model());
        running = null;
        if (status == CpSolverStatus.MODEL_INVALID) {
            throw new IllegalStateException(
                    "the solver says " + status + ": " + model.model().validate());
        }
        return status;
    }

    private static boolean isTimetable(CpSolverStatus status) {
        return status == CpSolverStatus.OPTIMAL || status == CpSolverStatus.FEASIBLE;
    }
}
