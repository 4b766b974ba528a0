package org.plumbrow.project;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.Collection;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.plumbrow.calc.duration.Milestone;
import org.plumbrow.calc.duration.Mounting;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** Reads whole projects in three queries, however many they are. */
@Repository
class ProjectRows {

    private static final String PROJECTS = """
            select p.*, s.*, c.*, who.name as customer,
                   pr.id as promise_id, pr.milestone, pr.promised_on, pr.tolerance_days, pr.promised_by,
                   pr.reason as promise_reason, pr.at as promise_at, pr.by_name as promise_by
              from project p
              join project_site s on s.project_id = p.id
              join project_contract c on c.project_id = p.id
              left join project_contact who on who.project_id = p.id and who.kind = 'CUSTOMER' and who.ended_at is null
              left join lateral (select * from project_promise x where x.project_id = p.id
                                  order by x.position desc limit 1) pr on true
             where\s""";

    private final JdbcClient jdbc;

    ProjectRows(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** @return those of the ids that are within this scope, by number */
    List<ProjectFacts> ofIds(Collection<UUID> ids) {
        if (ids.isEmpty()) {
            return List.of();
        }
        return read("p.id in (:ids)", Map.of("ids", ids));
    }

    /** @return the projects of a branch that are in the plan, by number */
    List<ProjectFacts> inThePlan(UUID branchId) {
        return read(
                "p.branch_id = :branch and p.standing = 'OPEN' and p.stage is not null and p.stage <> 'COMMISSIONED'",
                Map.of("branch", branchId));
    }

    private List<ProjectFacts> read(String which, Map<String, ?> values) {
        List<ProjectFacts> bare = jdbc.sql(PROJECTS + which + " order by p.number_year, p.running_number")
                .params(values)
                .query(ProjectRows::project)
                .list();
        if (bare.isEmpty()) {
            return bare;
        }
        List<UUID> ids = bare.stream().map(ProjectFacts::id).toList();
        Map<UUID, List<ProjectFacts.ArrayFacts>> arrays = arrays(ids);
        Map<UUID, Map<Duty, ProjectFacts.InCharge>> people = people(ids);
        return bare.stream()
                .map(project -> whole(
                        project,
                        arrays.getOrDefault(project.id(), List.of()),
                        people.getOrDefault(project.id(), Map.of())))
                .toList();
    }

    private Map<UUID, List<ProjectFacts.ArrayFacts>> arrays(List<UUID> ids) {
        Map<UUID, List<ProjectFacts.ArrayFacts>> arrays = new HashMap<>();
        jdbc.sql("select * from project_array where project_id in (:ids) order by project_id, position")
                .param("ids", ids)
                .query(row -> {
                    arrays.computeIfAbsent(id(row, "project_id"), key -> new java.util.ArrayList<>())
                            .add(array(row));
                });
        return arrays;
    }

    private Map<UUID, Map<Duty, ProjectFacts.InCharge>> people(List<UUID> ids) {
        Map<UUID, Map<Duty, ProjectFacts.InCharge>> people = new HashMap<>();
        jdbc.sql("select * from project_duty where project_id in (:ids)")
                .param("ids", ids)
                .query(row -> {
                    people.computeIfAbsent(id(row, "project_id"), key -> new EnumMap<>(Duty.class))
                            .put(
                                    Duty.valueOf(row.getString("duty")),
                                    new ProjectFacts.InCharge(
                                            row.getObject("person_id", UUID.class), row.getString("name")));
                });
        return people;
    }

    private static ProjectFacts project(ResultSet row, int number) throws SQLException {
        String stage = row.getString("stage");
        String customer = row.getString("customer");
        return new ProjectFacts(
                id(row, "id"),
                id(row, "branch_id"),
                row.getString("number"),
                row.getString("name"),
                stage == null ? null : Stage.valueOf(stage),
                Standing.valueOf(row.getString("standing")),
                row.getInt("weight"),
                row.getObject("created_at", OffsetDateTime.class).toInstant(),
                customer == null ? "" : customer,
                site(row),
                contract(row),
                promise(row),
                Map.of());
    }

    private static ProjectFacts.Site site(ResultSet row) throws SQLException {
        return new ProjectFacts.Site(
                row.getString("street"),
                row.getString("town"),
                row.getString("state"),
                row.getString("zip"),
                row.getBigDecimal("latitude_deg"),
                row.getBigDecimal("longitude_deg"),
                ProjectSite.loadsIn(row.getString("loads")),
                row.getBoolean("generator"),
                row.getBoolean("three_phase"),
                row.getBoolean("supply_side_tap"),
                row.getObject("utility_id", UUID.class),
                row.getObject("permit_office_id", UUID.class),
                ProjectSite.metersIn(row.getString("meter_numbers")));
    }

    private static ProjectFacts.Contract contract(ResultSet row) throws SQLException {
        return new ProjectFacts.Contract(
                row.getBigDecimal("system_kw_dc"),
                row.getBigDecimal("system_kw_ac"),
                List.of(),
                whole(row, "inverters"),
                row.getBigDecimal("inverter_kw_ac"),
                whole(row, "posts"),
                whole(row, "strings"),
                whole(row, "trench_ft"),
                whole(row, "bore_ft"),
                whole(row, "guaranteed_kwh_per_year"),
                row.getBigDecimal("price_usd"));
    }

    private static ProjectFacts.@Nullable Promise promise(ResultSet row) throws SQLException {
        UUID id = row.getObject("promise_id", UUID.class);
        if (id == null) {
            return null;
        }
        return new ProjectFacts.Promise(
                id,
                Milestone.valueOf(row.getString("milestone")),
                row.getObject("promised_on", LocalDate.class),
                row.getInt("tolerance_days"),
                row.getString("promised_by"),
                row.getString("promise_reason"),
                row.getObject("promise_at", OffsetDateTime.class).toInstant(),
                row.getString("promise_by"));
    }

    private static ProjectFacts.ArrayFacts array(ResultSet row) throws SQLException {
        return new ProjectFacts.ArrayFacts(
                Mounting.valueOf(row.getString("mounting")),
                whole(row, "modules"),
                row.getBigDecimal("module_w"),
                row.getBigDecimal("tilt_deg"),
                row.getBigDecimal("azimuth_deg"));
    }

    private static ProjectFacts whole(
            ProjectFacts bare, List<ProjectFacts.ArrayFacts> arrays, Map<Duty, ProjectFacts.InCharge> people) {
        ProjectFacts.Contract c = bare.contract();
        ProjectFacts.Contract contract = new ProjectFacts.Contract(
                c.systemKwDc(),
                c.systemKwAc(),
                arrays,
                c.inverters(),
                c.inverterKwAc(),
                c.posts(),
                c.strings(),
                c.trenchFt(),
                c.boreFt(),
                c.guaranteedKwhPerYear(),
                c.priceUsd());
        return new ProjectFacts(
                bare.id(),
                bare.branchId(),
                bare.number(),
                bare.name(),
                bare.stage(),
                bare.standing(),
                bare.weight(),
                bare.createdAt(),
                bare.customer(),
                bare.site(),
                contract,
                bare.promise(),
                people);
    }

    private static @Nullable Integer whole(ResultSet row, String column) throws SQLException {
        int value = row.getInt(column);
        return row.wasNull() ? null : value;
    }

    private static UUID id(ResultSet row, String column) throws SQLException {
        return row.getObject(column, UUID.class);
    }
}
