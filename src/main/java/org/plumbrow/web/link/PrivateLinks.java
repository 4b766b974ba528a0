package org.plumbrow.web.link;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Timestamp;
import java.time.Clock;
import java.time.Instant;
import java.time.Period;
import java.time.ZoneOffset;
import java.util.Collection;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.plumbrow.database.BranchWall;
import org.plumbrow.database.Ids;
import org.plumbrow.web.Actor;
import org.plumbrow.web.LinkEnded;
import org.plumbrow.web.TooManyVisits;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import org.springframework.transaction.support.TransactionTemplate;

/**
 * Makes, repeats, ends and opens private links. One per thing; making a new one ends the old; each visit renews it for
 * thirteen months. Callers have asked {@code Access} before they make, show or end one.
 */
@Service
public class PrivateLinks {

    private static final Period LIFE = Period.ofMonths(13);
    private static final int VISITS_A_MINUTE = 60;
    private static final int MISSES_IN_TEN_MINUTES = 30;

    private static final String MAKE = """
            insert into private_link (id, branch_id, kind, subject_id, version, token_hash, made_at, made_by, valid_until)
            values (:id, :branch, :kind, :subject, :version, :hash, :now, :by, :until)
            on conflict on constraint private_link_one_per_subject do update
               set version = excluded.version, token_hash = excluded.token_hash, made_at = excluded.made_at,
                   made_by = excluded.made_by, valid_until = excluded.valid_until, ended_at = null, last_visit_at = null
            """;
    private static final String LIVE = """
            select * from private_link
             where kind = :kind and subject_id = :subject and ended_at is null and valid_until > :now
            """;
    private static final String VISIT = """
            update private_link
               set last_visit_at = :now, valid_until = :until, visit_minute = :minute,
                   visits_in_minute = case when visit_minute = :minute then visits_in_minute + 1 else 1 end
             where token_hash = :hash and kind = :kind and ended_at is null and valid_until > :now
            returning *
            """;

    private final JdbcClient jdbc;
    private final TransactionTemplate transaction;
    private final LinkTokens tokens;
    private final Clock clock;

    PrivateLinks(JdbcClient jdbc, TransactionTemplate transaction, LinkTokens tokens, Clock clock) {
        this.jdbc = jdbc;
        this.transaction = transaction;
        this.tokens = tokens;
        this.clock = clock;
    }

    /** A new link to the thing; the old one, if any, ends with it. */
    @Transactional
    public PrivateLink make(LinkKind kind, UUID branchId, UUID subjectId, Actor by) {
        Optional<Row> old = jdbc.sql(
                        "select * from private_link where kind = :kind and subject_id = :subject for update")
                .param("kind", kind.name())
                .param("subject", subjectId)
                .query(Row::of)
                .optional();
        UUID id = old.map(Row::id).orElseGet(Ids::next);
        long version = old.map(row -> row.version + 1).orElse(1L);
        jdbc.sql(MAKE)
                .param("id", id)
                .param("branch", branchId)
                .param("kind", kind.name())
                .param("subject", subjectId)
                .param("version", version)
                .param("hash", LinkTokens.hash(tokens.token(id, version)))
                .param("now", now())
                .param("by", by.name())
                .param("until", until())
                .update();
        return live(kind, subjectId).orElseThrow();
    }

    /** The link of the thing, so that a page or an e-mail can repeat it; empty when there is none or it has ended. */
    @Transactional
    public Optional<PrivateLink> live(LinkKind kind, UUID subjectId) {
        return jdbc.sql(LIVE)
                .param("kind", kind.name())
                .param("subject", subjectId)
                .param("now", now())
                .query(Row::of)
                .optional()
                .map(this::link);
    }

    /** The live links of these things, by thing; one query. */
    @Transactional(readOnly = true)
    public Map<UUID, PrivateLink> live(LinkKind kind, Collection<UUID> subjectIds) {
        if (subjectIds.isEmpty()) {
            return Map.of();
        }
        return jdbc
                .sql("""
                        select * from private_link
                         where kind = :kind and subject_id in (:subjects) and ended_at is null and valid_until > :now
                        """)
                .param("kind", kind.name())
                .param("subjects", subjectIds)
                .param("now", now())
                .query(Row::of)
                .list()
                .stream()
                .map(this::link)
                .collect(Collectors.toMap(PrivateLink::subjectId, Function.identity()));
    }

