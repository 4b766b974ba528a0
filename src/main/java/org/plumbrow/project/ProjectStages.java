package org.plumbrow.project;

import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.Collections;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.plumbrow.database.Ids;
import org.plumbrow.database.ReadOnce;
import org.plumbrow.web.Actor;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Propagation;
import org.springframework.transaction.annotation.Transactional;

/**
 * Moves a project from stage to stage. Whether the gate is open is the gate's to judge, in the same transaction: this
 * only keeps the order and what is written about it.
 */
@Service
@Transactional(propagation = Propagation.MANDATORY)
public class ProjectStages {

    private final ProjectParts parts;
    private final ProjectLines lines;
    private final Journal journal;
    private final JdbcClient jdbc;
    private final Clock clock;
    private final ApplicationEventPublisher events;

    ProjectStages(
            ProjectParts parts,
            ProjectLines lines,
            Journal journal,
            JdbcClient jdbc,
            Clock clock,
            ApplicationEventPublisher events) {
        this.parts = parts;
        this.lines = lines;
        this.journal = journal;
        this.jdbc = jdbc;
        this.clock = clock;
        this.events = events;
    }

    /**
     * @param reachedOn the day as people count it, which may be earlier than today
     * @throws IllegalArgumentException if it is not the next stage
     * @throws org.springframework.dao.OptimisticLockingFailureException at the end, if somebody moved it meanwhile
     */
    public void pass(UUID projectId, Stage next, LocalDate reachedOn, Actor by) {
        pass(projectId, next, reachedOn, by, clock.instant());
    }

    /** As {@link #pass(UUID, Stage, LocalDate, Actor)} at a moment that the caller names: for the demo's past. */
    public void pass(UUID projectId, Stage next, LocalDate reachedOn, Actor by, Instant at) {
        Project project = parts.project(projectId);
        Stage from = project.stage();
        project.reach(next);
        record(project, next, reachedOn, by, at, false);
        append(
                project,
                "gate.passed",
                "Gate passed: " + Stage.wordsOf(from) + " to " + next.words() + ".",
                from,
                next,
                by,
                at);
    }

    /** Back to an earlier stage, or to none; what was reached after it no longer holds, and stays on record. */
    public void goBack(UUID projectId, @Nullable Stage to, String reason, Actor by) {
        Project project = parts.project(projectId);
        Stage from = project.stage();
        project.goBackTo(to);
        for (Stage undone : Stage.values()) {
            if (undone.isReachedAt(from) && !undone.isReachedAt(to)) {
                undo(projectId, undone, reason);
            }
        }
        append(
                project,
                "gate.back",
                "Went back: " + Stage.wordsOf(from) + " to " + Stage.wordsOf(to) + ". Reason: " + reason,
                from,
                to,
                by,
                clock.instant());
    }

    /** For a project brought in: every stage up to this one was reached before Plumbrow, without evidence here. */
    public void arrive(UUID projectId, Stage reached, LocalDate reachedOn, Actor by) {
        Project project = parts.project(projectId);
        project.arriveAt(reached);
        for (Stage stage : Stage.values()) {
            if (stage.isReachedAt(reached)) {
                record(project, stage, reachedOn, by, clock.instant(), true);
            }
        }
        append(
                project,
                "stage.arrived",
                "Reached before Plumbrow: " + reached.words() + ", " + reachedOn + ". No evidence is kept here.",
                null,
                reached,
                by,
                clock.instant());
    }

    /** When each stage was reached; the row of posts. */
    @Transactional(propagation = Propagation.SUPPORTS, readOnly = true)
    public Map<Stage, Reached> reached(UUID projectId) {
        return ReadOnce.of(new ReachedBy(projectId), () -> readReached(projectId));
    }

    private record ReachedBy(UUID projectId) {}

    private Map<Stage, Reached> readReached(UUID projectId) {
        Map<Stage, Reached> reached = new EnumMap<>(Stage.class);
        jdbc.sql("""
                select stage, reached_on, by_name, before_plumbrow from project_stage_reached
                 where project_id = ? and undone_at is null
                """).param(projectId).query(row -> {
            reached.put(
                    Stage.valueOf(row.getString("stage")),
                    new Reached(
                            row.getObject("reached_on", LocalDate.class),
                            row.getString("by_name"),
                            row.getBoolean("before_plumbrow")));
        });
        return Collections.unmodifiableMap(reached);
    }

    /** @param beforePlumbrow reached before the project was brought in: no evidence is kept here */
    public record Reached(LocalDate on, String byName, boolean beforePlumbrow) {}

    private void record(Project project, Stage stage, LocalDate on, Actor by, Instant at, boolean beforePlumbrow) {
        jdbc.sql("""
                insert into project_stage_reached (id, branch_id, project_id, stage, reached_on, at, by_name, before_plumbrow)
                values (?, ?, ?, ?, ?, ?, ?, ?)
                """)
                .params(
                        Ids.next(),
                        project.branchId(),
                        project.id(),
                        stage.name(),
                        on,
                        utc(at),
                        by.name(),
                        beforePlumbrow)
                .update();
    }

    private void undo(UUID projectId, Stage stage, String reason) {
        jdbc.sql("""
                update project_stage_reached set undone_at = ?, undone_reason = ?
                 where project_id = ? and stage = ? and undone_at is null
                """)
                .params(utc(clock.instant()), reason, projectId, stage.name())
                .update();
    }

    private void append(
            Project project,
            String kind,
            String sentence,
            @Nullable Stage from,
            @Nullable Stage to,
            Actor by,
            Instant at) {
        Map<String, String> facts = new LinkedHashMap<>();
        facts.put("stage.from", from == null ? "" : from.name());
        facts.put("stage.to", to == null ? "" : to.name());
        journal.append(JournalEvent.of(project.id(), kind, sentence, facts), by, at);
        parts.flush();
        lines.refresh(project.id());
        events.publishEvent(new ProjectChanged(project.id(), project.branchId()));
    }

    private static OffsetDateTime utc(Instant at) {
        return OffsetDateTime.ofInstant(at, ZoneOffset.UTC);
    }
}
