package org.plumbrow.project;

import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;
import java.util.UUID;
import org.plumbrow.web.Actor;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Propagation;
import org.springframework.transaction.annotation.Transactional;
import tools.jackson.databind.json.JsonMapper;

/** Appends to a project's journal, in the transaction of the change: no line without its change, no change without its line. */
@Service
public class Journal {

    private static final String LINE = """
            insert into project_journal (project_id, number, branch_id, kind, sentence, facts, at, by_person_id, by_name,
                                         previous_hash, hash)
            values (?, ?, ?, ?, ?, ?, ?, cast(? as uuid), ?, ?, ?)
            """;

    private final JdbcClient jdbc;
    private final JdbcTemplate batches;
    private final JsonMapper json;
    private final ApplicationEventPublisher events;

    Journal(JdbcClient jdbc, JdbcTemplate batches, JsonMapper json, ApplicationEventPublisher events) {
        this.jdbc = jdbc;
        this.batches = batches;
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
        return append(List.of(event), by, at);
    }

    /**
     * As {@link #append(JournalEvent, Actor, Instant)} for several lines of one project, in three statements.
     *
     * @return the last line's number
     */
    @Transactional(propagation = Propagation.MANDATORY)
    public int append(List<? extends JournalEvent> happened, Actor by, Instant at) {
        UUID projectId = happened.get(0).projectId();
        Head head = lockedHead(projectId);
        List<Object[]> rows = new ArrayList<>();
        byte[] previous = head.hash;
        for (JournalEvent event : happened) {
            if (!event.projectId().equals(projectId)) {
                throw new IllegalArgumentException("lines of several projects are several chains");
            }
            ChainLink link = link(event, head.lines + rows.size() + 1, by, at);
            byte[] hash = link.hashAfter(previous);
            rows.add(row(link, head.branchId, previous, hash));
            previous = hash;
        }
        batches.batchUpdate(LINE, rows);
        int lines = head.lines + rows.size();
        jdbc.sql("update project_journal_head set lines = :lines, hash = :hash where project_id = :project")
                .param("lines", lines)
                .param("hash", previous)
                .param("project", projectId)
                .update();
        happened.forEach(events::publishEvent);
        return lines;
    }

    private ChainLink link(JournalEvent event, int number, Actor by, Instant at) {
        return new ChainLink(
                event.projectId(),
                number,
                event.kind(),
                event.sentence(),
                json.writeValueAsString(new TreeMap<>(event.facts())),
                at.truncatedTo(ChronoUnit.MICROS),
                by.personId(),
                by.name());
    }

    private static Object[] row(ChainLink link, UUID branchId, byte[] previous, byte[] hash) {
        return new Object[] {
            link.projectId(),
            link.number(),
            branchId,
            link.kind(),
            link.sentence(),
            link.facts(),
            OffsetDateTime.ofInstant(link.at(), ZoneOffset.UTC),
            link.byPersonId() == null ? null : link.byPersonId().toString(),
            link.byName(),
            previous,
            hash
        };
    }

    /**
     * Waits until it is this transaction's turn at the project; it keeps the turn until it ends. Whoever reads and then
     * changes a project, or writes its row of the list, asks for the turn first: in one order nobody locks another out.
     */
    @Transactional(propagation = Propagation.MANDATORY)
    public void inTurn(UUID projectId) {
        jdbc.sql("select lines from project_journal_head where project_id = ? for update")
                .param(projectId)
                .query(Integer.class)
                .optional();
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
}
