package org.plumbrow.database;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Timestamp;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** The rows of {@code background_run}. Each change says in its condition which state it expects. */
@Repository
class RunRows {

    private final JdbcClient jdbc;

    RunRows(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** @param isNew false if a waiting run was joined */
    record Asked(UUID id, boolean isNew) {}

    /** The update of a joined row changes nothing but locks it: the run cannot begin before the caller's commit. */
    Asked ask(String kind, UUID branchId, @Nullable UUID subjectId, String askedBy, Instant now) {
        return jdbc.sql("""
                        insert into background_run (id, branch_id, kind, subject_id, state, asked_by, asked_at)
                        values (:id, :branch, :kind, cast(:subject as uuid), 'QUEUED', :by, :now)
                        on conflict (branch_id, kind, subject_id) where state = 'QUEUED'
                        do update set version = background_run.version + 1
                        returning id, version = 0
                        """)
                .param("id", Ids.next())
                .param("branch", branchId)
                .param("kind", kind)
                .param("subject", subjectId)
                .param("by", askedBy)
                .param("now", utc(now))
                .query((row, number) -> new Asked(row.getObject(1, UUID.class), row.getBoolean(2)))
                .single();
    }

    /**
     * Begins the run, or begins it anew after a node died.
     *
     * @return the run as it is now; not RUNNING with one try more if it is over or another of its like is under way
     */
    Optional<Run> claim(UUID id, Instant now) {
        return jdbc.sql("""
                        update background_run r
                        set state = 'RUNNING', started_at = coalesce(started_at, :now), tries = tries + 1
                        where id = :id and state in ('QUEUED', 'RUNNING')
                          and not exists (select 1 from background_run other
                                          where other.branch_id = r.branch_id and other.kind = r.kind
                                            and other.subject_id is not distinct from r.subject_id
                                            and other.state = 'RUNNING' and other.id <> r.id)
                        returning *
                        """)
                .param("id", id)
                .param("now", utc(now))
                .query(RunRows::run)
                .optional();
    }

    /**
     * @param attempt the try that reports; an earlier one, thought dead, is no longer heard
     * @return whether the work should go on
     */
    boolean step(Run attempt, int done, int total, String words) {
        return jdbc.sql("""
                        update background_run set done_steps = :done, total_steps = :total, words = :words
                        where id = :id and state = 'RUNNING' and tries = :tries
                        returning stop_asked_by is null
                        """)
                .param("id", attempt.id())
                .param("tries", attempt.tries())
                .param("done", Math.max(0, done))
                .param("total", Math.max(0, total))
                .param("words", words)
                .query(Boolean.class)
                .optional()
                .orElse(false);
    }

    boolean goesOn(Run attempt) {
        return jdbc.sql("""
                        select stop_asked_by is null from background_run
                        where id = :id and state = 'RUNNING' and tries = :tries
                        """)
                .param("id", attempt.id())
                .param("tries", attempt.tries())
                .query(Boolean.class)
                .optional()
                .orElse(false);
    }

    void end(Run attempt, Run.State state, String outcome, Instant now) {
        jdbc.sql("""
                        update background_run
                        set state = :state, outcome = :outcome, finished_at = :now, words = ''
                        where id = :id and state = 'RUNNING' and tries = :tries
                        """)
                .param("id", attempt.id())
                .param("tries", attempt.tries())
                .param("state", state.name())
                .param("outcome", outcome)
                .param("now", utc(now))
                .update();
    }

    void stop(UUID id, String by, Instant now) {
        int waited = jdbc.sql("""
                        update background_run
                        set state = 'STOPPED', stop_asked_by = :by, outcome = :outcome, finished_at = :now
                        where id = :id and state = 'QUEUED'
                        """)
                .param("id", id)
                .param("by", by)
                .param("outcome", "Stopped by " + by + " before it began.")
                .param("now", utc(now))
                .update();
        if (waited == 0) {
            jdbc.sql("""
                            update background_run set stop_asked_by = coalesce(stop_asked_by, :by)
                            where id = :id and state = 'RUNNING'
                            """).param("id", id).param("by", by).update();
        }
    }

    Optional<Run> find(UUID id) {
        return jdbc.sql("select * from background_run where id = :id")
                .param("id", id)
                .query(RunRows::run)
                .optional();
    }

    Optional<Run> latest(String kind, UUID branchId, @Nullable UUID subjectId) {
        return jdbc.sql("""
                        select * from background_run
                        where branch_id = :branch and kind = :kind and subject_id is not distinct from cast(:subject as uuid)
                        order by id desc limit 1
                        """)
                .param("branch", branchId)
                .param("kind", kind)
                .param("subject", subjectId)
                .query(RunRows::run)
                .optional();
    }

    int forgetEndedBefore(Instant instant) {
        return jdbc.sql("delete from background_run where finished_at < :instant")
                .param("instant", utc(instant))
                .update();
    }

    private static Run run(ResultSet row, int number) throws SQLException {
        return new Run(
                row.getObject("id", UUID.class),
                row.getObject("branch_id", UUID.class),
                row.getString("kind"),
                row.getObject("subject_id", UUID.class),
                Run.State.valueOf(row.getString("state")),
                row.getInt("done_steps"),
                row.getInt("total_steps"),
                row.getString("words"),
                row.getString("outcome"),
                row.getString("asked_by"),
                row.getTimestamp("asked_at").toInstant(),
                instant(row.getTimestamp("started_at")),
                instant(row.getTimestamp("finished_at")),
                row.getString("stop_asked_by"),
                row.getInt("tries"));
    }

    private static @Nullable Instant instant(@Nullable Timestamp timestamp) {
        return timestamp == null ? null : timestamp.toInstant();
    }

    private static OffsetDateTime utc(Instant instant) {
        return instant.atOffset(ZoneOffset.UTC);
    }
}
