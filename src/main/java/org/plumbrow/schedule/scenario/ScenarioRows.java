package org.plumbrow.schedule.scenario;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Timestamp;
import java.sql.Types;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.plumbrow.calc.duration.Mounting;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** The stored scenarios, with what is otherwise in each. */
@Repository
class ScenarioRows {

    private static final String READ = """
            select s.id, s.branch_id, s.version, s.name, s.made_by,
                   c.id as change_id, c.kind, c.name as called, c.crew_id, c.machine_id, c.activity_id, c.first_day, c.days,
                   c.mounting, c.kw_dc
              from scenario s left join scenario_change c on c.scenario_id = s.id
            """;

    private final JdbcClient jdbc;

    ScenarioRows(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    List<Scenario> of(UUID branchId) {
        return together(jdbc.sql(READ + " where s.branch_id = ? order by s.made_at, s.id, c.position")
                .param(branchId)
                .query(ScenarioRows::read)
                .list());
    }

    Optional<Scenario> find(UUID id) {
        return together(jdbc.sql(READ + " where s.id = ? order by c.position")
                        .param(id)
                        .query(ScenarioRows::read)
                        .list())
                .stream()
                .findFirst();
    }

    void add(UUID id, UUID branchId, String name, String by, Instant now) {
        jdbc.sql("""
                        insert into scenario (id, branch_id, version, name, made_at, made_by)
                        values (:id, :branch, 0, :name, :now, :by)
                        """)
                .param("id", id)
                .param("branch", branchId)
                .param("name", name)
                .param("now", Timestamp.from(now))
                .param("by", by)
                .update();
    }

    /** @return false if the version is another one by now */
    boolean rename(UUID id, long version, String name) {
        return jdbc.sql("update scenario set version = version + 1, name = ? where id = ? and version = ?")
                        .params(name, id, version)
                        .update()
                == 1;
    }

    /** Whoever looks at an older state of the scenario is told. */
    void touch(UUID id) {
        jdbc.sql("update scenario set version = version + 1 where id = ?")
                .param(id)
                .update();
    }

    void addChange(UUID id, Scenario scenario, ScenarioTerms terms) {
        jdbc.sql("""
                        insert into scenario_change (id, branch_id, scenario_id, position, kind, name, crew_id, machine_id,
                                                     activity_id, first_day, days, mounting, kw_dc)
                        select :id, :branch, :scenario, coalesce(max(position), 0) + 1, :kind, :name, :crew, :machine,
                               :activity, :first, :days, :mounting, :kw
                          from scenario_change where scenario_id = :scenario
                        """)
                .param("id", id)
                .param("branch", scenario.branchId())
                .param("scenario", scenario.id())
                .param("kind", terms.kind().name())
                .param("name", terms.name())
                .param("crew", terms.crewId(), Types.OTHER)
                .param("machine", terms.machineId(), Types.OTHER)
                .param("activity", terms.activityId(), Types.OTHER)
                .param("first", terms.firstDay(), Types.DATE)
                .param("days", terms.days(), Types.INTEGER)
                .param(
                        "mounting",
                        terms.mounting() == null ? null : terms.mounting().name(),
                        Types.VARCHAR)
                .param("kw", terms.kwDc(), Types.NUMERIC)
                .update();
    }

    void removeChange(UUID id) {
        jdbc.sql("delete from scenario_change where id = ?").param(id).update();
    }

    /** @return false if the version is another one by now */
    boolean remove(UUID id, long version) {
        return jdbc.sql("delete from scenario where id = ? and version = ?")
                        .params(id, version)
                        .update()
                == 1;
    }

    /** A scenario with one of its changes, or with none. */
    private record Row(Scenario scenario, Scenario.@Nullable Change change) {}

    private static List<Scenario> together(List<Row> rows) {
        Map<UUID, Scenario> byId = new LinkedHashMap<>();
        for (Row row : rows) {
            Scenario scenario = byId.computeIfAbsent(row.scenario.id(), id -> row.scenario);
            if (row.change != null) {
                scenario.changes().add(row.change);
            }
        }
        return List.copyOf(byId.values());
    }

    private static Row read(ResultSet row, int number) throws SQLException {
        UUID change = row.getObject("change_id", UUID.class);
        return new Row(
                new Scenario(
                        row.getObject("id", UUID.class),
                        row.getObject("branch_id", UUID.class),
                        row.getLong("version"),
                        row.getString("name"),
                        new ArrayList<>(),
                        row.getString("made_by")),
                change == null ? null : new Scenario.Change(change, terms(row)));
    }

    private static ScenarioTerms terms(ResultSet row) throws SQLException {
        String mounting = row.getString("mounting");
        return new ScenarioTerms(
                ScenarioKind.valueOf(row.getString("kind")),
                row.getString("called"),
                row.getObject("crew_id", UUID.class),
                row.getObject("machine_id", UUID.class),
                row.getObject("activity_id", UUID.class),
                row.getObject("first_day", LocalDate.class),
                row.getObject("days", Integer.class),
                mounting == null ? null : Mounting.valueOf(mounting),
                row.getBigDecimal("kw_dc"));
    }
}
