package org.plumbrow.design.draft;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.plumbrow.database.Ids;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/** Documents that a later revision has made stale, until each is renewed or judged not touched. */
@Component
class StaleRows {

    private final JdbcClient jdbc;

    StaleRows(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    enum How {
        RENEWED,
        NOT_TOUCHED
    }

    /** @param how null while it is open */
    record Stale(
            UUID id,
            long version,
            String letter,
            StaleDocuments.Document document,
            String because,
            @Nullable How how,
            String note,
            @Nullable String closedBy,
            @Nullable Instant closedAt) {
        boolean isOpen() {
            return how == null;
        }
    }

    void add(UUID branchId, UUID projectId, UUID revisionId, Map<StaleDocuments.Document, String> stale) {
        stale.forEach((document, because) -> jdbc.sql("""
                        insert into stale_document (id, branch_id, project_id, revision_id, document, because)
                        values (?, ?, ?, ?, ?, ?)
                        """)
                .params(Ids.next(), branchId, projectId, revisionId, document.name(), because)
                .update());
    }

    /** Open ones first. */
    List<Stale> of(UUID projectId) {
        return jdbc.sql("""
                select d.id, d.version, r.letter, d.document, d.because, d.closed_how, d.closed_note, d.closed_by, d.closed_at
                  from stale_document d join design_revision r on r.id = d.revision_id
                 where d.project_id = ? order by d.closed_how is not null, d.id
                """).param(projectId).query(StaleRows::stale).list();
    }

    private static Stale stale(ResultSet row, int number) throws SQLException {
        return new Stale(
                row.getObject("id", UUID.class),
                row.getLong("version"),
                row.getString("letter"),
                StaleDocuments.Document.valueOf(row.getString("document")),
                row.getString("because"),
                Optional.ofNullable(row.getString("closed_how"))
                        .map(How::valueOf)
                        .orElse(null),
                row.getString("closed_note"),
                row.getString("closed_by"),
                Optional.ofNullable(row.getObject("closed_at", OffsetDateTime.class))
                        .map(OffsetDateTime::toInstant)
                        .orElse(null));
    }

    boolean close(UUID id, long version, How how, String note, String by, Instant at) {
        return jdbc.sql("""
                        update stale_document set closed_how = ?, closed_note = ?, closed_by = ?, closed_at = ?, version = version + 1
                         where id = ? and version = ? and closed_how is null
                        """)
                        .params(how.name(), note, by, OffsetDateTime.ofInstant(at, ZoneOffset.UTC), id, version)
                        .update()
                == 1;
    }
}
