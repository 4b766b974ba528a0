package org.plumbrow.cutover;

import java.util.Map;
import java.util.UUID;
import org.plumbrow.RouteSamples;
import org.plumbrow.TestWorld.TestBranch;
import org.plumbrow.database.Ids;
import org.plumbrow.web.Visitor;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/** Values for the addresses of the cutover pages. */
@Component
class CutoverSamples implements RouteSamples {

    private final JdbcClient jdbc;

    CutoverSamples(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    @Override
    public Map<String, String> in(TestBranch branch) {
        return Map.of(
                "blackoutId",
                Ids.next().toString(),
                "entryId",
                Ids.next().toString(),
                "logStep",
                "1",
                "logHold",
                "H1",
                "readyItem",
                "locks",
                "loadKind",
                "houses",
                "reportFor",
                "utility",
                "windowId",
                Ids.next().toString());
    }

    /** The project with papers, whose address the other samples give, had an outage that was called off. */
    @Override
    public Map<String, String> of(Visitor visitor) {
        UUID id = Ids.next();
        int made = jdbc.sql("""
                insert into outage_window (id, version, branch_id, project_id, day, start_time, outage_minutes, state,
                                           state_reason, made_at, made_by)
                select ?, 0, branch_id, id, date '2027-03-05', time '09:00', 90, 'CANCELLED', 'storm', now(), 'a test'
                  from project where branch_id = ? and id in (select project_id from evidence) limit 1
                """).params(id, visitor.lastBranchId()).update();
        return made == 0 ? Map.of() : Map.of("windowId", id.toString());
    }
}
