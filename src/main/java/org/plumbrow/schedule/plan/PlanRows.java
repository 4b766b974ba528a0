package org.plumbrow.schedule.plan;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Timestamp;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.UUID;
import org.plumbrow.calc.duration.ActivityCode;
import org.plumbrow.calc.duration.EquipmentKind;
import org.plumbrow.schedule.HalfDayNumber;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** Plans as they are stored, read. */
@Repository
class PlanRows {

    private static final String ACTIVITIES = """
            select p.plan_id, a.id, a.project_id, a.key, a.code, a.words, a.position, a.equipment,
                   a.finished_on is not null as done, a.pinned_on is not null as pinned,
                   p.start_half_day, p.finish_half_day, p.crew_id, p.bound_kind, p.bound_activity_id, p.bound_sentence
              from planned_activity p join activity a on a.id = p.activity_id
             where p.plan_id in (:plans) and not a.dropped
            """;

    private final JdbcClient jdbc;

    PlanRows(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    Optional<PlanHead> head(UUID planId) {
        return jdbc.sql("select * from plan where id = ?")
                .param(planId)
                .query(PlanRows::head)
                .optional();
    }

    Optional<PlanHead> in(UUID branchId, PlanHead.State state) {
        return current(branchId).stream().filter(plan -> plan.state() == state).findFirst();
    }

    /** Draft and published plan of a branch, whichever there are. */
    List<PlanHead> current(UUID branchId) {
        return jdbc.sql("select * from plan where branch_id = ? and state <> 'SUPERSEDED'")
                .param(branchId)
                .query(PlanRows::head)
                .list();
    }

    /** Draft and published plan of a branch, whichever there are, held until the transaction ends. */
    List<PlanHead> locked(UUID branchId) {
        return jdbc.sql("select * from plan where branch_id = ? and state <> 'SUPERSEDED' order by number for update")
                .param(branchId)
                .query(PlanRows::head)
                .list();
    }

    /** The plan that the published one took the place of. */
    Optional<PlanHead> lastSuperseded(UUID branchId) {
        return jdbc.sql("select * from plan where branch_id = ? and state = 'SUPERSEDED' order by number desc limit 1")
                .param(branchId)
                .query(PlanRows::head)
                .optional();
    }

    int lastNumber(UUID branchId) {
        return jdbc.sql("select coalesce(max(number), 0) from plan where branch_id = ?")
                .param(branchId)
                .query(Integer.class)
                .single();
    }

    /** By project and in the order of the work. */
    List<PlannedRow> activities(UUID planId) {
        return jdbc.sql(ACTIVITIES + " order by a.project_id, a.position")
                .param("plans", List.of(planId))
                .query(PlanRows::activity)
                .list();
    }

    /** Of one project in each plan, in the order of the work; a plan that doesn't know the project is left out. */
    Map<UUID, List<PlannedRow>> activities(Collection<UUID> planIds, UUID projectId) {
        Map<UUID, List<PlannedRow>> byPlan = new HashMap<>();
        if (!planIds.isEmpty()) {
            jdbc.sql(ACTIVITIES + " and a.project_id = :project order by a.position")
                    .param("plans", planIds)
                    .param("project", projectId)
                    .query((row, number) -> byPlan.computeIfAbsent(
                                    row.getObject("plan_id", UUID.class), plan -> new ArrayList<>())
                            .add(activity(row, number)))
                    .list();
        }
        return byPlan;
    }

    /** Soonest promised first. */
    List<PlannedPromise> promises(UUID planId, UUID projectId) {
        return jdbc.sql("select * from planned_promise where plan_id = ? and project_id = ?")
                .params(planId, projectId)
                .query(PlanRows::promise)
                .list();
    }

    List<PlannedPromise> promises(UUID planId) {
        return jdbc.sql("select * from planned_promise where plan_id = ? order by promised_on, project_id")
                .param(planId)
                .query(PlanRows::promise)
                .list();
    }

    /** By start. */
    List<MachineBooking> machines(UUID planId) {
        return jdbc.sql("select * from planned_equipment where plan_id = ? order by position")
                .param(planId)
                .query((row, n) -> new MachineBooking(
                        row.getObject("activity_id", UUID.class),
                        EquipmentKind.valueOf(row.getString("kind")),
                        id(row, "equipment_id"),
                        HalfDayNumber.at(row.getInt("start_half_day")),
                        HalfDayNumber.at(row.getInt("finish_half_day"))))
                .list();
    }

    List<PlanFinding> findings(UUID planId) {
        return jdbc.sql("select * from plan_finding where plan_id = ? order by position")
                .param(planId)
                .query((row, n) -> new PlanFinding(
                        row.getString("kind"),
                        id(row, "activity_id"),
                        row.getBoolean("stops_publishing"),
                        row.getString("sentence")))
                .list();
    }

    private static PlanHead head(ResultSet row, int number) throws SQLException {
        return new PlanHead(
                row.getObject("id", UUID.class),
                row.getObject("branch_id", UUID.class),
                row.getInt("number"),
                PlanHead.State.valueOf(row.getString("state")),
                row.getTimestamp("made_at").toInstant(),
                row.getString("made_by"),
                HalfDayNumber.at(row.getInt("first_half_day")),
                row.getString("fingerprint"),
                row.getLong("half_days_late"),
                bound(row),
                instant(row, "published_at"),
                Optional.ofNullable(row.getString("published_by")).orElse(""));
    }

    private static PlannedRow activity(ResultSet row, int number) throws SQLException {
        return new PlannedRow(
                row.getObject("id", UUID.class),
                row.getObject("project_id", UUID.class),
                row.getString("key"),
                ActivityCode.valueOf(row.getString("code")),
                row.getString("words"),
                row.getInt("position"),
                row.getString("equipment"),
                row.getBoolean("done"),
                row.getBoolean("pinned"),
                HalfDayNumber.at(row.getInt("start_half_day")),
                HalfDayNumber.at(row.getInt("finish_half_day")),
                id(row, "crew_id"),
                row.getString("bound_kind"),
                id(row, "bound_activity_id"),
                row.getString("bound_sentence"));
    }

    private static PlannedPromise promise(ResultSet row, int number) throws SQLException {
        return new PlannedPromise(
                row.getObject("project_id", UUID.class),
                row.getString("milestone"),
                row.getObject("promised_on", LocalDate.class),
                Optional.ofNullable((Integer) row.getObject("finish_half_day")).map(HalfDayNumber::at),
                row.getInt("half_days_late"),
                row.getInt("half_days_spare"),
                id(row, "binding_activity_id"),
                Optional.ofNullable((Integer) row.getObject("late_alone")));
    }

    private static OptionalLong bound(ResultSet row) throws SQLException {
        long bound = row.getLong("lower_bound");
        return row.wasNull() ? OptionalLong.empty() : OptionalLong.of(bound);
    }

    private static Optional<UUID> id(ResultSet row, String name) throws SQLException {
        return Optional.ofNullable(row.getObject(name, UUID.class));
    }

    private static Optional<Instant> instant(ResultSet row, String name) throws SQLException {
        return Optional.ofNullable(row.getTimestamp(name)).map(Timestamp::toInstant);
    }
}
