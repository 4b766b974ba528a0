package org.plumbrow.calc.planning.singleproject.proof;

import com.google.ortools.sat.CpSolver;
import com.google.ortools.sat.CpSolverStatus;
import org.plumbrow.calc.planning.singleproject.SingleProject;

/**
 * Raises the lower bound one horizon after the other (destructive improvement: Klein, Scholl 1999). Is there a timetable no
 * longer than the bound? If not, the bound is one more; if there is, it is a shortest one. Where the best known is near, the
 * same is asked just below it first. Without an objective and without linear programs the solver learns fastest from its
 * conflicts.
 */
final class BoundClimb implements Runnable {

    /** So near to the bound a shorter timetable, or that there is none, is worth looking for from above. */
    private static final double NEAR = 1.08;

    /** Of the time left when that begins; the rest is the bound's. */
    private static final double NEAR_SHARE = 0.6;

    private final SingleProject project;
    private final Standing standing;
    private final OneWorker worker;
    private volatile int asked;
    private double keptForBound = -1;

    BoundClimb(SingleProject project, Standing standing, int seed) {
        this.project = project;
        this.standing = standing;
        this.worker = new OneWorker(seed);
    }

    @Override
    public void run() {
        while (!standing.isOver()) {
            ask();
        }
    }

    /** Also when somebody else has answered meanwhile. */
    void stopWhenAnswered() {
        if (standing.isOver()
                || asked < standing.lower()
                || asked >= standing.best().makespan()) {
            worker.stop();
        }
    }

    private void ask() {
        int lower = standing.lower();
        int below = standing.best().makespan() - 1;
        double left = standing.secondsLeft();
        if (keptForBound < 0 && below < NEAR * lower) {
            keptForBound = left * (1 - NEAR_SHARE);
        }
        if (below > lower && keptForBound >= 0 && left > keptForBound) {
            decide(below, left - keptForBound);
        } else {
            decide(lower, left);
        }
    }

    private void decide(int horizon, double seconds) {
        asked = horizon;
        CpSolver solver = worker.solver(seconds);
        solver.getParameters().setLinearizationLevel(0);
        if (worker.solved(solver, new MakespanModel(project, horizon), standing::found) == CpSolverStatus.INFEASIBLE) {
            standing.atLeast(horizon + 1);
        }
    }
}
