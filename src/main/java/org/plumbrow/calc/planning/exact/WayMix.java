package org.plumbrow.calc.planning.exact;

import com.google.ortools.linearsolver.MPConstraint;
import com.google.ortools.linearsolver.MPObjective;
import com.google.ortools.linearsolver.MPSolver;
import com.google.ortools.linearsolver.MPVariable;
import java.util.Arrays;
import java.util.stream.IntStream;

/**
 * The cheapest mix of known ways to do each job when what all use together is limited: a linear programme, kept open so
 * that ways can be added (the master of Dantzig and Wolfe, Operations Research 8, 1960). What a unit more of a limit would
 * save is that limit's price.
 */
public final class WayMix implements AutoCloseable {

    private static final String SIMPLEX = "CLP";

    private final MPSolver solver = MPSolver.createSolver(SIMPLEX);
    private final MPObjective sum = solver.objective();
    private final MPConstraint[] once;
    private final MPConstraint[] limits;
    private final int[] used;

    /** @param limits how much of each there is */
    public WayMix(int jobs, double[] limits) {
        sum.setMinimization();
        once = IntStream.range(0, jobs)
                .mapToObj(job -> solver.makeConstraint(1, 1))
                .toArray(MPConstraint[]::new);
        this.limits = Arrays.stream(limits)
                .mapToObj(limit -> solver.makeConstraint(Double.NEGATIVE_INFINITY, limit))
                .toArray(MPConstraint[]::new);
        used = new int[limits.length];
    }

    /**
     * @param cost what the way costs without rent
     * @param uses the limits it uses a unit of, one entry for each unit
     */
    public void add(int job, double cost, int[] uses) {
        MPVariable share = solver.makeNumVar(0, Double.POSITIVE_INFINITY, "");
        once[job].setCoefficient(share, 1);
        sum.setCoefficient(share, cost);
        for (int limit : uses) {
            used[limit]++;
        }
        for (int limit : uses) {
            if (used[limit] > 0) {
                limits[limit].setCoefficient(share, used[limit]);
                used[limit] = 0;
            }
        }
    }

    /** @return whether there is a mix within the limits; then its cost and prices can be asked for */
    public boolean solve() {
        return solver.solve() == MPSolver.ResultStatus.OPTIMAL;
    }

    public double cost() {
        return sum.value();
    }

    /** Of each limit, never below nothing. */
    public double[] prices() {
        return Arrays.stream(limits)
                .mapToDouble(limit -> Math.max(0, -limit.dualValue()))
                .toArray();
    }

    @Override
    public void close() {
        solver.delete();
    }
}
