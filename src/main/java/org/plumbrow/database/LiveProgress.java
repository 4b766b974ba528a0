package org.plumbrow.database;

import java.time.Duration;
import java.util.UUID;
import java.util.function.BooleanSupplier;
import org.jspecify.annotations.Nullable;
import org.springframework.transaction.support.TransactionTemplate;

/** Writes progress in transactions of its own, so that others see it while the work's own transaction is open. */
class LiveProgress implements RunProgress {

    private static final long QUIET_NANOS = Duration.ofMillis(250).toNanos();

    private final Run run;
    private final RunRows rows;
    private final TransactionTemplate ownTransaction;
    private final BooleanSupplier shuttingDown;
    private long heardAt = System.nanoTime() - QUIET_NANOS;
    private boolean stopped;
    private boolean toldTheWork;

    LiveProgress(Run run, RunRows rows, TransactionTemplate ownTransaction, BooleanSupplier shuttingDown) {
        this.run = run;
        this.rows = rows;
        this.ownTransaction = ownTransaction;
        this.shuttingDown = shuttingDown;
    }

    @Override
    public UUID branchId() {
        return run.branchId();
    }

    @Override
    public @Nullable UUID subjectId() {
        return run.subjectId();
    }

    @Override
    public String askedBy() {
        return run.askedBy();
    }

    @Override
    public synchronized void step(int done, int total, String words) {
        if (isDue() || done >= total) {
            ask(() -> rows.step(run, done, total, words));
        }
    }

    @Override
    public synchronized boolean isStopped() {
        if (!stopped && isDue()) {
            ask(() -> rows.goesOn(run));
        }
        boolean leaveOff = stopped || shuttingDown.getAsBoolean();
        toldTheWork |= leaveOff;
        return leaveOff;
    }

    synchronized boolean wasToldToStop() {
        return toldTheWork;
    }

    private boolean isDue() {
        return System.nanoTime() - heardAt >= QUIET_NANOS;
    }

    private void ask(BooleanSupplier goesOn) {
        stopped |= !BranchWall.within(
                run.branchId(), () -> Boolean.TRUE.equals(ownTransaction.execute(status -> goesOn.getAsBoolean())));
        heardAt = System.nanoTime();
    }
}
