package org.plumbrow.calc.planning.singleproject.proof;

import com.google.ortools.sat.CpSolver;
import com.google.ortools.sat.CpSolverStatus;
import com.google.ortools.sat.IntVar;
import org.plumbrow.calc.planning.singleproject.SingleProject;

/**
 * Raises the lower bound by linear programs: of the solver's own ways to work the one by reduced costs gives the best bounds
 * of large projects, most of it in the first second.
 */
final class Relaxation implements Runnable {

    /** Of the time, for the first look, and how much longer each next one is: 0.08, 0.26 and the rest. */
    private static final double FIRST_SHARE = 0.08;

    private static final double LONGER = 3.2;

    private final SingleProject project;
    private final Standing standing;
    private final OneWorker worker;

    Relaxation(SingleProject project, Standing standing, int seed) {
        this.project = project;
        this.standing = standing;
        this.worker = new OneWorker(seed);
    }

    @Override
    public void run() {
        double seconds = standing.secondsLeft() * FIRST_SHARE;
        while (!standing.isOver()) {
            relax(Math.min(seconds, standing.secondsLeft()));
            seconds *= LONGER;
        }
    }

    /** What was found holds for all only when the solver ends: the library's word on bounds in between is not safe in Java. */
    private void relax(double seconds) {
        MakespanModel model = new MakespanModel(project, standing.best().makespan());
        IntVar makespan = model.makespan(standing.lower());
        model.model().minimize(makespan);
        model.hint(standing.best());
        CpSolver solver = worker.solver(seconds);
        solver.getParameters().addSubsolvers("reduced_costs");
        CpSolverStatus status = worker.solved(solver, model, standing::found);
        double bound = solver.bestObjectiveBound();
        if (status != CpSolverStatus.INFEASIBLE && Double.isFinite(bound) && bound > 0) {
            standing.atLeast((int) Math.ceil(bound - 1e-6));
        }
    }

    void stopWhenOver() {
        if (standing.isOver()) {
            worker.stop();
        }
    }
}
