package org.plumbrow.cutover.ridethrough;

import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.plumbrow.design.part.Cells;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;
import tools.jackson.databind.json.JsonMapper;

/** What stands on the sites as it is kept. */
@Repository
class SiteLoadRows {

    private final JdbcClient jdbc;
    private final JsonMapper json;

    SiteLoadRows(JdbcClient jdbc, JsonMapper json) {
        this.jdbc = jdbc;
        this.json = json;
    }

    OnSite of(UUID projectId) {
        Map<LoadKind, OnSite.Kept> kinds = new EnumMap<>(LoadKind.class);
        jdbc.sql("select kind, rows, version from site_load where project_id = ?")
                .param(projectId)
                .query((row, n) -> kinds.put(
                        LoadKind.valueOf(row.getString("kind")),
                        new OnSite.Kept(
                                Arrays.asList(json.readValue(row.getString("rows"), Cells[].class)),
                                row.getLong("version"))))
                .list();
        return new OnSite(kinds);
    }

    /** @param version as it was opened, -1 for a kind that nobody had written. @return false if somebody was faster */
    boolean keep(UUID projectId, UUID branchId, LoadKind kind, long version, List<Cells> rows, String by, Instant at) {
        return jdbc.sql("""
                        insert into site_load as l (project_id, kind, branch_id, rows, changed_at, changed_by)
                        select :project, :kind, :branch, cast(:rows as jsonb), :at, :by
                         where :version = -1 or exists (select 1 from site_load where project_id = :project and kind = :kind)
                        on conflict (project_id, kind) do update
                           set rows = excluded.rows, changed_at = excluded.changed_at, changed_by = excluded.changed_by,
                               version = l.version + 1
                         where l.version = :version
                        """)
                        .param("project", projectId)
                        .param("kind", kind.name())
                        .param("branch", branchId)
                        .param("rows", json.writeValueAsString(rows))
                        .param("at", OffsetDateTime.ofInstant(at, ZoneOffset.UTC))
                        .param("by", by)
                        .param("version", version)
                        .update()
                == 1;
    }
}
