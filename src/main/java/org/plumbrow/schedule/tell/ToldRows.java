package org.plumbrow.schedule.tell;

import java.sql.Timestamp;
import java.time.Instant;
import java.util.HashMap;
import java.util.Map;
import java.util.UUID;
import org.plumbrow.schedule.plan.PlanHead;
import org.plumbrow.schedule.plan.ToTell;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** Who was told of which plan. */
@Repository
class ToldRows {

    private final JdbcClient jdbc;

    ToldRows(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    record Key(ToTell.Whom whom, UUID id) {
        static Key of(ToTell who) {
            return new Key(who.whom(), who.id());
        }
    }

    Map<Key, TellView.Told> of(UUID planId) {
        Map<Key, TellView.Told> told = new HashMap<>();
        jdbc.sql("select whom, about_id, told_by, told_at, how from plan_told where plan_id = ?")
                .param(planId)
                .query(row -> {
                    told.put(
                            new Key(ToTell.Whom.valueOf(row.getString("whom")), row.getObject("about_id", UUID.class)),
                            new TellView.Told(
                                    row.getString("told_by"),
                                    row.getTimestamp("told_at").toInstant(),
                                    row.getString("how")));
                });
        return told;
    }

    /** @return false if they were told already */
    boolean add(PlanHead plan, Key who, String how, String by, Instant now) {
        return jdbc.sql("""
                        insert into plan_told (plan_id, whom, about_id, branch_id, how, told_by, told_at)
                        values (:plan, :whom, :about, :branch, :how, :by, :now) on conflict do nothing
                        """)
                        .param("plan", plan.id())
                        .param("whom", who.whom().name())
                        .param("about", who.id())
                        .param("branch", plan.branchId())
                        .param("how", how)
                        .param("by", by)
                        .param("now", Timestamp.from(now))
                        .update()
                == 1;
    }
}
