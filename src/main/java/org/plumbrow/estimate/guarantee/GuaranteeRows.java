package org.plumbrow.estimate.guarantee;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Types;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/** Terms of guarantees as they are kept. */
@Component
class GuaranteeRows {

    private static final String TERMS = "select * from guarantee_terms where ";

    private final JdbcClient jdbc;

    GuaranteeRows(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** Nothing kept has the version -1. */
    record Kept(UUID projectId, long version, PromiseTerms terms) {}

    Optional<Kept> of(UUID projectId) {
        return jdbc.sql(TERMS + "project_id = ?")
                .param(projectId)
                .query(GuaranteeRows::kept)
                .optional();
    }

    Map<UUID, PromiseTerms> ofBranch(UUID branchId) {
        Map<UUID, PromiseTerms> all = new HashMap<>();
        jdbc.sql(TERMS + "branch_id = ?")
                .param(branchId)
                .query(GuaranteeRows::kept)
                .list()
                .forEach(kept -> all.put(kept.projectId(), kept.terms()));
        return all;
    }

    /** @return false if somebody was faster */
    boolean keep(UUID projectId, UUID branchId, long version, PromiseTerms terms) {
        return jdbc.sql("""
                        insert into guarantee_terms as t (project_id, branch_id, rate_usd_per_kwh, rate_grows_percent, years,
                               settled_years, promise_fades_percent, system_fades_percent, free_percent, carries_weather,
                               keeps_surplus, begins_on)
                        select :project, :branch, :rate, :grows, :years, :settled, :fades, :systemFades, :free, :carries,
                               :surplus, :begins
                         where :version = -1 or exists (select 1 from guarantee_terms where project_id = :project)
                        on conflict (project_id) do update
                           set rate_usd_per_kwh = excluded.rate_usd_per_kwh,
                               rate_grows_percent = excluded.rate_grows_percent, years = excluded.years,
                               settled_years = excluded.settled_years,
                               promise_fades_percent = excluded.promise_fades_percent,
                               system_fades_percent = excluded.system_fades_percent,
                               free_percent = excluded.free_percent, carries_weather = excluded.carries_weather,
                               keeps_surplus = excluded.keeps_surplus, begins_on = excluded.begins_on,
                               version = t.version + 1
                         where t.version = :version
                        """)
                        .param("project", projectId)
                        .param("branch", branchId)
                        .param("version", version)
                        .param("rate", terms.rateUsd())
                        .param("grows", terms.rateGrowsPercent())
                        .param("years", terms.years())
                        .param("settled", terms.settledYears())
                        .param("fades", terms.fadesPercent())
                        .param("systemFades", terms.systemFadesPercent())
                        .param("free", terms.freePercent())
                        .param("carries", terms.carriesWeather())
                        .param("surplus", terms.keepsSurplus())
                        .param("begins", terms.beginsOn(), Types.DATE)
                        .update()
                == 1;
    }

    private static Kept kept(ResultSet row, int number) throws SQLException {
        return new Kept(
                row.getObject("project_id", UUID.class),
                row.getLong("version"),
                new PromiseTerms(
                        row.getDouble("rate_usd_per_kwh"),
                        row.getDouble("rate_grows_percent"),
                        row.getInt("years"),
                        row.getInt("settled_years"),
                        row.getDouble("promise_fades_percent"),
                        row.getDouble("system_fades_percent"),
                        row.getDouble("free_percent"),
                        row.getBoolean("carries_weather"),
                        row.getBoolean("keeps_surplus"),
                        row.getObject("begins_on", LocalDate.class)));
    }
}
