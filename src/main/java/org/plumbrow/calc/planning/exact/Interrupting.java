package org.plumbrow.calc.planning.exact;

import com.google.ortools.sat.CpSolver;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import java.util.function.BooleanSupplier;

/** Breaks off a solver soon after somebody says stop: the solver itself asks nobody while it has no new plan. */
final class Interrupting implements AutoCloseable {

    private static final long EVERY_MILLISECONDS = 50;

    private final BooleanSupplier stopped;
    private final ScheduledExecutorService asking = Executors.newSingleThreadScheduledExecutor(run -> {
        Thread thread = new Thread(run, "plan-solver-stop");
        thread.setDaemon(true);
        return thread;
    });

    private final Future<?> asked;

    Interrupting(CpSolver solver, BooleanSupplier stopped) {
        this.stopped = stopped;
        // Told again and again: what is told before the solver has begun is lost.
        asked = asking.scheduleWithFixedDelay(
                () -> {
                    if (stopped.getAsBoolean()) {
                        solver.stopSearch();
                    }
                },
                EVERY_MILLISECONDS,
                EVERY_MILLISECONDS,
                TimeUnit.MILLISECONDS);
    }

    boolean isTold() {
        return stopped.getAsBoolean();
    }

    @Override
    public void close() {
        asked.cancel(true);
        asking.shutdownNow();
    }
}
