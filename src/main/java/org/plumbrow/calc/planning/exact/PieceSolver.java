package org.plumbrow.calc.planning.exact;

import com.google.ortools.Loader;
import com.google.ortools.sat.CpSolver;
import com.google.ortools.sat.CpSolverStatus;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BooleanSupplier;

/** Solves a piece within a limit of work that is the same on every machine. */
public final class PieceSolver {

    private static final List<String> PROVERS = List.of("reduced_costs", "objective_lb_search", "default_lp");

    private final boolean withDisturbance;

    private final int seed;

    /** @param withDisturbance whether known dates count; then values and bounds are in thousandths */
    public PieceSolver(boolean withDisturbance, int seed) {
        this.withDisturbance = withDisturbance;
        this.seed = seed;
    }

    /** The library, once per process; said whether it is there. */
    private static final class Library {
        static final Optional<String> MISSING = load();

        private static Optional<String> load() {
            try {
                Loader.loadNativeLibraries();
                return Optional.empty();
            } catch (RuntimeException | LinkageError absent) {
                return Optional.of(String.valueOf(absent.getMessage()));
            }
        }
    }

    /** Whether this machine has the solver's library; without it the search alone makes plans. */
    public static boolean isThere() {
        return Library.MISSING.isEmpty();
    }

    /** A quick look for a better placing: one worker, light preparation. */
    public Answer improve(Piece piece, double work) {
        CpSolver solver = solver(work);
        solver.getParameters()
                .setNumWorkers(1)
                .setCpModelProbingLevel(0)
                .setSymmetryLevel(0)
                .setLinearizationLevel(0);
        return solve(piece, solver);
    }

    /**
     * As far as the work allows towards a proof: workers that make bounds and one that makes plans, taking turns in an
     * order that does not depend on threads.
     *
     * @param stopped asked all the time; what is found and proved by then is the answer
     */
    public Answer prove(Piece piece, double work, BooleanSupplier stopped) {
        CpSolver solver = solver(work);
        solver.getParameters()
                .setNumWorkers(PROVERS.size())
                .setInterleaveSearch(true)
                .addAllSubsolvers(PROVERS);
        try (Interrupting watching = new Interrupting(solver, stopped)) {
            return watching.isTold() ? none(Answer.Kind.NOTHING, 0) : solve(piece, solver);
        }
    }

    private CpSolver solver(double work) {
        if (!isThere()) {
            throw new IllegalStateException("the solver's library is missing: " + Library.MISSING.orElse(""));
        }
        CpSolver solver = new CpSolver();
        solver.getParameters().setRandomSeed(seed).setMaxDeterministicTime(work);
        return solver;
    }

    private Answer solve(Piece piece, CpSolver solver) {
        PieceModel model = new PieceModel(piece);
        if (model.isImpossible()) {
            return none(Answer.Kind.IMPOSSIBLE, 0);
        }
        int scale = new Lateness(model, withDisturbance).scale();
        CpSolverStatus status = solver.solve(model.cp);
        if (status == CpSolverStatus.MODEL_INVALID) {
            throw new IllegalStateException("the solver refuses the model: " + model.cp.validate());
        }
        if (status == CpSolverStatus.INFEASIBLE) {
            return none(Answer.Kind.IMPOSSIBLE, 0);
        }
        long bound = (long) Math.ceil(solver.bestObjectiveBound() / scale - 1e-6);
        if (status == CpSolverStatus.UNKNOWN) {
            return none(Answer.Kind.NOTHING, Math.max(0, bound));
        }
        return answer(model, solver, status, bound);
    }

    private static Answer none(Answer.Kind kind, long bound) {
        return new Answer(kind, new int[0], new int[0], 0, bound);
    }

    static Answer answer(PieceModel model, CpSolver solver, CpSolverStatus status, long bound) {
        int[] start = new int[model.model.size()];
        int[] crew = new int[start.length];
        Arrays.fill(crew, -1);
        for (Map.Entry<Integer, Moves> moved : model.moves.entrySet()) {
            start[moved.getKey()] = (int) solver.value(moved.getValue().start);
            for (Moves.ByCrew choice : moved.getValue().choices) {
                if (solver.booleanValue(choice.taken())) {
                    crew[moved.getKey()] = choice.crew();
                }
            }
        }
        Answer.Kind kind = status == CpSolverStatus.OPTIMAL ? Answer.Kind.OPTIMAL : Answer.Kind.FOUND;
        return new Answer(kind, start, crew, Math.round(solver.objectiveValue()), bound);
    }
}
