package org.plumbrow.design.draft;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.plumbrow.design.part.Cells;
import org.plumbrow.design.part.DesignParts;
import org.plumbrow.design.part.Part;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;
import tools.jackson.databind.json.JsonMapper;

/** Designs and their parts as they are kept. */
@Component
class DesignRows {

    private final JdbcClient jdbc;
    private final JsonMapper json;

    DesignRows(JdbcClient jdbc, JsonMapper json) {
        this.jdbc = jdbc;
        this.json = json;
    }

    /** When somebody asked for a design, and by when it is wanted. */
    record Request(
            UUID projectId,
            UUID branchId,
            Instant at,
            String by,
            @Nullable LocalDate wantedOn) {}

    /** @param version of the part; -1 while nobody has written it */
    record Kept(List<Cells> rows, long version, @Nullable Instant changedAt, String changedBy) {
        static final Kept NOTHING = new Kept(List.of(), -1, null, "");
    }

    Optional<Request> request(UUID projectId) {
        return jdbc.sql(
                        "select project_id, branch_id, requested_at, requested_by, wanted_on from design where project_id = ?")
                .param(projectId)
                .query(DesignRows::request)
                .optional();
    }

    private static Request request(ResultSet row, int number) throws SQLException {
        return new Request(
                row.getObject("project_id", UUID.class),
                row.getObject("branch_id", UUID.class),
                row.getObject("requested_at", OffsetDateTime.class).toInstant(),
                row.getString("requested_by"),
                row.getObject("wanted_on", LocalDate.class));
    }

    /** @return false if there is one already */
    boolean ask(Request request) {
        return jdbc.sql("""
                        insert into design (project_id, branch_id, requested_at, requested_by, wanted_on)
                        values (:project, :branch, :at, :by, :wanted) on conflict (project_id) do nothing
                        """)
                        .param("project", request.projectId())
                        .param("branch", request.branchId())
                        .param("at", OffsetDateTime.ofInstant(request.at(), ZoneOffset.UTC))
                        .param("by", request.by())
                        .param("wanted", request.wantedOn(), java.sql.Types.DATE)
                        .update()
                == 1;
    }

    Map<Part, Kept> parts(UUID projectId) {
        Map<Part, Kept> parts = new EnumMap<>(Part.class);
        jdbc.sql("select part, rows, version, changed_at, changed_by from design_part where project_id = ?")
                .param(projectId)
                .query((row, n) -> {
                    parts.put(Part.valueOf(row.getString("part")), kept(row));
                    return true;
                })
                .list();
        return parts;
    }

    private Kept kept(ResultSet row) throws SQLException {
        return new Kept(
                cells(row.getString("rows")),
                row.getLong("version"),
                row.getObject("changed_at", OffsetDateTime.class).toInstant(),
                row.getString("changed_by"));
    }

    private List<Cells> cells(String rows) {
        return Arrays.asList(json.readValue(rows, Cells[].class));
    }

    static DesignParts parts(Map<Part, Kept> kept) {
        Map<Part, List<Cells>> rows = new EnumMap<>(Part.class);
        kept.forEach((part, one) -> rows.put(part, one.rows()));
        return new DesignParts(rows);
    }

    /** @param version as it was opened, -1 for a part that nobody had written. @return false if somebody was faster */
    boolean keep(Request design, Part part, long version, List<Cells> rows, String by, Instant at) {
        return jdbc.sql("""
                        insert into design_part as p (project_id, part, branch_id, rows, changed_at, changed_by)
                        select :project, :part, :branch, cast(:rows as jsonb), :at, :by
                         where :version = -1 or exists (select 1 from design_part where project_id = :project and part = :part)
                        on conflict (project_id, part) do update
                           set rows = excluded.rows, changed_at = excluded.changed_at, changed_by = excluded.changed_by,
                               version = p.version + 1
                         where p.version = :version
                        """)
                        .param("project", design.projectId())
                        .param("part", part.name())
                        .param("branch", design.branchId())
                        .param("rows", json.writeValueAsString(rows))
                        .param("at", OffsetDateTime.ofInstant(at, ZoneOffset.UTC))
                        .param("by", by)
                        .param("version", version)
                        .update()
                == 1;
    }
}
