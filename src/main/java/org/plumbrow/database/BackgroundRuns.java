package org.plumbrow.database;

import com.github.kagkarlsson.scheduler.task.TaskDescriptor;
import java.time.Clock;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Propagation;
import org.springframework.transaction.annotation.Transactional;

/**
 * Long work that people wait for and watch: planning, imports. Asked for in the transaction of the change that needs
 * it, done by any node, its progress readable by all who may see the branch. Kept for 90 days.
 */
@Service
public class BackgroundRuns {

    static final TaskDescriptor<Void> TASK = TaskDescriptor.of("background-run");

    private final RunRows rows;
    private final BackgroundTasks tasks;
    private final Clock clock;

    BackgroundRuns(RunRows rows, BackgroundTasks tasks, Clock clock) {
        this.rows = rows;
        this.tasks = tasks;
        this.clock = clock;
    }

    /**
     * Asks for a run that begins after the caller's transaction has committed and sees its change. If one of the same
     * kind, branch and subject already waits, that one serves both; if one is under way, one more follows it.
     *
     * @param kind of a {@link BackgroundWork} bean
     * @param subjectId what it is about within the branch; null for the branch itself
     * @param askedBy name of the person, or of what asked
     * @return the run to watch
     */
    @Transactional(propagation = Propagation.MANDATORY)
    public UUID start(String kind, UUID branchId, @Nullable UUID subjectId, String askedBy) {
        RunRows.Asked asked = rows.ask(kind, branchId, subjectId, askedBy, clock.instant());
        if (asked.isNew()) {
            tasks.soon(TASK.instance(asked.id().toString()).build());
        }
        return asked.id();
    }

    /** Asks the run to stop: at once if it still waits, else as soon as the work looks. A run that is over stays as it is. */
    @Transactional
    public void stop(UUID runId, String by) {
        rows.stop(runId, by, clock.instant());
    }

    /** @return the run, if it is one of the branches in sight */
    @Transactional(readOnly = true)
    public Optional<Run> find(UUID runId) {
        return rows.find(runId);
    }

    /** @return the run asked for last, whatever its state */
    @Transactional(readOnly = true)
    public Optional<Run> latest(String kind, UUID branchId, @Nullable UUID subjectId) {
        return rows.latest(kind, branchId, subjectId);
    }
}
