package org.plumbrow.project;

import java.sql.Types;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.plumbrow.web.Access;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Propagation;
import org.springframework.transaction.annotation.Transactional;

/**
 * What phones have sent, so that each sending counts once however often it arrives. For use inside the transaction that
 * stores the thing: ask {@link #known}, store, {@link #took}. If that transaction dies, neither is there.
 */
@Service
@Transactional(propagation = Propagation.MANDATORY)
public class PhoneSendings {

    private static final Duration OLDEST = Duration.ofDays(366);

    private final JdbcClient jdbc;
    private final Access access;
    private final Clock clock;

    PhoneSendings(JdbcClient jdbc, Access access, Clock clock) {
        this.jdbc = jdbc;
        this.access = access;
        this.clock = clock;
    }

    /** The answer where nothing is to be stored any more: it came before, lacks its number, or is somebody else's. */
    public Optional<PhoneReply> known(Optional<PhoneSending> sending, UUID projectId) {
        if (sending.isEmpty()) {
            return Optional.of(PhoneReply.refused(
                    "This came without its number, so it cannot be told from another. Send it again from the page."));
        }
        if (!isTheirs(sending.get())) {
            return Optional.of(PhoneReply.notTheirs());
        }
        return before(sending.get(), projectId).map(PhoneReply::already);
    }

    /** Whether the person who is signed in wrote this: nobody sends in another's name. */
    private boolean isTheirs(PhoneSending sending) {
        return access.visitor().personId().equals(sending.personId());
    }

    /**
     * The version that was answered when the same id came before. Until the transaction ends, whoever brings the same id
     * at the same time waits here.
     */
    private Optional<Long> before(PhoneSending sending, UUID projectId) {
        jdbc.sql("select cast(pg_advisory_xact_lock(hashtextextended(?, 0)) as text)")
                .param(projectId + "/" + sending.id())
                .query(String.class)
                .list();
        return jdbc.sql("select version from phone_sending where project_id = ? and id = ?")
                .params(projectId, sending.id())
                .query(Long.class)
                .optional();
    }

    /**
     * Notes that it was stored.
     *
     * @param what the last words of the form's address: "service", "photos/2"
     */
    public void took(PhoneSending sending, UUID branchId, UUID projectId, String what, long version) {
        Instant now = clock.instant();
        jdbc.sql("""
                insert into phone_sending (project_id, id, branch_id, what, version, written_at, at, by_name)
                values (:project, :id, :branch, :what, :version, :written, :now, :by)
                """)
                .param("project", projectId)
                .param("id", sending.id())
                .param("branch", branchId)
                .param("what", what)
                .param("version", version)
                .param(
                        "written",
                        believable(sending.writtenAt(), now).atOffset(ZoneOffset.UTC),
                        Types.TIMESTAMP_WITH_TIMEZONE)
                .param("now", now.atOffset(ZoneOffset.UTC), Types.TIMESTAMP_WITH_TIMEZONE)
                .param("by", access.actor().name())
                .update();
    }

    /** A phone's clock that runs ahead, or that was never set, tells nothing. */
    private static Instant believable(@Nullable Instant written, Instant now) {
        return written == null || written.isAfter(now) || written.isBefore(now.minus(OLDEST)) ? now : written;
    }
}
