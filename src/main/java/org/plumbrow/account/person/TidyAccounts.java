package org.plumbrow.account.person;

import com.github.kagkarlsson.scheduler.task.Task;
import com.github.kagkarlsson.scheduler.task.helper.Tasks;
import com.github.kagkarlsson.scheduler.task.schedule.Schedules;
import java.time.LocalTime;
import java.time.ZoneOffset;
import org.plumbrow.database.BranchWall;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.transaction.support.TransactionTemplate;

/** Once a day: what has ended goes. */
@Configuration(proxyBeanMethods = false)
class TidyAccounts {

    @Bean
    Task<Void> tidyAccountsDaily(Tries tries, Devices devices, SecurityLog log, TransactionTemplate transaction) {
        return Tasks.recurring("tidy-accounts", Schedules.daily(ZoneOffset.UTC, LocalTime.of(3, 30)))
                .execute((instance, context) -> BranchWall.everywhere(() -> transaction.executeWithoutResult(status -> {
                    tries.forgetOld();
                    devices.forgetEnded();
                    log.forgetOld();
                })));
    }
}
