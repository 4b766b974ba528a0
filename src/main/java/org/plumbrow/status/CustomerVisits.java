package org.plumbrow.status;

import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** On which day a project's page was opened how often, for a quarter of a year; not by whom. */
@Service
@Transactional
public class CustomerVisits {

    private static final int KEPT_DAYS = 90;
    private static final int SHOWN = 14;

    private final JdbcClient jdbc;

    CustomerVisits(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    public record Day(LocalDate day, int opens) {}

    public void opened(UUID branchId, UUID projectId, LocalDate today) {
        int before = jdbc.sql("update customer_visit set opens = opens + 1 where project_id = ? and day = ?")
                .params(projectId, today)
                .update();
        if (before == 0) {
            jdbc.sql("""
                    insert into customer_visit (project_id, day, branch_id, opens) values (?, ?, ?, 1)
                    on conflict on constraint customer_visit_key do update set opens = customer_visit.opens + 1
                    """).params(projectId, today, branchId).update();
            jdbc.sql("delete from customer_visit where project_id = ? and day < ?")
                    .params(projectId, today.minusDays(KEPT_DAYS))
                    .update();
        }
    }

    /** The newest days, newest first; whoever calls has asked who may see it. */
    @Transactional(readOnly = true)
    public List<Day> of(UUID projectId) {
        return jdbc.sql("select day, opens from customer_visit where project_id = ? order by day desc limit " + SHOWN)
                .param(projectId)
                .query(Day.class)
                .list();
    }
}
