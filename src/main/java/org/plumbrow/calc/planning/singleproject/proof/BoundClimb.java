package org.plumbrow.calc.planning.singleproject.proof;

import com.google.ortools.sat.CpSolver;
import com.google.ortools.sat.CpSolverStatus;
import org.plumbrow.calc.planning.singleproject.SingleProject;

/**
 * Raises the lower bound one horizon after the other (destructive improvement: Klein, Scholl 1999). Is there a timetable no
 * longer than the bound? If not, the bound is one more; if there is, it is a shortest one. Once that is no longer quickly
 * answered and the best known is near, the same is asked just below it first. Without an objective and without linear programs the solver learns fastest from its
 * conflicts.
 */
final class BoundClimb implements Runnable {

    /** So near to the bound a shorter timetable, or that there is none, is worth looking for from above. */
    private static final double NEAR = 1.08;

    /** Of the time left when that begins; the rest is the bound's. */
    private static final double NEAR_SHARE = 0.6;

    /** Periods between bound and what is asked for below which the bound by itself is worth no time. */
    private static final int NEXT = 2;

    /** Of all the time, for one horizon while many are still quickly refused. */
    private static final double QUICK_SHARE = 0.05;

    private final SingleProject project;
    private final Standing standing;
    private final OneWorker worker;
    private volatile int asked;
    private final double quickSeconds;
    private boolean quick = true;
    private double keptForBound = -1;

    BoundClimb(SingleProject project, Standing standing, int seed) {
        this.project = project;
        this.standing = standing;
        this.worker = new OneWorker(seed);
        this.quickSeconds = standing.secondsLeft() * QUICK_SHARE;
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
        int below = Math.max(lower, standing.best().makespan() - 1);
        double left = standing.secondsLeft();
        if (quick) {
            quick = isAnswered(lower, Math.min(left, quickSeconds));
        } else if (below - lower <= NEXT) {
            isAnswered(below, left);
        } else if (below < NEAR * lower && left > kept(left)) {
            isAnswered(below, left - keptForBound);
        } else {
            isAnswered(lower, left);
        }
    }

    /** Seconds for the bound at the end, set when first needed. */
    private double kept(double left) {
        if (keptForBound < 0) {
            keptForBound = left * (1 - NEAR_SHARE);
        }
        return keptForBound;
    }

    /** By this question or by somebody else meanwhile. */
    private boolean isAnswered(int horizon, double seconds) {
        asked = horizon;
        CpSolver solver = worker.solver(seconds);
        solver.getParameters().setLinearizationLevel(0);
        CpSolverStatus status = worker.solved(solver, new MakespanModel(project, horizon), standing::found);
        if (status == CpSolverStatus.INFEASIBLE) {
            standing.atLeast(horizon + 1);
        }
        return horizon < standing.lower() || horizon >= standing.best().makespan();
    }
}
