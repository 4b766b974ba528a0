package org.plumbrow.schedule.scenario;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Timestamp;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.plumbrow.calc.duration.Mounting;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** The stored scenarios. */
@Repository
class ScenarioRows {

    private final JdbcClient jdbc;

    ScenarioRows(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    List<Scenario> of(UUID branchId) {
        return jdbc.sql("select * from scenario where branch_id = :branch order by made_at, id")
                .param("branch", branchId)
                .query(ScenarioRows::scenario)
                .list();
    }

    Optional<Scenario> find(UUID id) {
        return jdbc.sql("select * from scenario where id = :id")
                .param("id", id)
                .query(ScenarioRows::scenario)
                .optional();
    }

    void add(UUID id, UUID branchId, ScenarioTerms terms, String by, Instant now) {
        of(terms, jdbc.sql("""
                        insert into scenario (id, branch_id, version, name, kind, crew_id, machine_id, first_day, days,
                                              mounting, kw_dc, made_at, made_by)
                        values (:id, :branch, 0, :name, :kind, :crew, :machine, :first, :days, :mounting, :kw, :now, :by)
                        """))
                .param("id", id)
                .param("branch", branchId)
                .param("now", Timestamp.from(now))
                .param("by", by)
                .update();
    }

    /** @return false if the version is another one by now */
    boolean change(UUID id, long version, ScenarioTerms terms) {
        return of(terms, jdbc.sql("""
                        update scenario set version = version + 1, name = :name, kind = :kind, crew_id = :crew,
                               machine_id = :machine, first_day = :first, days = :days, mounting = :mounting, kw_dc = :kw
                        where id = :id and version = :version
                        """))
                        .param("id", id)
                        .param("version", version)
                        .update()
                == 1;
    }

    /** @return false if the version is another one by now */
    boolean remove(UUID id, long version) {
        return jdbc.sql("delete from scenario where id = :id and version = :version")
                        .param("id", id)
                        .param("version", version)
                        .update()
                == 1;
    }

    private static JdbcClient.StatementSpec of(ScenarioTerms terms, JdbcClient.StatementSpec statement) {
        return statement
                .param("name", terms.name())
                .param("kind", terms.kind().name())
                .param("crew", terms.crewId(), java.sql.Types.OTHER)
                .param("machine", terms.machineId(), java.sql.Types.OTHER)
                .param("first", terms.firstDay(), java.sql.Types.DATE)
                .param("days", terms.days(), java.sql.Types.INTEGER)
                .param(
                        "mounting",
                        terms.mounting() == null ? null : terms.mounting().name(),
                        java.sql.Types.VARCHAR)
                .param("kw", terms.kwDc(), java.sql.Types.NUMERIC);
    }

    private static Scenario scenario(ResultSet row, int number) throws SQLException {
        String mounting = row.getString("mounting");
        return new Scenario(
                row.getObject("id", UUID.class),
                row.getObject("branch_id", UUID.class),
                row.getLong("version"),
                new ScenarioTerms(
                        row.getString("name"),
                        ScenarioKind.valueOf(row.getString("kind")),
                        row.getObject("crew_id", UUID.class),
                        row.getObject("machine_id", UUID.class),
                        row.getObject("first_day", LocalDate.class),
                        row.getObject("days", Integer.class),
                        mounting == null ? null : Mounting.valueOf(mounting),
                        row.getBigDecimal("kw_dc")),
                row.getString("made_by"));
    }
}
