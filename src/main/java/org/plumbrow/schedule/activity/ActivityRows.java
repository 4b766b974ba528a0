package org.plumbrow.schedule.activity;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Timestamp;
import java.time.LocalDate;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.plumbrow.calc.calendar.Half;
import org.plumbrow.calc.calendar.HalfDay;
import org.plumbrow.calc.duration.ActivityCode;
import org.plumbrow.calc.duration.EquipmentKind;
import org.plumbrow.calc.duration.ProjectActivity;
import org.plumbrow.calc.duration.Spread;
import org.plumbrow.database.Ids;
import org.plumbrow.project.Stage;
import org.plumbrow.schedule.activity.ActivityRow.By;
import org.plumbrow.schedule.activity.ActivityRow.Counting;
import org.springframework.jdbc.core.namedparam.MapSqlParameterSource;
import org.springframework.jdbc.core.namedparam.NamedParameterJdbcTemplate;
import org.springframework.stereotype.Repository;

/** Activities in bulk: read for a whole branch at once, and the derived part written without touching what people did. */
@Repository
class ActivityRows {

    private static final String UPSERT = """
            insert into activity (id, version, branch_id, project_id, key, code, position, words, work, low_days,
                                  typical_days, high_days, wait_counting, people, equipment, stage)
            values (:id, 0, :branch, :project, :key, :code, :position, :words, :work, :low, :typical, :high, :counting,
                    :people, :equipment, :stage)
            on conflict on constraint activity_once_per_project do update
               set code = excluded.code, position = excluded.position, words = excluded.words, work = excluded.work,
                   low_days = excluded.low_days, typical_days = excluded.typical_days, high_days = excluded.high_days,
                   wait_counting = excluded.wait_counting, people = excluded.people, equipment = excluded.equipment,
                   stage = excluded.stage, dropped = false
            """;
    private static final String DONE_WITH_STAGE = """
            update activity
               set started_on = coalesce(started_on, :day), started_half = coalesce(started_half, 'MORNING'),
                   finished_on = greatest(coalesce(started_on, :day), :day), finished_half = 'AFTERNOON',
                   done_with_stage = :stage
             where project_id = :project and stage = :stage and finished_on is null and not dropped
            """;

    private final NamedParameterJdbcTemplate jdbc;

    ActivityRows(NamedParameterJdbcTemplate jdbc) {
        this.jdbc = jdbc;
    }

    /** In the order of the work; without those that were dropped. */
    List<ActivityRow> of(Collection<UUID> projectIds) {
        return projectIds.isEmpty()
                ? List.of()
                : jdbc.query(
                        "select * from activity where project_id in (:projects) and not dropped order by project_id, position",
                        new MapSqlParameterSource("projects", projectIds),
                        ActivityRows::row);
    }

    List<ActivityRow> byIds(Collection<UUID> ids) {
        return ids.isEmpty()
                ? List.of()
                : jdbc.query(
                        "select * from activity where id in (:ids)",
                        new MapSqlParameterSource("ids", ids),
                        ActivityRows::row);
    }

    void write(UUID branchId, UUID projectId, List<ProjectActivity> derived) {
        MapSqlParameterSource[] rows = new MapSqlParameterSource[derived.size()];
        for (int position = 0; position < rows.length; position++) {
            rows[position] = parameters(derived.get(position), position)
                    .addValue("branch", branchId)
                    .addValue("project", projectId);
        }
        jdbc.batchUpdate(UPSERT, rows);
        List<String> keys = derived.stream().map(ProjectActivity::key).collect(Collectors.toList());
        keys.add("");
        jdbc.update(
                "update activity set dropped = true where project_id = :project and key not in (:keys) and not dropped",
                new MapSqlParameterSource("project", projectId).addValue("keys", keys));
    }

    private static MapSqlParameterSource parameters(ProjectActivity derived, int position) {
        return new MapSqlParameterSource("id", Ids.next())
                .addValue("key", derived.key())
                .addValue("code", derived.code().name())
                .addValue("position", position)
                .addValue("words", derived.words())
                .addValue("work", derived.kind().name())
                .addValue("low", derived.days().low())
                .addValue("typical", derived.days().typical())
                .addValue("high", derived.days().high())
                .addValue("counting", counting(derived).map(Counting::name).orElse(null))
                .addValue("people", derived.crewSize())
                .addValue("equipment", equipment(derived))
                .addValue("stage", stage(derived.code()).name());
    }

