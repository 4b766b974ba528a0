package org.plumbrow.evidence;

import com.drew.lang.GeoLocation;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Types;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.plumbrow.web.Actor;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/** The rows of evidence, without any file's bytes. */
@Component
class EvidenceRows {

    private static final String COLUMNS = """
            select e.id, e.branch_id, e.project_id, e.kind, coalesce(f.media_type, '') as media_type,
                   coalesce(f.size_bytes, 0) as size_bytes, e.name, e.caption, e.taken_at, e.signer_name, e.signer_trade,
                   e.signed_text, e.at, e.by_name, e.hidden_at is not null as hidden
            """;
    private static final String FILE = " left join stored_file f on f.branch_id = e.branch_id and f.sha256 = e.sha256 ";
    private static final String FACTS = COLUMNS + " from evidence e" + FILE;
    private static final String NEW = """
            with kept as (
                insert into evidence (id, branch_id, project_id, kind, sha256, name, caption, taken_at, latitude_deg,
                                      longitude_deg, signer_name, signer_trade, signed_text, at, by_person_id, by_name)
                values (:id, :branch, cast(:project as uuid), :kind, cast(:hash as bytea), :name, :caption,
                        cast(:taken as timestamp), cast(:lat as numeric), cast(:lon as numeric), :signer, :trade, :text, :at,
                        cast(:person as uuid), :by)
                returning *)
            """ + COLUMNS + " from kept e" + FILE;

    private final JdbcClient jdbc;

    EvidenceRows(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    record NewRow(
            UUID id,
            UUID branchId,
            @Nullable UUID projectId,
            EvidenceKind kind,
            byte @Nullable [] sha256,
            String name,
            String caption,
            @Nullable LocalDateTime takenAt,
            @Nullable GeoLocation place,
            @Nullable NewSignature signature,
            Actor by,
            Instant at) {}

    /** What a camera had written into a file. */
    record Notes(@Nullable LocalDateTime takenAt, @Nullable GeoLocation place) {}

    EvidenceFacts insert(NewRow row) {
        NewSignature signature = row.signature;
        return jdbc.sql(NEW)
                .param("id", row.id)
                .param("branch", row.branchId)
                .param("project", row.projectId == null ? null : row.projectId.toString(), Types.VARCHAR)
                .param("kind", row.kind.name())
                .param("hash", row.sha256, Types.BINARY)
                .param("name", row.name)
                .param("caption", row.caption)
                .param("taken", row.takenAt, Types.TIMESTAMP)
                .param("lat", row.place == null ? null : row.place.getLatitude(), Types.NUMERIC)
                .param("lon", row.place == null ? null : row.place.getLongitude(), Types.NUMERIC)
                .param("signer", signature == null ? null : signature.name().strip(), Types.VARCHAR)
                .param("trade", signature == null ? null : signature.trade().strip(), Types.VARCHAR)
                .param("text", signature == null ? null : signature.text(), Types.VARCHAR)
                .param("at", OffsetDateTime.ofInstant(row.at, ZoneOffset.UTC))
                .param(
                        "person",
                        row.by.personId() == null ? null : row.by.personId().toString(),
                        Types.VARCHAR)
                .param("by", row.by.name())
                .query(EvidenceRows::facts)
                .single();
    }

    Optional<Notes> notesOf(UUID branchId, byte[] hash) {
        return jdbc.sql("""
                select taken_at, latitude_deg, longitude_deg from evidence
                 where branch_id = ? and sha256 = ? order by at limit 1
                """)
                .params(branchId, hash)
                .query((row, n) -> new Notes(row.getObject("taken_at", LocalDateTime.class), place(row)))
                .optional();
    }

    private static @Nullable GeoLocation place(ResultSet row) throws SQLException {
        return row.getBigDecimal("latitude_deg") == null
                ? null
                : new GeoLocation(row.getDouble("latitude_deg"), row.getDouble("longitude_deg"));
    }

    Optional<EvidenceFacts> find(UUID id) {
        return jdbc.sql(FACTS + " where e.id = ?")
                .param(id)
                .query(EvidenceRows::facts)
                .optional();
    }

    List<EvidenceFacts> ofIds(Collection<UUID> ids) {
        return ids.isEmpty()
                ? List.of()
                : jdbc.sql(FACTS + " where e.id in (:ids) order by e.at, e.id")
                        .param("ids", ids)
                        .query(EvidenceRows::facts)
                        .list();
    }

    List<EvidenceFacts> ofProject(UUID projectId) {
        return jdbc.sql(FACTS + " where e.project_id = ? order by e.at desc, e.id desc")
                .param(projectId)
                .query(EvidenceRows::facts)
                .list();
    }

    boolean hide(UUID id, String reason, Actor by, Instant at) {
        return jdbc.sql(
                                "update evidence set hidden_at = ?, hidden_by = ?, hidden_reason = ? where id = ? and hidden_at is null")
                        .params(OffsetDateTime.ofInstant(at, ZoneOffset.UTC), by.name(), reason, id)
                        .update()
                == 1;
    }

    boolean show(UUID id) {
        return jdbc.sql("update evidence set hidden_at = null, hidden_by = null, hidden_reason = null"
                                + " where id = ? and hidden_at is not null")
                        .param(id)
                        .update()
                == 1;
    }

    private static EvidenceFacts facts(ResultSet row, int number) throws SQLException {
        String signer = row.getString("signer_name");
        EvidenceFacts.Signature signature = signer == null
                ? null
                : new EvidenceFacts.Signature(
                        signer,
                        row.getString("signer_trade"),
                        row.getString("signed_text"),
                        !row.getString("media_type").isEmpty());
        return new EvidenceFacts(
                row.getObject("id", UUID.class),
                row.getObject("branch_id", UUID.class),
                row.getObject("project_id", UUID.class),
                EvidenceKind.valueOf(row.getString("kind")),
                row.getString("media_type"),
                row.getLong("size_bytes"),
                row.getString("name"),
                row.getString("caption"),
                row.getObject("taken_at", LocalDateTime.class),
                signature,
                row.getObject("at", OffsetDateTime.class).toInstant(),
                row.getString("by_name"),
                row.getBoolean("hidden"));
    }
}
