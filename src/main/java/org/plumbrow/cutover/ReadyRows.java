package org.plumbrow.cutover;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.plumbrow.database.Ids;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** What people said before an outage, as it is kept. */
@Repository
class ReadyRows {

    private final JdbcClient jdbc;

    ReadyRows(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** How somebody answered an item; later is worse, except that what is not there counts as answered. */
    enum State {
        READY("ready"),
        NOT_YET("not yet"),
        WRONG("wrong: not with this outage"),
        NOT_HERE("there is none here");

        private final String words;

        State(String words) {
            this.words = words;
        }

        public String words() {
            return words;
        }
    }

    /** @param version -1 while nobody has said anything */
    record Said(State state, String note, String by, Instant at, long version) {
        static final Said NOTHING = new Said(State.NOT_YET, "", "", Instant.EPOCH, -1);
    }

    enum Decision {
        GO("Go"),
        NOT_YET("Not yet"),
        NO_GO("No-go");

        private final String words;

        Decision(String words) {
            this.words = words;
        }

        public String words() {
            return words;
        }
    }

    /** @param person who decides; @param by who wrote it down */
    record Go(Decision decision, String person, String reason, String by, Instant at) {}

    Map<ReadyItem, Said> items(UUID windowId) {
        Map<ReadyItem, Said> said = new EnumMap<>(ReadyItem.class);
        jdbc.sql("select item, state, note, said_by, said_at, version from outage_ready where window_id = ?")
                .param(windowId)
                .query((row, n) -> ReadyItem.of(row.getString("item").toLowerCase(java.util.Locale.ROOT))
                        .map(item -> said.put(item, said(row))))
                .list();
        return said;
    }

    private static Said said(ResultSet row) {
        try {
            return new Said(
                    State.valueOf(row.getString("state")),
                    row.getString("note"),
                    row.getString("said_by"),
                    row.getObject("said_at", OffsetDateTime.class).toInstant(),
                    row.getLong("version"));
        } catch (SQLException e) {
            throw new IllegalStateException(e);
        }
    }

    /** @return false if somebody was faster */
    boolean say(OutageFacts window, ReadyItem item, Said said) {
        return jdbc.sql("""
                        insert into outage_ready as r (window_id, item, branch_id, state, note, said_by, said_at)
                        select :window, :item, :branch, :state, :note, :by, :at
                         where :version = -1 or exists (select 1 from outage_ready where window_id = :window and item = :item)
                        on conflict (window_id, item) do update
                           set state = :state, note = :note, said_by = :by, said_at = :at, version = r.version + 1
                         where r.version = :version
                        """)
                        .param("window", window.id())
                        .param("item", item.name())
                        .param("branch", window.branchId())
                        .param("state", said.state().name())
                        .param("note", said.note())
                        .param("by", said.by())
                        .param("at", OffsetDateTime.ofInstant(said.at(), ZoneOffset.UTC))
                        .param("version", said.version())
                        .update()
                == 1;
    }

    Optional<Go> newest(UUID windowId) {
        return jdbc.sql("""
                        select decision, person, reason, written_by, said_at from outage_go
                         where window_id = ? order by said_at desc, id desc limit 1
                        """)
                .param(windowId)
                .query((row, n) -> new Go(
                        Decision.valueOf(row.getString("decision")),
                        row.getString("person"),
                        row.getString("reason"),
                        row.getString("written_by"),
                        row.getObject("said_at", OffsetDateTime.class).toInstant()))
                .optional();
    }

    void decide(OutageFacts window, Go go) {
        jdbc.sql("""
                        insert into outage_go (id, branch_id, window_id, decision, person, reason, written_by, said_at)
                        values (:id, :branch, :window, :decision, :person, :reason, :by, :at)
                        """)
                .param("id", Ids.next())
                .param("branch", window.branchId())
                .param("window", window.id())
                .param("decision", go.decision().name())
                .param("person", go.person())
                .param("reason", go.reason())
                .param("by", go.by())
                .param("at", OffsetDateTime.ofInstant(go.at(), ZoneOffset.UTC))
                .update();
    }
}
