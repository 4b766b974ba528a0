package org.plumbrow.status;

import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.plumbrow.RouteSamples;
import org.plumbrow.TestWorld;
import org.plumbrow.TestWorld.TestBranch;
import org.plumbrow.web.Visitor;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/** Values for the addresses of the pages about the customer: the project's one document is shared as its first paper. */
@Component
class StatusSamples implements RouteSamples {

    private final TestWorld world;
    private final JdbcClient jdbc;
    private final org.springframework.transaction.support.TransactionTemplate transaction;

    StatusSamples(
            TestWorld world, JdbcClient jdbc, org.springframework.transaction.support.TransactionTemplate transaction) {
        this.world = world;
        this.jdbc = jdbc;
        this.transaction = transaction;
    }

    @Override
    public Map<String, String> in(TestBranch branch) {
        return Map.of(
                "customerToken", "0123456789abcdefghjkmnpqrstvwxyz",
                "customerDuty", "project-manager",
                "paperSlot", "1");
    }

    /** Whoever's project is asked about has every document shared by then; the row goes with the request. */
    @Override
    public Map<String, String> of(Visitor visitor) {
        world.as(
                visitor,
                () -> transaction.executeWithoutResult(status -> documents(visitor.lastBranchId())
                        .forEach(paper -> jdbc.sql("""
                        insert into customer_paper (project_id, evidence_id, branch_id, slot, title, shared_at, shared_by)
                        select project_id, id, branch_id, 1, 'Agreement', now(), 'Tamsin' from evidence where id = ?
                        on conflict do nothing
                        """).param(paper).update())));
        return Map.of();
    }

    private List<UUID> documents(UUID branchId) {
        return jdbc.sql("select id from evidence where branch_id = ? and kind = 'DOCUMENT' and project_id is not null")
                .param(branchId)
                .query(UUID.class)
                .list();
    }
}
