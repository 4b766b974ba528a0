package org.plumbrow.schedule;

import java.util.Map;
import org.plumbrow.RouteSamples;
import org.plumbrow.TestWorld;
import org.plumbrow.TestWorld.TestBranch;
import org.plumbrow.schedule.activity.ActivityRefresh;
import org.plumbrow.web.Visitor;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;
import org.springframework.transaction.support.TransactionTemplate;

/** Values for the addresses of the schedule's pages. */
@Component
class ScheduleSamples implements RouteSamples {

    private final TestWorld world;
    private final ActivityRefresh refresh;
    private final JdbcClient jdbc;
    private final TransactionTemplate transaction;

    ScheduleSamples(TestWorld world, ActivityRefresh refresh, JdbcClient jdbc, TransactionTemplate transaction) {
        this.world = world;
        this.refresh = refresh;
        this.jdbc = jdbc;
        this.transaction = transaction;
    }

    @Override
    public Map<String, String> in(TestBranch branch) {
        return Map.of("activityKey", "survey", "reportDay", "2027-03-01", "dayOneStep", "introduced");
    }

    /** Whoever's project is asked about has its activities by then. */
    @Override
    public Map<String, String> of(Visitor visitor) {
        world.as(
                visitor,
                () -> transaction.executeWithoutResult(status -> jdbc.sql("select id from project where branch_id = ?")
                        .param(visitor.lastBranchId())
                        .query(java.util.UUID.class)
                        .list()
                        .forEach(refresh::project)));
        return Map.of();
    }

    @Override
    public Map<String, Map<String, String>> fields() {
        return Map.of(
                "POST /look-ahead/tell", Map.of("plan", "0197a000-0000-7000-8000-000000000000"),
                "POST /look-ahead/publish", Map.of("plan", "0197a000-0000-7000-8000-000000000000"),
                "POST /look-ahead/crews/undo", Map.of("move", "0"),
                "POST /projects/{projectId}/schedule/{activityKey}/release", Map.of("version", "0"));
    }
}
