package org.plumbrow.permit;

import java.util.Map;
import java.util.UUID;
import org.plumbrow.RouteSamples;
import org.plumbrow.TestWorld.TestBranch;
import org.plumbrow.database.Ids;
import org.plumbrow.web.Visitor;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/** Values for the addresses of the pages of waits. */
@Component
class PermitSamples implements RouteSamples {

    private final JdbcClient jdbc;

    PermitSamples(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    @Override
    public Map<String, String> in(TestBranch branch) {
        return Map.of("awaitedId", Ids.next().toString());
    }

    /** The project with papers, whose address the other samples give, waits for something by then; what was asked of another branch's stays unknown. */
    @Override
    public Map<String, String> of(Visitor visitor) {
        UUID id = Ids.next();
        int made = jdbc.sql("""
                insert into awaited (id, branch_id, project_id, kind, wait_code, about, owed_by, owed_name, note)
                select ?, branch_id, id, 'PERMIT', 'permit-review', '', 'PERMIT_OFFICE', '', '' from project
                 where branch_id = ? and id in (select project_id from evidence) limit 1
                """).params(id, visitor.lastBranchId()).update();
        return made == 0 ? Map.of() : Map.of("awaitedId", id.toString());
    }
}
