package org.plumbrow.notice;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Timestamp;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.plumbrow.web.Paging;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** The rows of {@code notice}. Each change says in its condition which state it expects. */
@Repository
class Notices {

    private static final String COLUMNS =
            "id, kind, to_name, to_address, subject, state, reason, tries, created_at, settled_at, settled_by";

    private final JdbcClient jdbc;

    Notices(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** A notice with all that is sent. */
    record Letter(
            NoticeLine line,
            @Nullable UUID branchId,
            @Nullable UUID projectId,
            String about,
            NewNotice.Recipient answersTo,
            String text,
            String shortText,
            NewNotice.@Nullable CalendarPart calendar,
            @Nullable Instant blankedAt) {}

    void add(UUID id, NewNotice notice, NewNotice.Recipient answersTo, Instant now) {
        NewNotice.CalendarPart calendar = notice.calendar();
        jdbc.sql("""
                        insert into notice (id, branch_id, project_id, kind, about, to_name, to_address, reply_name,
                            reply_address, subject, body, short_text, calendar_name, calendar_method, calendar_ics,
                            state, created_at, next_try_at)
                        values (:id, :branch, :project, :kind, :about, :toName, :toAddress, :replyName, :replyAddress,
                            :subject, :body, :short, :calendarName, :calendarMethod, :calendar, 'WAITING', :now, :now)
                        """)
                .param("id", id)
                .param("branch", notice.branchId())
                .param("project", notice.projectId())
                .param("kind", notice.kind().name())
                .param("about", notice.about())
                .param("toName", notice.to().name())
                .param("toAddress", notice.to().address().strip())
                .param("replyName", answersTo.name())
                .param("replyAddress", answersTo.address())
                .param("subject", notice.subject())
                .param("body", notice.text())
                .param("short", notice.shortText())
                .param("calendarName", calendar == null ? null : calendar.fileName())
                .param("calendarMethod", calendar == null ? null : calendar.method())
                .param("calendar", calendar == null ? null : calendar.ics())
                .param("now", utc(now))
                .update();
    }

    int withdraw(String about, String by, Instant now) {
        return jdbc.sql("""
                        update notice set state = 'WITHDRAWN', settled_at = :now, settled_by = :by, version = version + 1
                         where about = :about and state = 'WAITING'
                        """)
                .param("about", about)
                .param("by", by)
                .param("now", utc(now))
                .update();
    }

    void blank(String about, Instant now) {
        jdbc.sql("update notice set body = '', blanked_at = :now where about = :about and blanked_at is null")
                .param("about", about)
                .param("now", utc(now))
                .update();
    }

    /**
     * Takes the notice for one try, so that no other node takes it too.
     *
     * @return empty if it no longer waits or its hour has not come
     */
    Optional<Letter> take(UUID id, Instant now, Instant nextTry) {
        return jdbc.sql("""
                        update notice set tries = tries + 1, next_try_at = :next, version = version + 1
                         where id = :id and state = 'WAITING' and to_address <> '' and next_try_at <= :now and tries < 5
                        returning *
                        """)
                .param("id", id)
                .param("now", utc(now))
                .param("next", utc(nextTry))
                .query(Notices::letter)
                .optional();
    }

    List<UUID> due(Instant now, int most) {
        return jdbc.sql("""
                        select id from notice
                         where state = 'WAITING' and to_address <> '' and next_try_at <= :now
                         order by next_try_at limit :most
                        """)
                .param("now", utc(now))
                .param("most", most)
                .query(UUID.class)
                .list();
    }

    void postpone(UUID id, Instant nextTry, String reason) {
        jdbc.sql("update notice set next_try_at = :next, reason = :reason where id = :id and state = 'WAITING'")
                .param("id", id)
                .param("next", utc(nextTry))
                .param("reason", reason)
                .update();
    }

    /** @return whether it still waited */
    boolean settle(UUID id, NoticeState state, String reason, String by, Instant now) {
        return jdbc.sql("""
                        update notice set state = :state, reason = :reason, settled_at = :now, settled_by = :by,
                               version = version + 1
                         where id = :id and state = 'WAITING'
                        """)
                        .param("id", id)
                        .param("state", state.name())
                        .param("reason", reason)
                        .param("by", by)
                        .param("now", utc(now))
                        .update()
                == 1;
    }

    /** A person told the recipient in another way. @return whether it was still to be told */
    boolean passOn(UUID id, String by, Instant now) {
        return jdbc.sql("""
                        update notice set state = 'BY_HAND', reason = '', settled_at = :now, settled_by = :by,
                               version = version + 1
                         where id = :id and state in ('WAITING', 'NOT_SENT')
                        """)
                        .param("id", id)
                        .param("by", by)
                        .param("now", utc(now))
                        .update()
                == 1;
    }

    /** Back to waiting with all its tries. @return whether it had been given up */
    boolean waitAgain(UUID id, Instant now) {
        return jdbc.sql("""
                        update notice set state = 'WAITING', reason = '', tries = 0, next_try_at = :now,
                               settled_at = null, settled_by = '', version = version + 1
                         where id = :id and state in ('NOT_SENT', 'BY_HAND')
                        """).param("id", id).param("now", utc(now)).update() == 1;
    }

    Optional<Letter> find(UUID id) {
        return jdbc.sql("select * from notice where id = :id")
                .param("id", id)
                .query(Notices::letter)
                .optional();
    }

    List<NoticeLine> ofProject(UUID projectId) {
        return jdbc.sql("select " + COLUMNS
                        + " from notice where project_id = :project order by created_at desc, id desc")
                .param("project", projectId)
                .query(Notices::line)
                .list();
    }

    /** How many notices of a list are in each state that somebody may have to act on. */
    record Sums(long total, long waiting, long notSent) {}

    Sums sumsOfBranch(UUID branchId) {
        return sums("branch_id = :branch and kind <> 'SIGN_IN'")
                .param("branch", branchId)
                .query(Sums.class)
                .single();
    }

    Sums sumsToSignIn() {
        return sums("kind = 'SIGN_IN'").query(Sums.class).single();
    }

    private JdbcClient.StatementSpec sums(String which) {
        return jdbc.sql("""
                select count(*) as total, count(*) filter (where state = 'WAITING') as waiting,
                       count(*) filter (where state = 'NOT_SENT') as not_sent from notice where
                """ + which);
    }

    List<NoticeLine> ofBranch(UUID branchId, Paging page) {
        return page("branch_id = :branch and kind <> 'SIGN_IN'", page)
                .param("branch", branchId)
                .query(Notices::line)
                .list();
    }

    List<NoticeLine> toSignIn(Paging page) {
        return page("kind = 'SIGN_IN'", page).query(Notices::line).list();
    }

    private JdbcClient.StatementSpec page(String which, Paging page) {
        return jdbc.sql("select " + COLUMNS + " from notice where " + which
                        + " order by created_at desc, id desc limit :rows offset :from")
                .param("rows", page.size())
                .param("from", page.offset());
    }

    /** @return how many went */
    int forgetSettledBefore(Instant instant) {
        return jdbc.sql("delete from notice where settled_at < :instant")
                .param("instant", utc(instant))
                .update();
    }

    void blankToSignInBefore(Instant instant, Instant now) {
        jdbc.sql("""
                        update notice set body = '', blanked_at = :now
                         where kind = 'SIGN_IN' and blanked_at is null and created_at < :instant
                        """).param("instant", utc(instant)).param("now", utc(now)).update();
    }

    private static NoticeLine line(ResultSet row, int number) throws SQLException {
        return new NoticeLine(
                row.getObject("id", UUID.class),
                NoticeKind.valueOf(row.getString("kind")),
                row.getString("to_name"),
                row.getString("to_address"),
                row.getString("subject"),
                NoticeState.valueOf(row.getString("state")),
                row.getString("reason"),
                row.getInt("tries"),
                row.getTimestamp("created_at").toInstant(),
                instant(row.getTimestamp("settled_at")),
                row.getString("settled_by"));
    }

    private static Letter letter(ResultSet row, int number) throws SQLException {
        String ics = row.getString("calendar_ics");
        return new Letter(
                line(row, number),
                row.getObject("branch_id", UUID.class),
                row.getObject("project_id", UUID.class),
                row.getString("about"),
                new NewNotice.Recipient(row.getString("reply_name"), row.getString("reply_address")),
                row.getString("body"),
                row.getString("short_text"),
                ics == null
                        ? null
                        : new NewNotice.CalendarPart(
                                row.getString("calendar_name"), row.getString("calendar_method"), ics),
                instant(row.getTimestamp("blanked_at")));
    }

    private static @Nullable Instant instant(@Nullable Timestamp timestamp) {
        return timestamp == null ? null : timestamp.toInstant();
    }

    private static OffsetDateTime utc(Instant instant) {
        return instant.atOffset(ZoneOffset.UTC);
    }
}
