package org.plumbrow.project.gate;

import com.github.kagkarlsson.scheduler.task.Task;
import com.github.kagkarlsson.scheduler.task.TaskDescriptor;
import com.github.kagkarlsson.scheduler.task.helper.Tasks;
import java.util.List;
import java.util.UUID;
import org.plumbrow.database.BranchWall;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.transaction.support.TransactionTemplate;

/** After a checklist has changed the list of projects says anew what is missing, project by project. */
@Configuration(proxyBeanMethods = false)
class LookAgain {

    static final TaskDescriptor<Void> AT_A_BRANCH = TaskDescriptor.of("look-at-gates-again");

    @Bean
    Task<Void> lookAtGatesAgain(Gates gates, JdbcClient jdbc, TransactionTemplate transaction) {
        return Tasks.oneTime(AT_A_BRANCH)
                .execute((instance, context) ->
                        everyProject(UUID.fromString(instance.getId()), gates, jdbc, transaction));
    }

    private static void everyProject(UUID branchId, Gates gates, JdbcClient jdbc, TransactionTemplate transaction) {
        BranchWall.within(branchId, () -> {
            List<UUID> projects = transaction.execute(status -> jdbc.sql(
                            "select id from project where branch_id = ? and stage is distinct from 'COMMISSIONED' order by id")
                    .param(branchId)
                    .query(UUID.class)
                    .list());
            for (UUID project : projects == null ? List.<UUID>of() : projects) {
                transaction.executeWithoutResult(status -> gates.lookAgain(project));
            }
            return Boolean.TRUE;
        });
    }
}