    /** What the stage says is done is done on the day on which the stage was reached. */
    void doneWithStage(UUID projectId, Stage stage, LocalDate reachedOn) {
        jdbc.update(
                DONE_WITH_STAGE,
                new MapSqlParameterSource("project", projectId)
                        .addValue("stage", stage.name())
                        .addValue("day", reachedOn));
    }

    /** A project that went back has again to do what only its stage said was done. */
    void openAgain(UUID projectId, Collection<Stage> stagesNotReached) {
        jdbc.update(
                """
                update activity
                   set started_on = null, started_half = null, finished_on = null, finished_half = null,
                       done_with_stage = null
                 where project_id = :project and done_with_stage in (:stages)
                """,
                new MapSqlParameterSource("project", projectId)
                        .addValue(
                                "stages",
                                stagesNotReached.stream().map(Stage::name).toList()));
    }

    static ActivityRow unstored(UUID id, UUID projectId, ProjectActivity derived, int position) {
        return new ActivityRow(
                id,
                -1,
                projectId,
                derived.key(),
                derived.code(),
                position,
                derived.words(),
                derived.days(),
                counting(derived),
                derived.crewSize(),
                equipment(derived),
                false,
                Recorded.NOTHING,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty());
    }

    static Stage stage(ActivityCode code) {
        return ActivityStageTable.STAGES.getOrDefault(code, Stage.INSTALLED);
    }

    private static Optional<Counting> counting(ProjectActivity derived) {
        if (derived.kind() != ActivityCode.Kind.WAIT) {
            return Optional.empty();
        }
        return Optional.of(
                switch (derived.dayKind()) {
                    case CALENDAR -> Counting.CALENDAR;
                    case WORKING ->
                        switch (derived.code()) {
                            case INTERCONNECTION, AGREEMENT, CUTOVER_APPOINTMENT, PERMISSION -> Counting.UTILITY;
                            default -> Counting.BRANCH;
                        };
                });
    }

    private static String equipment(ProjectActivity derived) {
        return derived.equipment().keySet().stream()
                .sorted()
                .map(EquipmentKind::words)
                .collect(Collectors.joining(", "));
    }

    private static ActivityRow row(ResultSet row, int number) throws SQLException {
        return new ActivityRow(
                row.getObject("id", UUID.class),
                row.getLong("version"),
                row.getObject("project_id", UUID.class),
                row.getString("key"),
                ActivityCode.valueOf(row.getString("code")),
                row.getInt("position"),
                row.getString("words"),
                new Spread(row.getDouble("low_days"), row.getDouble("typical_days"), row.getDouble("high_days")),
                Optional.ofNullable(row.getString("wait_counting")).map(Counting::valueOf),
                row.getInt("people"),
                row.getString("equipment"),
                row.getBoolean("dropped"),
                recorded(row),
                Optional.ofNullable(row.getString("done_with_stage")).map(Stage::valueOf),
                by(row, "recorded"),
                pin(row),
                by(row, "pinned"));
    }

    private static Recorded recorded(ResultSet row) throws SQLException {
        return new Recorded(
                halfDay(row, "started"),
                halfDay(row, "finished"),
                id(row, "done_by_crew_id"),
                Optional.ofNullable((Integer) row.getObject("half_days_left")),
                Optional.ofNullable(row.getObject("answer_expected", LocalDate.class)));
    }

    private static Optional<HalfDay> halfDay(ResultSet row, String name) throws SQLException {
        LocalDate day = row.getObject(name + "_on", LocalDate.class);
        return day == null
                ? Optional.empty()
                : Optional.of(new HalfDay(day, Half.valueOf(row.getString(name + "_half"))));
    }

    private static Optional<By> by(ResultSet row, String name) throws SQLException {
        @Nullable Timestamp at = row.getTimestamp(name + "_at");
        return at == null ? Optional.empty() : Optional.of(new By(row.getString(name + "_by"), at.toInstant()));
    }

    private static Optional<Pin> pin(ResultSet row) throws SQLException {
        Optional<HalfDay> start = halfDay(row, "pinned");
        return start.isEmpty()
                ? Optional.empty()
                : Optional.of(new Pin(start.get(), id(row, "pinned_crew_id"), row.getString("pin_reason")));
    }

    private static Optional<UUID> id(ResultSet row, String name) throws SQLException {
        return Optional.ofNullable(row.getObject(name, UUID.class));
    }
}
