package org.plumbrow.evidence;

import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/** Files of a branch under the hash of what is kept; the hash of what came in finds a file that came before. */
@Component
class StoredFiles {

    private final JdbcClient jdbc;

    StoredFiles(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** The bytes of a file, with what the browser has to know. */
    record Content(byte[] bytes, String mediaType) {}

    /** The kept file that was once made of these same bytes. */
    Optional<byte[]> keptBefore(UUID branchId, byte[] original) {
        return jdbc.sql("select sha256 from stored_file where branch_id = ? and source_sha256 = ? limit 1")
                .params(branchId, sha256(original))
                .query(byte[].class)
                .optional();
    }

    /** @return the hash under which it is kept; the same bytes are kept once */
    byte[] keep(
            UUID branchId, byte[] original, byte[] bytes, byte @Nullable [] thumbnail, String mediaType, Instant at) {
        byte[] hash = sha256(bytes);
        jdbc.sql("""
                insert into stored_file (branch_id, sha256, source_sha256, media_type, size_bytes, bytes, thumbnail, stored_at)
                values (?, ?, ?, ?, ?, ?, ?, ?) on conflict (branch_id, sha256) do nothing
                """)
                .params(
                        branchId,
                        hash,
                        sha256(original),
                        mediaType,
                        bytes.length,
                        bytes,
                        thumbnail,
                        OffsetDateTime.ofInstant(at, ZoneOffset.UTC))
                .update();
        return hash;
    }

    Optional<Content> content(UUID evidenceId) {
        return asked("f.bytes", "f.media_type", evidenceId);
    }

    Optional<Content> thumbnail(UUID evidenceId) {
        return asked("f.thumbnail", "'image/jpeg'", evidenceId);
    }

    private Optional<Content> asked(String bytes, String type, UUID evidenceId) {
        return jdbc.sql("select " + bytes + " as bytes, " + type + " as media_type from evidence e join stored_file f"
                        + " on f.branch_id = e.branch_id and f.sha256 = e.sha256 where e.id = ? and " + bytes
                        + " is not null")
                .param(evidenceId)
                .query((row, n) -> new Content(row.getBytes("bytes"), row.getString("media_type")))
                .optional();
    }

    /** Bytes kept for a project, each file once. */
    long bytesOf(UUID projectId) {
        return jdbc.sql("""
                select coalesce(sum(size_bytes), 0) from stored_file f
                 where (f.branch_id, f.sha256) in (select branch_id, sha256 from evidence where project_id = ?)
                """).param(projectId).query(Long.class).single();
    }

    private static byte[] sha256(byte[] bytes) {
        try {
            return MessageDigest.getInstance("SHA-256").digest(bytes);
        } catch (NoSuchAlgorithmException impossible) {
            throw new IllegalStateException(impossible);
        }
    }
}
