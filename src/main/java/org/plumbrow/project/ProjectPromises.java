package org.plumbrow.project;

import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.plumbrow.database.Ids;
import org.plumbrow.web.Actor;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** Promises of a project: each is a row, the newest counts, none is ever changed. */
@Repository
class ProjectPromises {

    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("EEE, MMM d, yyyy", Locale.US);

    private final JdbcClient jdbc;
    private final Journal journal;

    ProjectPromises(JdbcClient jdbc, Journal journal) {
        this.jdbc = jdbc;
        this.journal = journal;
    }

    int add(UUID projectId, UUID branchId, NewProject.NewPromise made, Actor by, Instant at) {
        List<ProjectFacts.Promise> history = history(projectId);
        Optional<ProjectFacts.Promise> before = history.stream().findFirst();
        jdbc.sql("""
                insert into project_promise (id, branch_id, project_id, position, milestone, promised_on, tolerance_days,
                                             promised_by, reason, at, by_name)
                values (:id, :branch, :project, :position, :milestone, :day, :tolerance, :promisedBy, :reason, :at, :by)
                """)
                .param("id", Ids.next())
                .param("branch", branchId)
                .param("project", projectId)
                .param("position", history.size() + 1)
                .param("milestone", made.milestone().name())
                .param("day", made.date())
                .param("tolerance", made.toleranceDays())
                .param("promisedBy", made.promisedBy())
                .param("reason", made.reason())
                .param("at", OffsetDateTime.ofInstant(at, ZoneOffset.UTC))
                .param("by", by.name())
                .update();
        return journal.append(event(projectId, before, made), by, at);
    }

    /** Newest first. */
    List<ProjectFacts.Promise> history(UUID projectId) {
        return jdbc.sql("""
                select id, milestone, promised_on as date, tolerance_days, promised_by, reason, at, by_name as recorded_by
                  from project_promise where project_id = ? order by position desc
                """).param(projectId).query(ProjectFacts.Promise.class).list();
    }

    private static JournalEvent event(
            UUID projectId, Optional<ProjectFacts.Promise> before, NewProject.NewPromise made) {
        Map<String, String> facts = new LinkedHashMap<>();
        before.ifPresent(promise -> {
            facts.put("milestone.from", promise.milestone().name());
            facts.put("date.from", promise.date().toString());
            facts.put("toleranceDays.from", Integer.toString(promise.toleranceDays()));
        });
        facts.put("milestone.to", made.milestone().name());
        facts.put("date.to", made.date().toString());
        facts.put("toleranceDays.to", Integer.toString(made.toleranceDays()));
        facts.put("promisedBy", made.promisedBy());
        String was = before.map(
                        promise -> " Before: " + promise.milestone().words() + ", " + DAY.format(promise.date()) + ".")
                .orElse("");
        String why = made.reason().isBlank() ? "" : " Reason: " + made.reason();
        return JournalEvent.of(
                projectId,
                "promise.made",
                "Promise: " + made.milestone().words() + ", " + DAY.format(made.date()) + ", made by "
                        + made.promisedBy() + "." + was + why,
                facts);
    }
}
