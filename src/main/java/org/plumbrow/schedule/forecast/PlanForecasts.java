package org.plumbrow.schedule.forecast;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Timestamp;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.plumbrow.calc.duration.Milestone;
import org.plumbrow.database.ReadOnce;
import org.springframework.jdbc.core.namedparam.MapSqlParameterSource;
import org.springframework.jdbc.core.namedparam.NamedParameterJdbcTemplate;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;
import tools.jackson.databind.json.JsonMapper;

/** The forecasts of plans as they are stored. Callers have asked {@code Access}; the branch wall holds. */
@Repository
public class PlanForecasts {

    private static final String ADD = """
            insert into plan_forecast (plan_id, project_id, milestone, branch_id, even_chance, four_in_five,
                                       nineteen_in_twenty, kept_until, chance_kept, drivers, runs, made_at)
            values (:plan, :project, :milestone, :branch, :even, :four, :nineteen, :until, :chance,
                    cast(:drivers as jsonb), :runs, :now)
            """;

    private final JdbcClient jdbc;
    private final NamedParameterJdbcTemplate batch;
    private final JsonMapper json;

    PlanForecasts(JdbcClient jdbc, NamedParameterJdbcTemplate batch, JsonMapper json) {
        this.jdbc = jdbc;
        this.batch = batch;
        this.json = json;
    }

    /** The forecast of a plan, in place of the one before. */
    public void replace(UUID planId, UUID branchId, List<MilestoneForecast> forecasts) {
        jdbc.sql("delete from plan_forecast where plan_id = ?").param(planId).update();
        batch.batchUpdate(
                ADD,
                forecasts.stream()
                        .map(one -> values(one).addValue("plan", planId).addValue("branch", branchId))
                        .toArray(MapSqlParameterSource[]::new));
    }

    /** Of one project in a plan, in the order of the work. */
    public List<MilestoneForecast> of(UUID planId, UUID projectId) {
        return ReadOnce.of(
                new OfProject(planId, projectId),
                () -> jdbc
                        .sql("select * from plan_forecast where plan_id = ? and project_id = ?")
                        .params(planId, projectId)
                        .query(this::forecast)
                        .list()
                        .stream()
                        .sorted(java.util.Comparator.comparing(MilestoneForecast::milestone))
                        .toList());
    }

    private record OfProject(UUID planId, UUID projectId) {}

    /** Of each project of a plan the milestone that was promised. */
    public Map<UUID, MilestoneForecast> ofPromises(UUID planId) {
        Map<UUID, MilestoneForecast> promised = new HashMap<>();
        jdbc.sql("select * from plan_forecast where plan_id = ? and kept_until is not null")
                .param(planId)
                .query(this::forecast)
                .list()
                .forEach(forecast -> promised.put(forecast.projectId(), forecast));
        return promised;
    }

    private MapSqlParameterSource values(MilestoneForecast forecast) {
        Optional<MilestoneForecast.Kept> kept = forecast.kept();
        return new MapSqlParameterSource("project", forecast.projectId())
                .addValue("milestone", forecast.milestone().name())
                .addValue("even", forecast.evenChance())
                .addValue("four", forecast.fourInFive())
                .addValue("nineteen", forecast.nineteenInTwenty())
                .addValue("until", kept.map(MilestoneForecast.Kept::until).orElse(null))
                .addValue("chance", kept.map(MilestoneForecast.Kept::chance).orElse(null))
                .addValue("drivers", json.writeValueAsString(forecast.drivers()))
                .addValue("runs", forecast.runs())
                .addValue("now", Timestamp.from(forecast.madeAt()));
    }

    private MilestoneForecast forecast(ResultSet row, int number) throws SQLException {
        LocalDate until = row.getObject("kept_until", LocalDate.class);
        return new MilestoneForecast(
                row.getObject("project_id", UUID.class),
                Milestone.valueOf(row.getString("milestone")),
                row.getObject("even_chance", LocalDate.class),
                row.getObject("four_in_five", LocalDate.class),
                row.getObject("nineteen_in_twenty", LocalDate.class),
                kept(until, row.getDouble("chance_kept")),
                Arrays.asList(json.readValue(row.getString("drivers"), MilestoneForecast.DrivenBy[].class)),
                row.getInt("runs"),
                row.getTimestamp("made_at").toInstant());
    }

    private static Optional<MilestoneForecast.Kept> kept(@Nullable LocalDate until, double chance) {
        return until == null ? Optional.empty() : Optional.of(new MilestoneForecast.Kept(until, chance));
    }
}
