package org.plumbrow.schedule.plan;

import com.github.kagkarlsson.scheduler.task.Task;
import com.github.kagkarlsson.scheduler.task.helper.Tasks;
import com.github.kagkarlsson.scheduler.task.schedule.Schedules;
import java.time.Clock;
import java.time.Duration;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.List;
import java.util.UUID;
import org.plumbrow.branch.SettingsChanged;
import org.plumbrow.database.BackgroundRuns;
import org.plumbrow.database.BranchWall;
import org.plumbrow.project.ProjectChanged;
import org.plumbrow.web.Access;
import org.plumbrow.web.Actor;
import org.plumbrow.web.Visitor;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.context.event.EventListener;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;
import org.springframework.transaction.support.TransactionTemplate;

/** When a branch's plan is computed anew: after every change it depends on, and each morning at five. */
@Component
class PlanTriggers {

    private final BackgroundRuns runs;
    private final Access access;

    PlanTriggers(BackgroundRuns runs, Access access) {
        this.runs = runs;
        this.access = access;
    }

    @EventListener
    void after(ProjectChanged change) {
        ask(change.branchId());
    }

    /** Crews and shared machines are settings too: each change of theirs stands in the same log. */
    @EventListener
    void after(SettingsChanged change) {
        ask(change.branchId());
    }

    private void ask(UUID branchId) {
        String by = access.present().map(Visitor::name).orElse(Actor.PLUMBROW.name());
        runs.start(PlanRun.KIND, branchId, null, by);
    }

    /** Every half hour the branches in whose zone it is five are found; zones differ by half hours at least. */
    @Configuration(proxyBeanMethods = false)
    static class EachMorning {

        private static final LocalTime FIVE = LocalTime.of(5, 0);
        private static final Duration KEPT = Duration.ofDays(90);

        record Branch(UUID id, String zone) {}

        @Bean
        Task<Void> planEachMorning(
                BackgroundRuns runs,
                PlanWriting writing,
                JdbcClient jdbc,
                TransactionTemplate transaction,
                Clock clock) {
            return Tasks.recurring("plan-each-morning", Schedules.cron("0 0,30 * * * *"))
                    .execute((instance, context) ->
                            BranchWall.everywhere(() -> transaction.executeWithoutResult(status -> {
                                branches(jdbc).stream()
                                        .filter(branch -> isFive(branch, clock))
                                        .forEach(branch ->
                                                runs.start(PlanRun.KIND, branch.id, null, Actor.PLUMBROW.name()));
                                writing.forgetRowsPublishedBefore(
                                        clock.instant().minus(KEPT));
                            })));
        }

        private static List<Branch> branches(JdbcClient jdbc) {
            return jdbc.sql("select id, zone from branch").query(Branch.class).list();
        }

        static boolean isFive(Branch branch, Clock clock) {
            LocalTime now = LocalTime.ofInstant(clock.instant(), ZoneId.of(branch.zone));
            return !now.isBefore(FIVE) && now.isBefore(FIVE.plusMinutes(30));
        }
    }
}
