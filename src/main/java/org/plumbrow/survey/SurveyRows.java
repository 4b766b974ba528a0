package org.plumbrow.survey;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Clock;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Collection;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.plumbrow.branch.UtilityFacts;
import org.plumbrow.survey.SurveySheet.StoredPart;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;
import tools.jackson.core.type.TypeReference;
import tools.jackson.databind.json.JsonMapper;

/** The parts of surveys in the database. */
@Component
class SurveyRows {

    private static final TypeReference<Map<String, String>> READINGS = new TypeReference<>() {};

    private final JdbcClient jdbc;
    private final JsonMapper json;
    private final Clock clock;

    SurveyRows(JdbcClient jdbc, JsonMapper json, Clock clock) {
        this.jdbc = jdbc;
        this.json = json;
        this.clock = clock;
    }

    /** @param part null for a project in which nothing is recorded */
    private record Row(
            UUID projectId, int disconnectMostFt, @Nullable StoredPart part) {}

    SurveySheet of(UUID projectId) {
        return of(List.of(projectId)).getOrDefault(projectId, SurveySheet.EMPTY);
    }

    /** Sheets by project, of those that may be seen. One query. */
    Map<UUID, SurveySheet> of(Collection<UUID> projectIds) {
        if (projectIds.isEmpty()) {
            return Map.of();
        }
        List<Row> rows = jdbc.sql("""
                select p.id as project_id, u.disconnect_most_ft, s.part, s.version, s.readings, s.changed_at, s.changed_by
                  from project p
                  left join project_site t on t.project_id = p.id
                  left join utility u on u.id = t.utility_id
                  left join survey_part s on s.project_id = p.id
                 where p.id in (:projects)
                """)
                .param("projects", projectIds)
                .query((row, n) -> row(row))
                .list();
        Map<UUID, List<Row>> byProject = new HashMap<>();
        rows.forEach(row -> byProject
                .computeIfAbsent(row.projectId, id -> new ArrayList<>())
                .add(row));
        Map<UUID, SurveySheet> sheets = new HashMap<>();
        byProject.forEach((id, parts) -> sheets.put(id, sheet(parts)));
        return sheets;
    }

    private static SurveySheet sheet(List<Row> rows) {
        Map<SurveyPart, StoredPart> byPart = new EnumMap<>(SurveyPart.class);
        rows.forEach(row -> {
            if (row.part != null) {
                byPart.put(row.part.part(), row.part);
            }
        });
        return new SurveySheet(byPart, rows.get(0).disconnectMostFt);
    }

    private Row row(ResultSet row) throws SQLException {
        int disconnect = row.getInt("disconnect_most_ft");
        int mostFt = row.wasNull() ? UtilityFacts.USUAL_DISCONNECT_FT : disconnect;
        return new Row(
                row.getObject("project_id", UUID.class), mostFt, row.getString("part") == null ? null : stored(row));
    }

    private StoredPart stored(ResultSet row) throws SQLException {
        return new StoredPart(
                SurveyPart.valueOf(row.getString("part")),
                row.getLong("version"),
                new PartReadings(json.readValue(row.getString("readings"), READINGS)),
                row.getObject("changed_at", OffsetDateTime.class).toInstant(),
                row.getString("changed_by"));
    }

    /**
     * Writes a part behind the version that was opened, 0 where there was none.
     *
     * @return false if another version lies there by now
     */
    boolean write(UUID branchId, UUID projectId, StoredPart part) {
        OffsetDateTime at = at(part.changedAt());
        String readings = json.writeValueAsString(part.readings().values());
        if (part.version() == 1) {
            return jdbc.sql("""
                    insert into survey_part (project_id, part, branch_id, version, readings, changed_at, changed_by)
                    values (?, ?, ?, 1, cast(? as jsonb), ?, ?) on conflict on constraint survey_part_key do nothing
                    """)
                            .params(projectId, part.part().name(), branchId, readings, at, part.changedBy())
                            .update()
                    == 1;
        }
        return jdbc.sql("""
                update survey_part set version = version + 1, before = readings, readings = cast(? as jsonb), changed_at = ?, changed_by = ?
                 where project_id = ? and part = ? and version = ?
                """)
                        .params(
                                readings,
                                at,
                                part.changedBy(),
                                projectId,
                                part.part().name(),
                                part.version() - 1)
                        .update()
                == 1;
    }

    /** What stood in a part before its last change. */
    PartReadings before(UUID projectId, SurveyPart part) {
        return jdbc.sql("select before from survey_part where project_id = ? and part = ?")
                .params(projectId, part.name())
                .query(String.class)
                .optional()
                .map(written -> new PartReadings(json.readValue(written, READINGS)))
                .orElse(PartReadings.EMPTY);
    }

    Instant now() {
        return clock.instant().truncatedTo(ChronoUnit.MICROS);
    }

    static OffsetDateTime at(Instant instant) {
        return instant.atOffset(ZoneOffset.UTC);
    }
}
