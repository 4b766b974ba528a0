package org.plumbrow.estimate.site;

import java.sql.Array;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Clock;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;
import tools.jackson.databind.json.JsonMapper;

/** What a project's counted meters together come to, as it was worked out at the last change. */
@Component
class UseYears {

    private final JdbcClient jdbc;
    private final JsonMapper json;
    private final Clock clock;

    UseYears(JdbcClient jdbc, JsonMapper json, Clock clock) {
        this.jdbc = jdbc;
        this.json = json;
        this.clock = clock;
    }

    /**
     * @param kwhByMonth January to December; null for a month that is missing
     * @param knownShareByMonth of each month's hours, the least of all meters
     * @param said gaps, estimates, what was filled
     * @param hourly whether use is known hour by hour
     */
    record SiteUse(
            List<@Nullable Double> kwhByMonth, List<Double> knownShareByMonth, List<String> said, boolean hourly) {

        boolean isWhole() {
            return kwhByMonth.stream().allMatch(java.util.Objects::nonNull);
        }

        @Nullable
        Double kwhOfYear() {
            return isWhole() ? kwhByMonth.stream().mapToDouble(each -> each).sum() : null;
        }

        /** 0 for a month that is missing. */
        List<Double> kwhOrZero() {
            return kwhByMonth.stream().map(each -> each == null ? 0.0 : each).toList();
        }
    }

    Optional<SiteUse> of(UUID projectId) {
        return jdbc.sql("select year from project_use where project_id = ?")
                .param(projectId)
                .query(this::use)
                .optional();
    }

    record OfProject(UUID projectId, SiteUse use) {}

    List<OfProject> ofBranch(UUID branchId) {
        return jdbc.sql("select project_id, year from project_use where branch_id = ?")
                .param(branchId)
                .query((row, n) -> new OfProject(row.getObject("project_id", UUID.class), use(row, n)))
                .list();
    }

    Optional<double[]> hours(UUID projectId) {
        return jdbc.sql("select hours_kwh from project_use where project_id = ? and hours_kwh is not null")
                .param(projectId)
                .query((row, n) -> doubles(row.getArray("hours_kwh")))
                .optional();
    }

    void keep(UUID projectId, UUID branchId, SiteUse use, double @Nullable [] hours) {
        jdbc.sql("""
                insert into project_use (project_id, branch_id, year, hours_kwh, worked_at)
                values (:project, :branch, cast(:year as jsonb), cast(:hours as double precision[]), :at)
                on conflict (project_id) do update
                   set year = excluded.year, hours_kwh = excluded.hours_kwh, worked_at = excluded.worked_at
                """)
                .param("project", projectId)
                .param("branch", branchId)
                .param("year", json.writeValueAsString(use))
                .param("hours", hours == null ? null : braced(hours), java.sql.Types.VARCHAR)
                .param("at", OffsetDateTime.ofInstant(clock.instant(), ZoneOffset.UTC))
                .update();
    }

    void drop(UUID projectId) {
        jdbc.sql("delete from project_use where project_id = ?")
                .param(projectId)
                .update();
    }

    private SiteUse use(ResultSet row, int number) throws SQLException {
        return json.readValue(row.getString("year"), SiteUse.class);
    }

    private static String braced(double[] hours) {
        String inside = Arrays.toString(hours);
        return "{" + inside.substring(1, inside.length() - 1) + "}";
    }

    private static double[] doubles(Array array) throws SQLException {
        return Arrays.stream((Double[]) array.getArray())
                .mapToDouble(Double::doubleValue)
                .toArray();
    }
}
