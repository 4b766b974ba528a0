package org.plumbrow.database;

import com.github.kagkarlsson.scheduler.Scheduler;
import com.github.kagkarlsson.scheduler.task.TaskInstance;
import java.time.Duration;
import java.time.Instant;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Propagation;
import org.springframework.transaction.annotation.Transactional;
import org.springframework.transaction.support.TransactionSynchronization;
import org.springframework.transaction.support.TransactionSynchronizationManager;

/**
 * Small work that must survive a crash: it is written down in the change's own transaction and done afterwards, once,
 * by any node. A room supplies the work as a db-scheduler {@code Task<?>} bean (one-time or recurring); the work opens
 * its own scope of {@link BranchWall}. What people watch is a {@link BackgroundRuns run} instead.
 * <p>Times here are the machine's: what depends on a branch's day asks the clock when it is done.
 */
@Component
@Transactional(propagation = Propagation.MANDATORY)
public class BackgroundTasks {

    private final ObjectProvider<Scheduler> scheduler;

    BackgroundTasks(ObjectProvider<Scheduler> scheduler) {
        this.scheduler = scheduler;
    }

    /**
     * Has the work done right after the commit. An instance of the same task and id that still waits or runs stands for
     * this one too; so name the id after a row of its own.
     */
    public <T> void soon(TaskInstance<T> work) {
        after(Duration.ZERO, work);
        TransactionSynchronizationManager.registerSynchronization(new TransactionSynchronization() {
            @Override
            public void afterCommit() {
                scheduler.getObject().triggerCheckForDueExecutions();
            }
        });
    }

    /** As {@link #soon}, but not before this time has passed. */
    public <T> void after(Duration delay, TaskInstance<T> work) {
        scheduler.getObject().scheduleIfNotExists(work, Instant.now().plus(delay));
    }
}