    /** Ends the link of the thing; its address opens nothing any more. @return whether there was one */
    @Transactional
    public boolean end(LinkKind kind, UUID subjectId) {
        return jdbc.sql(
                                "update private_link set ended_at = :now where kind = :kind and subject_id = :subject and ended_at is null")
                        .param("now", now())
                        .param("kind", kind.name())
                        .param("subject", subjectId)
                        .update()
                > 0;
    }

    /**
     * Somebody opens a link: runs the work with the rows of the link's branch only.
     *
     * @param source address of the one who asks, for the limit on guessing
     * @throws LinkEnded if it is unknown, ended or too old
     * @throws TooManyVisits above 60 visits of a link in a minute, or 30 misses of a source in ten
     */
    public <T> T visit(LinkKind kind, String token, String source, Function<PrivateLink, T> work) {
        PrivateLink link = BranchWall.everywhere(() -> transaction.execute(status -> counted(kind, token, source)))
                .orElseThrow(LinkEnded::new);
        return BranchWall.within(link.branchId(), () -> work.apply(link));
    }

    private Optional<PrivateLink> counted(LinkKind kind, String token, String source) {
        long window = clock.instant().getEpochSecond() / 600;
        if (misses(source, window) >= MISSES_IN_TEN_MINUTES) {
            throw new TooManyVisits();
        }
        Optional<Row> found = jdbc.sql(VISIT)
                .param("now", now())
                .param("until", until())
                .param("minute", clock.instant().getEpochSecond() / 60)
                .param("hash", LinkTokens.hash(token))
                .param("kind", kind.name())
                .query(Row::of)
                .optional();
        if (found.isEmpty()) {
            missed(source, window);
        } else if (found.get().visitsInMinute > VISITS_A_MINUTE) {
            throw new TooManyVisits();
        }
        return found.map(this::link);
    }

    private int misses(String source, long window) {
        return jdbc.sql("select misses from private_link_miss where source = :source and ten_minutes = :window")
                .param("source", source)
                .param("window", window)
                .query(Integer.class)
                .optional()
                .orElse(0);
    }

    private void missed(String source, long window) {
        jdbc.sql("delete from private_link_miss where ten_minutes < :window")
                .param("window", window)
                .update();
        jdbc.sql("""
                        insert into private_link_miss (source, ten_minutes, misses) values (:source, :window, 1)
                        on conflict on constraint private_link_miss_key do update set misses = private_link_miss.misses + 1
                        """).param("source", source).param("window", window).update();
    }

    private PrivateLink link(Row row) {
        return new PrivateLink(
                row.id,
                row.branchId,
                row.kind,
                row.subjectId,
                row.kind.path(tokens.token(row.id, row.version)),
                row.madeAt,
                row.madeBy,
                row.validUntil,
                row.lastVisitAt);
    }

    private Timestamp now() {
        return Timestamp.from(clock.instant());
    }

    private Timestamp until() {
        return Timestamp.from(clock.instant().atZone(ZoneOffset.UTC).plus(LIFE).toInstant());
    }

    private record Row(
            UUID id,
            UUID branchId,
            LinkKind kind,
            UUID subjectId,
            long version,
            Instant madeAt,
            String madeBy,
            Instant validUntil,
            Optional<Instant> lastVisitAt,
            int visitsInMinute) {
        static Row of(ResultSet row, int number) throws SQLException {
            return new Row(
                    row.getObject("id", UUID.class),
                    row.getObject("branch_id", UUID.class),
                    LinkKind.valueOf(row.getString("kind")),
                    row.getObject("subject_id", UUID.class),
                    row.getLong("version"),
                    row.getTimestamp("made_at").toInstant(),
                    row.getString("made_by"),
                    row.getTimestamp("valid_until").toInstant(),
                    Optional.ofNullable(row.getTimestamp("last_visit_at")).map(Timestamp::toInstant),
                    row.getInt("visits_in_minute"));
        }
    }
}
