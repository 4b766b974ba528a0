package org.plumbrow.estimate.site;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;
import tools.jackson.databind.json.JsonMapper;

/** The rows of the meters. */
@Component
class UseMeters {

    private static final String METER =
            "select id, branch_id, project_id, version, name, kind, typed, evidence_id, watt_hours, counted, reading,"
                    + " brought_at, brought_by from use_meter ";

    private final JdbcClient jdbc;
    private final JsonMapper json;

    UseMeters(JdbcClient jdbc, JsonMapper json) {
        this.jdbc = jdbc;
        this.json = json;
    }

    void insert(UseMeter meter) {
        jdbc.sql("""
                insert into use_meter (id, branch_id, project_id, name, kind, typed, evidence_id, watt_hours, counted, reading,
                       brought_at, brought_by)
                values (:id, :branch, :project, :name, :kind, cast(:typed as jsonb), :evidence, :wh, :counted,
                       cast(:reading as jsonb), :at, :by)
                """)
                .param("id", meter.id())
                .param("branch", meter.branchId())
                .param("project", meter.projectId())
                .param("name", meter.name())
                .param("kind", meter.kind().name())
                .param(
                        "typed",
                        meter.typed() == null ? null : json.writeValueAsString(meter.typed()),
                        java.sql.Types.VARCHAR)
                .param("evidence", meter.evidenceId(), java.sql.Types.OTHER)
                .param("wh", meter.wattHours())
                .param("counted", meter.counted())
                .param("reading", json.writeValueAsString(meter.reading()))
                .param("at", OffsetDateTime.ofInstant(meter.broughtAt(), ZoneOffset.UTC))
                .param("by", meter.broughtBy())
                .update();
    }

    /** @return false if somebody was faster */
    boolean correct(UUID id, long version, String name, UseMeter.TypedUse typed, UseMeter.Reading reading) {
        return jdbc.sql("update use_meter set name = ?, typed = cast(? as jsonb), reading = cast(? as jsonb),"
                                + " version = version + 1 where id = ? and version = ?")
                        .params(name, json.writeValueAsString(typed), json.writeValueAsString(reading), id, version)
                        .update()
                == 1;
    }

    void count(UUID id, boolean counted) {
        jdbc.sql("update use_meter set counted = ?, version = version + 1 where id = ?")
                .params(counted, id)
                .update();
    }

    void end(UUID id, @Nullable Instant at) {
        jdbc.sql("update use_meter set ended_at = ?, version = version + 1 where id = ?")
                .params(at == null ? null : OffsetDateTime.ofInstant(at, ZoneOffset.UTC), id)
                .update();
    }

    /** Those that are not taken away. */
    List<UseMeter> ofProject(UUID projectId) {
        return jdbc.sql(METER + "where project_id = ? and ended_at is null order by lower(name)")
                .param(projectId)
                .query(this::meter)
                .list();
    }

    Optional<UseMeter> find(UUID id) {
        return jdbc.sql(METER + "where id = ?").param(id).query(this::meter).optional();
    }

    private UseMeter meter(ResultSet row, int number) throws SQLException {
        String typed = row.getString("typed");
        return new UseMeter(
                row.getObject("id", UUID.class),
                row.getObject("branch_id", UUID.class),
                row.getObject("project_id", UUID.class),
                row.getLong("version"),
                row.getString("name"),
                UseMeter.Kind.valueOf(row.getString("kind")),
                typed == null ? null : json.readValue(typed, UseMeter.TypedUse.class),
                row.getObject("evidence_id", UUID.class),
                row.getBoolean("watt_hours"),
                row.getBoolean("counted"),
                json.readValue(row.getString("reading"), UseMeter.Reading.class),
                row.getObject("brought_at", OffsetDateTime.class).toInstant(),
                row.getString("brought_by"));
    }
}
