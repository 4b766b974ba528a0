package org.plumbrow.database;

import java.time.Clock;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.context.event.ContextClosedEvent;
import org.springframework.context.event.EventListener;
import org.springframework.dao.DuplicateKeyException;
import org.springframework.dao.TransientDataAccessException;
import org.springframework.stereotype.Component;
import org.springframework.transaction.PlatformTransactionManager;
import org.springframework.transaction.TransactionDefinition;
import org.springframework.transaction.support.DefaultTransactionDefinition;
import org.springframework.transaction.support.TransactionTemplate;

/** Does one run from claim to outcome. The only place, beside the error page, where any exception is caught. */
@Component
class RunWorker {

    static final int MOST_TRIES = 3;
    private static final Duration WAIT_FOR_ITS_LIKE = Duration.ofSeconds(1);
    private static final Duration WAIT_FOR_ANOTHER_TRY = Duration.ofSeconds(5);
    private static final Logger LOG = LoggerFactory.getLogger(RunWorker.class);

    private final RunRows rows;
    private final TransactionTemplate transaction;
    private final Map<String, BackgroundWork> works;
    private final Clock clock;
    private volatile boolean shuttingDown;

    RunWorker(RunRows rows, PlatformTransactionManager transactions, List<BackgroundWork> works, Clock clock) {
        this.rows = rows;
        this.transaction = new TransactionTemplate(
                transactions, new DefaultTransactionDefinition(TransactionDefinition.PROPAGATION_REQUIRES_NEW));
        this.works = works.stream().collect(Collectors.toUnmodifiableMap(BackgroundWork::kind, Function.identity()));
        this.clock = clock;
    }

    @EventListener
    void shutDown(ContextClosedEvent closed) {
        shuttingDown = true;
    }

    /** @return when to come back; empty if there is nothing left to do */
    Optional<Duration> execute(UUID runId) {
        Optional<Run> claimed = claim(runId);
        if (claimed.isEmpty()) {
            boolean over = alone(() -> rows.find(runId)).map(Run::isOver).orElse(true);
            return over ? Optional.empty() : Optional.of(WAIT_FOR_ITS_LIKE);
        }
        Run run = claimed.get();
        if (run.tries() > MOST_TRIES) {
            return end(run, Run.State.FAILED, "Given up: begun " + MOST_TRIES + " times and broken off each time.");
        }
        return BranchWall.within(run.branchId(), () -> perform(run));
    }

    private Optional<Run> claim(UUID runId) {
        try {
            return alone(() -> rows.claim(runId, clock.instant()));
        } catch (DuplicateKeyException itsLikeBeganInTheSameMoment) {
            return Optional.empty();
        }
    }

    private Optional<Duration> perform(Run run) {
        @Nullable BackgroundWork work = works.get(run.kind());
        if (work == null) {
            return end(run, Run.State.FAILED, "This release does not know the work \"" + run.kind() + "\".");
        }
        LiveProgress progress = new LiveProgress(run, rows, transaction, () -> shuttingDown);
        try {
            return end(run, progress, work.perform(progress));
        } catch (RunFailed failed) {
            return end(run, Run.State.FAILED, String.valueOf(failed.getMessage()));
        } catch (TransientDataAccessException passing) {
            LOG.info("Run {} ({}) met a passing obstacle: {}", run.id(), run.kind(), passing.getMessage());
            return Optional.of(WAIT_FOR_ANOTHER_TRY);
        } catch (RuntimeException | LinkageError | StackOverflowError ours) {
            if (shuttingDown) {
                return Optional.of(Duration.ZERO);
            }
            LOG.error("Run {} ({}) of branch {} broke off", run.id(), run.kind(), run.branchId(), ours);
            return end(
                    run,
                    Run.State.FAILED,
                    "Broken off by a fault of ours; it stands in the log under " + run.id() + ".");
        }
    }

    private Optional<Duration> end(Run run, LiveProgress progress, String outcome) {
        if (!progress.wasToldToStop()) {
            return end(run, Run.State.DONE, outcome);
        }
        return shuttingDown ? Optional.of(Duration.ZERO) : end(run, Run.State.STOPPED, outcome);
    }

    private Optional<Duration> end(Run run, Run.State state, String outcome) {
        alone(() -> {
            rows.end(run, state, outcome, clock.instant());
            return Optional.empty();
        });
        return Optional.empty();
    }

    private <T> Optional<T> alone(Supplier<Optional<T>> statements) {
        return BranchWall.everywhere(() -> transaction.execute(status -> statements.get()));
    }
}
