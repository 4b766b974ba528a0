package org.plumbrow.estimate.site;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.plumbrow.estimate.EstimateFacts;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;
import tools.jackson.databind.json.JsonMapper;

/** Terms and results as they are kept. */
@Component
class YieldRows {

    private final JdbcClient jdbc;
    private final JsonMapper json;

    YieldRows(JdbcClient jdbc, JsonMapper json) {
        this.jdbc = jdbc;
        this.json = json;
    }

    /** @param version -1 while nobody has changed anything */
    record Kept(long version, @Nullable UUID weatherId, YieldTerms terms) {
        static final Kept NOTHING = new Kept(-1, null, YieldTerms.USUAL);
    }

    record Result(byte[] hash, EstimateFacts facts) {
        boolean isMadeFrom(byte[] inputs) {
            return Arrays.equals(hash, inputs);
        }
    }

    Kept terms(UUID projectId) {
        return jdbc.sql("select version, weather_id, terms from yield_setting where project_id = ?")
                .param(projectId)
                .query((row, n) -> new Kept(
                        row.getLong("version"),
                        row.getObject("weather_id", UUID.class),
                        json.readValue(row.getString("terms"), YieldTerms.class)))
                .optional()
                .orElse(Kept.NOTHING);
    }

    /** @return false if somebody was faster */
    boolean keep(UUID projectId, UUID branchId, long version, @Nullable UUID weatherId, YieldTerms terms) {
        return jdbc.sql("""
                        insert into yield_setting as s (project_id, branch_id, weather_id, terms)
                        select :project, :branch, :weather, cast(:terms as jsonb)
                         where :version = -1 or exists (select 1 from yield_setting where project_id = :project)
                        on conflict (project_id) do update
                           set weather_id = excluded.weather_id, terms = excluded.terms, version = s.version + 1
                         where s.version = :version
                        """)
                        .param("project", projectId)
                        .param("branch", branchId)
                        .param("weather", weatherId, java.sql.Types.OTHER)
                        .param("terms", json.writeValueAsString(terms))
                        .param("version", version)
                        .update()
                == 1;
    }

    Optional<Result> result(UUID projectId) {
        return jdbc.sql("select inputs_hash, result from estimate where project_id = ?")
                .param(projectId)
                .query(this::kept)
                .optional();
    }

    List<EstimateFacts> resultsOf(UUID branchId) {
        return jdbc
                .sql("select inputs_hash, result from estimate where branch_id = ? order by project_id")
                .param(branchId)
                .query(this::kept)
                .list()
                .stream()
                .map(Result::facts)
                .toList();
    }

    void keepResult(UUID branchId, byte[] hash, EstimateFacts facts, Instant at) {
        jdbc.sql("""
                insert into estimate (project_id, branch_id, inputs_hash, result, computed_at)
                values (:project, :branch, :hash, cast(:result as jsonb), :at)
                on conflict (project_id) do update
                   set inputs_hash = excluded.inputs_hash, result = excluded.result, computed_at = excluded.computed_at
                """)
                .param("project", facts.projectId())
                .param("branch", branchId)
                .param("hash", hash)
                .param("result", json.writeValueAsString(facts))
                .param("at", OffsetDateTime.ofInstant(at, ZoneOffset.UTC))
                .update();
    }

    void drop(UUID projectId) {
        jdbc.sql("delete from estimate where project_id = ?").param(projectId).update();
    }

    private Result kept(ResultSet row, int number) throws SQLException {
        return new Result(row.getBytes("inputs_hash"), json.readValue(row.getString("result"), EstimateFacts.class));
    }
}
