package org.plumbrow.project.gate;

import com.github.kagkarlsson.scheduler.task.Task;
import com.github.kagkarlsson.scheduler.task.TaskDescriptor;
import com.github.kagkarlsson.scheduler.task.TaskInstance;
import com.github.kagkarlsson.scheduler.task.helper.Tasks;
import java.util.List;
import java.util.UUID;
import org.plumbrow.database.BranchWall;
import org.plumbrow.database.Ids;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.transaction.support.TransactionTemplate;

/** After a checklist has changed the list of projects says anew what is missing, project by project. */
@Configuration(proxyBeanMethods = false)
class LookAgain {

    private static final TaskDescriptor<Void> AT_A_BRANCH = TaskDescriptor.of("look-at-gates-again");

    @Bean
    Task<Void> lookAtGatesAgain(Gates gates, JdbcClient jdbc, TransactionTemplate transaction) {
        return Tasks.oneTime(AT_A_BRANCH)
                .execute((instance, context) -> everyProject(branchOf(instance.getId()), gates, jdbc, transaction));
    }

    /** A look of its own each time: one that is asked for while another runs would be lost under the same name. */
    static TaskInstance<Void> at(UUID branchId) {
        return AT_A_BRANCH.instance(branchId + "/" + Ids.next()).build();
    }

    private static UUID branchOf(String instance) {
        return UUID.fromString(instance.substring(0, instance.indexOf('/')));
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
