package org.plumbrow.design.draft;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.plumbrow.design.DesignFacts;
import org.plumbrow.design.DrawnQuantities;
import org.plumbrow.design.part.DesignParts;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;
import tools.jackson.databind.json.JsonMapper;

/** Revisions as they are kept. */
@Component
class RevisionRows {

    private static final String COLUMNS = "id, letter, facts, parts, why, frozen_at, frozen_by";

    private final JdbcClient jdbc;
    private final JsonMapper json;

    RevisionRows(JdbcClient jdbc, JsonMapper json) {
        this.jdbc = jdbc;
        this.json = json;
    }

    /** The newest first. */
    List<Revision> of(UUID projectId) {
        return jdbc.sql("select " + COLUMNS + " from design_revision where project_id = ? order by id desc")
                .param(projectId)
                .query(this::revision)
                .list();
    }

    Optional<Revision> find(UUID projectId, String letter) {
        return jdbc.sql("select " + COLUMNS + " from design_revision where project_id = ? and letter = ?")
                .param(projectId)
                .param(letter)
                .query(this::revision)
                .optional();
    }

    Optional<Revision> newest(UUID projectId) {
        return jdbc.sql("select " + COLUMNS + " from design_revision where project_id = ? order by id desc limit 1")
                .param(projectId)
                .query(this::revision)
                .optional();
    }

    /** Of the newest revision of each; a project without one is left out. */
    Map<UUID, DrawnQuantities> quantities(Collection<UUID> projectIds) {
        Map<UUID, DrawnQuantities> newest = new HashMap<>();
        jdbc.sql("""
                select distinct on (project_id) project_id, quantities from design_revision
                 where project_id = any (?) order by project_id, id desc
                """)
                .param(projectIds.toArray(UUID[]::new))
                .query((row, n) -> newest.put(
                        row.getObject("project_id", UUID.class),
                        json.readValue(row.getString("quantities"), DrawnQuantities.class)))
                .list();
        return newest;
    }

    private Revision revision(ResultSet row, int number) throws SQLException {
        return new Revision(
                row.getObject("id", UUID.class),
                row.getString("letter"),
                json.readValue(row.getString("facts"), DesignFacts.class),
                json.readValue(row.getString("parts"), DesignParts.class),
                row.getString("why"),
                row.getObject("frozen_at", OffsetDateTime.class).toInstant(),
                row.getString("frozen_by"));
    }

    void add(UUID branchId, UUID projectId, Revision revision) {
        jdbc.sql("""
                insert into design_revision
                    (id, branch_id, project_id, letter, facts, parts, quantities, why, frozen_at, frozen_by)
                values (?, ?, ?, ?, cast(? as jsonb), cast(? as jsonb), cast(? as jsonb), ?, ?, ?)
                """)
                .param(revision.id())
                .param(branchId)
                .param(projectId)
                .param(revision.letter())
                .param(json.writeValueAsString(revision.facts()))
                .param(json.writeValueAsString(revision.parts()))
                .param(json.writeValueAsString(DrawnQuantities.of(revision.facts())))
                .param(revision.why())
                .param(OffsetDateTime.ofInstant(revision.at(), ZoneOffset.UTC))
                .param(revision.by())
                .update();
    }
}
