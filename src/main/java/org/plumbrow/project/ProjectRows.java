package org.plumbrow.project;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.Collection;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.plumbrow.calc.duration.Milestone;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;
import tools.jackson.core.type.TypeReference;
import tools.jackson.databind.json.JsonMapper;

/** Reads whole projects, their arrays and the people in charge among them, in one query, however many they are. */
@Repository
class ProjectRows {

    private static final String PROJECTS = """
            select p.*, s.*, c.*, who.name as customer,
                   pr.id as promise_id, pr.milestone, pr.promised_on, pr.tolerance_days, pr.promised_by,
                   pr.reason as promise_reason, pr.at as promise_at, pr.by_name as promise_by,
                   (select jsonb_agg(jsonb_build_object('mounting', a.mounting, 'modules', a.modules, 'moduleW', a.module_w,
                                                        'tiltDeg', a.tilt_deg, 'azimuthDeg', a.azimuth_deg)
                                     order by a.position)
                      from project_array a where a.project_id = p.id) as arrays,
                   (select jsonb_object_agg(d.duty, jsonb_build_object('personId', d.person_id, 'name', d.name))
                      from project_duty d where d.project_id = p.id) as people
              from project p
              join project_site s on s.project_id = p.id
              join project_contract c on c.project_id = p.id
              left join project_contact who on who.project_id = p.id and who.kind = 'CUSTOMER' and who.ended_at is null
              left join lateral (select * from project_promise x where x.project_id = p.id
                                  order by x.position desc limit 1) pr on true
             where\s""";

    private static final TypeReference<List<ProjectFacts.ArrayFacts>> ARRAYS = new TypeReference<>() {};
    private static final TypeReference<EnumMap<Duty, ProjectFacts.InCharge>> PEOPLE = new TypeReference<>() {};

    private final JdbcClient jdbc;
    private final JsonMapper json;

    ProjectRows(JdbcClient jdbc, JsonMapper json) {
        this.jdbc = jdbc;
        this.json = json;
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
        return jdbc.sql(PROJECTS + which + " order by p.number_year, p.running_number")
                .params(values)
                .query(this::project)
                .list();
    }

    private ProjectFacts project(ResultSet row, int number) throws SQLException {
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
                people(row));
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

    private ProjectFacts.Contract contract(ResultSet row) throws SQLException {
        return new ProjectFacts.Contract(
                row.getBigDecimal("system_kw_dc"),
                row.getBigDecimal("system_kw_ac"),
                arrays(row),
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

    private List<ProjectFacts.ArrayFacts> arrays(ResultSet row) throws SQLException {
        String arrays = row.getString("arrays");
        return arrays == null ? List.of() : json.readValue(arrays, ARRAYS);
    }

    private Map<Duty, ProjectFacts.InCharge> people(ResultSet row) throws SQLException {
        String people = row.getString("people");
        return people == null ? Map.of() : json.readValue(people, PEOPLE);
    }

    private static @Nullable Integer whole(ResultSet row, String column) throws SQLException {
        int value = row.getInt(column);
        return row.wasNull() ? null : value;
    }

    private static UUID id(ResultSet row, String column) throws SQLException {
        return row.getObject(column, UUID.class);
    }
}
