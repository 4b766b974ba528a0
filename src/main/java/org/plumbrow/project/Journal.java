package org.plumbrow.project;

import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.time.temporal.ChronoUnit;
import java.util.TreeMap;
import java.util.UUID;
import org.plumbrow.web.Actor;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Propagation;
import org.springframework.transaction.annotation.Transactional;
import tools.jackson.databind.json.JsonMapper;

/** Appends to a project's journal, in the transaction of the change: no line without its change, no change without its line. */
@Service
public class Journal {

    private final JdbcClient jdbc;
    private final JsonMapper json;
    private final ApplicationEventPublisher events;

    Journal(JdbcClient jdbc, JsonMapper json, ApplicationEventPublisher events) {
        this.jdbc = jdbc;
        this.json = json;
        this.events = events;
    }

    private record Head(UUID branchId, int lines, byte[] hash) {}

    /**
     * Writes the line behind all others of its project and tells the event to whoever listens in this transaction.
     * Lines of one project are written one after the other, whoever asks first.
     *
     * @return the line's number
     */
    @Transactional(propagation = Propagation.MANDATORY)
    public int append(JournalEvent event, Actor by, Instant at) {
        Head head = lockedHead(event.projectId());
        Instant toTheMicrosecond = at.truncatedTo(ChronoUnit.MICROS);
        String facts = json.writeValueAsString(new TreeMap<>(event.facts()));
        ChainLink link = new ChainLink(
                event.projectId(),
                head.lines + 1,
                event.kind(),
                event.sentence(),
                facts,
                toTheMicrosecond,
                by.personId(),
                by.name());
        byte[] hash = link.hashAfter(head.hash);
        insert(link, head, hash);
        jdbc.sql("update project_journal_head set lines = :lines, hash = :hash where project_id = :project")
                .param("lines", link.number())
                .param("hash", hash)
                .param("project", event.projectId())
                .update();
        events.publishEvent(event);
        return link.number();
    }

    /** The first line of a project has nothing before it. */
    void begin(UUID projectId, UUID branchId) {
        jdbc.sql("insert into project_journal_head (project_id, branch_id, lines, hash) values (?, ?, 0, ?)")
                .params(projectId, branchId, ChainLink.beginning())
                .update();
    }

    private Head lockedHead(UUID projectId) {
        return jdbc.sql("select branch_id, lines, hash from project_journal_head where project_id = ? for update")
                .param(projectId)
                .query((row, n) ->
                        new Head(row.getObject("branch_id", UUID.class), row.getInt("lines"), row.getBytes("hash")))
                .optional()
                .orElseThrow(() -> new IllegalArgumentException("no project " + projectId + " within this scope"));
    }

    private void insert(ChainLink link, Head head, byte[] hash) {
        jdbc.sql("""
                insert into project_journal (project_id, number, branch_id, kind, sentence, facts, at, by_person_id,
                                             by_name, previous_hash, hash)
                values (:project, :number, :branch, :kind, :sentence, :facts, :at, cast(:person as uuid), :name,
                        :previous, :hash)
                """)
                .param("project", link.projectId())
                .param("number", link.number())
                .param("branch", head.branchId)
                .param("kind", link.kind())
                .param("sentence", link.sentence())
                .param("facts", link.facts())
                .param("at", OffsetDateTime.ofInstant(link.at(), ZoneOffset.UTC))
                .param(
                        "person",
                        link.byPersonId() == null ? null : link.byPersonId().toString())
                .param("name", link.byName())
                .param("previous", head.hash)
                .param("hash", hash)
                .update();
    }
}
