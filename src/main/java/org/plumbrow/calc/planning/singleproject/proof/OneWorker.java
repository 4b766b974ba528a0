package org.plumbrow.calc.planning.singleproject.proof;

import com.google.ortools.sat.CpSolver;
import com.google.ortools.sat.CpSolverStatus;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;
import org.plumbrow.calc.planning.singleproject.Timetable;

/** The constraint solver on one thread, which another may end. */
final class OneWorker {

    private final int seed;
    private volatile @Nullable CpSolver running;

    OneWorker(int seed) {
        this.seed = seed;
    }

    /** Ends what is being solved now; to be repeated, as the next may be about to begin. */
    void stop() {
        CpSolver solver = running;
        if (solver != null) {
            solver.stopSearch();
        }
    }

    CpSolver solver(double seconds) {
        CpSolver solver = new CpSolver();
        solver.getParameters()
                .setMaxTimeInSeconds(Math.max(0, seconds))
                .setRandomSeed(seed)
                .setNumWorkers(1);
        return solver;
    }

    /** @param found what to do with a timetable */
    CpSolverStatus solved(CpSolver solver, MakespanModel model, Consumer<Timetable> found) {
        running = solver;
        CpSolverStatus status = solver.solve(model.model());
        running = null;
        if (status == CpSolverStatus.MODEL_INVALID) {
            throw new IllegalStateException(
                    "the solver says " + status + ": " + model.model().validate());
        }
        if (status == CpSolverStatus.OPTIMAL || status == CpSolverStatus.FEASIBLE) {
            found.accept(model.timetable(solver));
        }
        return status;
    }
}
