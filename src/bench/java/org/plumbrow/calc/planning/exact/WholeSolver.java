package org.plumbrow.calc.planning.exact;

import com.google.ortools.sat.CpSolver;
import com.google.ortools.sat.CpSolverStatus;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.plumbrow.calc.planning.search.BranchModel;
import org.plumbrow.calc.planning.search.Dates;
import org.plumbrow.calc.planning.search.Order;

/**
 * The whole branch given to CP-SAT, to measure beside: its own choice of workers, every variable hinted from the plan it
 * begins with, and waits as long as they are near that plan's dates. Exact waits make it prepare longer than it may take (a
 * million variables at 60 projects); the decoder makes the dates from the order and the crews that come out.
 */
public final class WholeSolver {

    /** On two cores; by trials at 60 and 150, where 4 and 8 came less far. */
    private static final int WORKERS = 3;

    private final BranchModel model;
    private final Dates plan;

    /** @param plan the one it begins with */
    public WholeSolver(BranchModel model, Dates plan) {
        this.model = model;
        this.plan = plan;
    }

    /** The best order it comes to; empty when it finds no plan. */
    public Optional<Order> best(double seconds) {
        if (!PieceSolver.isThere()) {
            throw new IllegalStateException("the solver's library is missing");
        }
        long begun = System.nanoTime();
        boolean[] free = new boolean[model.size()];
        int[] latest = new int[model.size()];
        Arrays.fill(free, true);
        Arrays.fill(latest, model.slots.size - 1);
        PieceModel all = new PieceModel(new Piece(model, plan, free, latest, false));
        new Lateness(all, false);
        hintEverything(all, seconds);
        CpSolver solver = solver(WORKERS, seconds - (System.nanoTime() - begun) / 1e9);
        solver.getParameters().setCpModelProbingLevel(0).setSymmetryLevel(0);
        CpSolverStatus status = solver.solve(all.cp);
        return found(status) ? Optional.of(order(all, solver, status)) : Optional.empty();
    }

    /** The starts and crews of the plan are hinted; the solver says what all else is then. */
    private static void hintEverything(PieceModel all, double seconds) {
        CpSolver fixed = solver(1, seconds);
        fixed.getParameters().setFixVariablesToTheirHintedValue(true);
        if (found(fixed.solve(all.cp))) {
            all.cp.clearHints();
            List<Long> values = fixed.response().getSolutionList();
            for (int at = 0; at < values.size(); at++) {
                all.cp.addHint(all.cp.getIntVarFromProtoIndex(at), values.get(at));
            }
        }
    }

    private static CpSolver solver(int workers, double seconds) {
        CpSolver solver = new CpSolver();
        solver.getParameters().setNumWorkers(workers).setRandomSeed(1).setMaxTimeInSeconds(seconds);
        return solver;
    }

    private static boolean found(CpSolverStatus status) {
        return status == CpSolverStatus.OPTIMAL || status == CpSolverStatus.FEASIBLE;
    }

    private static Order order(PieceModel all, CpSolver solver, CpSolverStatus status) {
        Answer answer = PieceSolver.answer(all, solver, status, 0);
        return new Order(answer.start(), answer.crew(), new int[answer.start().length]);
    }
}
