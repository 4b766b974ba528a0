package org.plumbrow.database;

import com.github.kagkarlsson.scheduler.Scheduler;
import com.github.kagkarlsson.scheduler.SchedulerName;
import com.github.kagkarlsson.scheduler.task.CompletionHandler;
import com.github.kagkarlsson.scheduler.task.Task;
import com.github.kagkarlsson.scheduler.task.helper.RecurringTask;
import com.github.kagkarlsson.scheduler.task.helper.Tasks;
import com.github.kagkarlsson.scheduler.task.schedule.FixedDelay;
import com.github.kagkarlsson.scheduler.task.schedule.Schedules;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Collectors;
import javax.sql.DataSource;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.boot.context.event.ApplicationReadyEvent;
import org.springframework.boot.sql.init.dependency.DependsOnDatabaseInitialization;
import org.springframework.context.ApplicationListener;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.jdbc.datasource.TransactionAwareDataSourceProxy;
import org.springframework.transaction.support.TransactionTemplate;

/** Claims background work through the database, so that any number of nodes share it and none is done twice. */
@Configuration(proxyBeanMethods = false)
class BackgroundConfiguration {

    private static final Duration KEPT = Duration.ofDays(90);
    private static final Duration LONGEST_GOODBYE = Duration.ofSeconds(10);

    /**
     * @param heartbeat how often a node says that it lives; a node silent for four times as long is thought dead and its
     *     work begun anew by another
     */
    @Bean(destroyMethod = "stop")
    @DependsOnDatabaseInitialization
    Scheduler scheduler(
            DataSource dataSource,
            List<Task<?>> tasks,
            @Value("${plumbrow.background.threads:3}") int threads,
            @Value("${plumbrow.background.poll:2s}") Duration poll,
            @Value("${plumbrow.background.heartbeat:5s}") Duration heartbeat) {
        Map<Boolean, List<Task<?>>> byRecurrence =
                tasks.stream().collect(Collectors.partitioningBy(RecurringTask.class::isInstance));
        return Scheduler.create(new TransactionAwareDataSourceProxy(dataSource), byRecurrence.get(false))
                .startTasks(recurring(byRecurrence.get(true)))
                .schedulerName(new SchedulerName.Fixed("node-" + UUID.randomUUID()))
                .threads(threads)
                .pollingInterval(poll)
                .pollUsingLockAndFetch(0.5, 1.0)
                .heartbeatInterval(heartbeat)
                .missedHeartbeatsLimit(4)
                .shutdownMaxWait(LONGEST_GOODBYE)
                .build();
    }

    private static List<RecurringTask<?>> recurring(List<Task<?>> tasks) {
        return tasks.stream().<RecurringTask<?>>map(RecurringTask.class::cast).toList();
    }

    /** Begins only when the application can do all its work. */
    @Bean
    ApplicationListener<ApplicationReadyEvent> schedulerStart(Scheduler scheduler) {
        return ready -> scheduler.start();
    }

    @Bean
    Task<Void> backgroundRun(RunWorker worker) {
        return Tasks.custom(BackgroundRuns.TASK)
                .onDeadExecutionRevive()
                .onFailureReschedule(FixedDelay.ofSeconds(30))
                .execute((instance, context) -> next(worker.execute(UUID.fromString(instance.getId()))));
    }

    private static CompletionHandler<Void> next(Optional<Duration> delay) {
        return delay.<CompletionHandler<Void>>map(wait -> (complete, execution) ->
                        execution.reschedule(complete, Instant.now().plus(wait)))
                .orElseGet(CompletionHandler.OnCompleteRemove::new);
    }

    @Bean
    Task<Void> forgetOldRuns(RunRows rows, TransactionTemplate transaction, Clock clock) {
        return Tasks.recurring("forget-old-runs", Schedules.daily(ZoneOffset.UTC, LocalTime.of(3, 10)))
                .execute((instance, context) -> BranchWall.everywhere(() -> transaction.executeWithoutResult(
                        status -> rows.forgetEndedBefore(clock.instant().minus(KEPT)))));
    }
}
