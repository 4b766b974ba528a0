package org.plumbrow.notice;

import com.github.kagkarlsson.scheduler.task.Task;
import com.github.kagkarlsson.scheduler.task.TaskDescriptor;
import com.github.kagkarlsson.scheduler.task.helper.Tasks;
import com.github.kagkarlsson.scheduler.task.schedule.FixedDelay;
import com.github.kagkarlsson.scheduler.task.schedule.Schedules;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalTime;
import java.time.ZoneOffset;
import java.util.UUID;
import org.plumbrow.database.BranchWall;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.transaction.support.TransactionTemplate;

/** When the postman goes: right after a notice is written, every minute for what was put off, and once a day to tidy. */
@Configuration(proxyBeanMethods = false)
class SendNotices {

    static final TaskDescriptor<Void> ONE = TaskDescriptor.of("send-notice");

    private static final Duration KEPT = Duration.ofDays(90);
    private static final Duration LONGEST_LINK = Duration.ofDays(7);

    @Bean
    Task<Void> sendNotice(Postman postman) {
        return Tasks.oneTime(ONE).execute((instance, context) -> postman.deliver(UUID.fromString(instance.getId())));
    }

    @Bean
    Task<Void> sendWaitingNotices(Postman postman) {
        return Tasks.recurring("send-waiting-notices", FixedDelay.ofMinutes(1))
                .execute((instance, context) -> postman.deliverDue());
    }

    @Bean
    Task<Void> tidyNotices(Notices notices, TransactionTemplate transaction, Clock clock) {
        return Tasks.recurring("tidy-notices", Schedules.daily(ZoneOffset.UTC, LocalTime.of(3, 20)))
                .execute((instance, context) -> BranchWall.everywhere(() -> transaction.executeWithoutResult(status -> {
                    Instant now = clock.instant();
                    notices.blankToSignInBefore(now.minus(LONGEST_LINK), now);
                    notices.forgetSettledBefore(now.minus(KEPT));
                })));
    }
}
