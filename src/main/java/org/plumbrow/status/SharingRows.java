package org.plumbrow.status;

import java.sql.Types;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.UUID;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** The rows of what is shared with a customer. */
@Repository
class SharingRows {

    private final JdbcClient jdbc;

    SharingRows(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    CustomerSharing.Written terms(UUID projectId) {
        return jdbc.sql(
                        "select version, shut_off_place, shut_off_photo_id, message from customer_page where project_id = ?")
                .param(projectId)
                .query((row, n) -> new CustomerSharing.Written(
                        row.getLong("version"),
                        new CustomerTerms(
                                row.getString("shut_off_place"),
                                row.getObject("shut_off_photo_id", UUID.class),
                                row.getString("message"))))
                .optional()
                .orElse(new CustomerSharing.Written(0, CustomerTerms.NOTHING));
    }

    /** @return false if somebody else was faster */
    boolean write(UUID projectId, UUID branchId, long version, CustomerTerms to, String by, Instant at) {
        return jdbc.sql("""
                insert into customer_page (project_id, version, branch_id, shut_off_place, shut_off_photo_id, message,
                                           changed_at, changed_by)
                values (:project, 1, :branch, :place, :photo, :message, :at, :by)
                on conflict (project_id) do update
                   set version = customer_page.version + 1, shut_off_place = excluded.shut_off_place,
                       shut_off_photo_id = excluded.shut_off_photo_id, message = excluded.message,
                       changed_at = excluded.changed_at, changed_by = excluded.changed_by
                 where customer_page.version = :version
                """)
                        .param("project", projectId)
                        .param("branch", branchId)
                        .param("version", version)
                        .param("place", to.shutOffPlace())
                        .param("photo", to.shutOffPhotoId(), Types.OTHER)
                        .param("message", to.message())
                        .param("at", utc(at))
                        .param("by", by)
                        .update()
                == 1;
    }

    List<SharedPaper> papers(UUID projectId) {
        return jdbc.sql("""
                select evidence_id, slot, title, shared_at, shared_by from customer_paper
                 where project_id = ? and ended_at is null order by slot
                """)
                .param(projectId)
                .query((row, n) -> new SharedPaper(
                        row.getObject("evidence_id", UUID.class),
                        row.getInt("slot"),
                        row.getString("title"),
                        row.getObject("shared_at", OffsetDateTime.class).toInstant(),
                        row.getString("shared_by")))
                .list();
    }

    void share(UUID projectId, UUID branchId, UUID evidenceId, String title, String by, Instant at) {
        jdbc.sql("""
                insert into customer_paper (project_id, evidence_id, branch_id, slot, title, shared_at, shared_by)
                values (:project, :evidence, :branch,
                        (select coalesce(max(slot), 0) + 1 from customer_paper where project_id = :project),
                        :title, :at, :by)
                on conflict on constraint customer_paper_key do update
                   set title = excluded.title, shared_at = excluded.shared_at, shared_by = excluded.shared_by,
                       ended_at = null
                """)
                .param("project", projectId)
                .param("evidence", evidenceId)
                .param("branch", branchId)
                .param("title", title)
                .param("at", utc(at))
                .param("by", by)
                .update();
    }

    boolean stop(UUID projectId, UUID evidenceId, Instant at) {
        return jdbc.sql("""
                update customer_paper set ended_at = ? where project_id = ? and evidence_id = ? and ended_at is null
                """).params(utc(at), projectId, evidenceId).update() == 1;
    }

    boolean again(UUID projectId, UUID evidenceId) {
        return jdbc.sql("""
                update customer_paper set ended_at = null where project_id = ? and evidence_id = ? and ended_at is not null
                """).params(projectId, evidenceId).update() == 1;
    }

    static OffsetDateTime utc(Instant at) {
        return OffsetDateTime.ofInstant(at, ZoneOffset.UTC);
    }
}
