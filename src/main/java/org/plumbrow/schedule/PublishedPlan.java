package org.plumbrow.schedule;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Timestamp;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import org.plumbrow.calc.calendar.HalfDay;
import org.plumbrow.calc.duration.ActivityCode;
import org.plumbrow.calc.duration.Milestone;
import org.plumbrow.database.ReadOnce;
import org.plumbrow.project.Stage;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/**
 * What the published plan says, for rooms behind this one: planned dates, who is booked where, which crew is free.
 * Drafts are never seen here. Callers have asked {@code Access}; the branch wall holds.
 */
@Service
@Transactional(readOnly = true)
public class PublishedPlan {

    private static final String DATES = """
            select a.id, a.project_id, a.key, a.code, a.words, a.finished_on is not null as done,
                   p.start_half_day, p.finish_half_day, p.crew_id
              from plan
              join planned_activity p on p.plan_id = plan.id
              join activity a on a.id = p.activity_id
             where plan.state = 'PUBLISHED' and p.project_id = :project and not a.dropped
            """;
    private static final String BOOKED = """
            select b.crew_id, b.project_id, b.activity_id, a.key, a.code, a.words, lower(b.half_days) as first,
                   upper(b.half_days) - 1 as last
              from crew_booking b join activity a on a.id = b.activity_id
             where b.half_days && int8range(:from, :to, '[]')
            """;

    private final JdbcClient jdbc;

    PublishedPlan(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** All activities of a project, in the order of the work; empty as long as no plan knows the project. */
    public List<PlannedDates> of(UUID projectId) {
        return ReadOnce.of(
                new DatesOf(projectId),
                () -> jdbc.sql(DATES + " order by a.position")
                        .param("project", projectId)
                        .query(PublishedPlan::dates)
                        .list());
    }

    private record DatesOf(UUID projectId) {}

    /** One activity of a project: {@code of(project, ActivityCode.CUTOVER)}; of several arrays the last to finish. */
    public Optional<PlannedDates> of(UUID projectId, ActivityCode code) {
        return jdbc.sql(DATES + " and a.code = :code order by p.finish_half_day desc limit 1")
                .param("project", projectId)
                .param("code", code.name())
                .query(PublishedPlan::dates)
                .optional();
    }

    /** What crews have to do on a project and what has no place in the published plan, in the order of the work. */
    public List<String> crewWorkWithoutPlace(UUID projectId) {
        return jdbc.sql("""
                select a.words from activity a
                 where a.project_id = ? and a.work = 'CREW' and not a.dropped and a.finished_on is null
                   and not exists (select from planned_activity p join plan on plan.id = p.plan_id
                                    where p.activity_id = a.id and plan.state = 'PUBLISHED')
                 order by a.position
                """).param(projectId).query(String.class).list();
    }

    /** The day on which the milestone is planned to be reached; empty when it is not. */
    public Optional<LocalDate> day(UUID projectId, Milestone milestone) {
        return jdbc.sql("select max(finish_half_day) from (" + DATES + " and a.code in (:codes)) dates")
                .param("project", projectId)
                .param(
                        "codes",
                        milestone.codes().stream().map(ActivityCode::name).toList())
                .query((row, n) -> Optional.ofNullable((Integer) row.getObject(1)))
                .single()
                .map(number -> HalfDayNumber.at(number).date());
    }

    /**
     * The day on which the plan needs a stage to be reached: that of the last work of the stage which is not done yet, or
     * of a later stage that the plan has ready before, as gates are passed one after the other.
     */
    public Optional<LocalDate> needed(UUID projectId, Stage stage) {
        List<String> fromThere = Arrays.stream(Stage.values())
                .filter(other -> other.compareTo(stage) >= 0)
                .map(Stage::name)
                .toList();
        return jdbc.sql("""
                select min(stage.ready) from (
                    select max(p.finish_half_day) as ready
                      from plan
                      join planned_activity p on p.plan_id = plan.id
                      join activity a on a.id = p.activity_id
                     where plan.state = 'PUBLISHED' and p.project_id = :project and not a.dropped
                       and a.finished_on is null and a.stage in (:stages)
                     group by a.stage) stage
                """)
                .param("stages", fromThere)
                .param("project", projectId)
                .query((row, n) -> Optional.ofNullable((Integer) row.getObject(1)))
                .single()
                .map(number -> HalfDayNumber.at(number).date());
    }

    /** Whether no activity is booked for the crew then; its absences are the crew room's. */
    public boolean isFree(UUID crewId, HalfDay at) {
        return bookedOn(crewId, at).isEmpty();
    }

    public Optional<CrewBooking> bookedOn(UUID crewId, HalfDay at) {
        return jdbc.sql(BOOKED + " and b.crew_id = :crew")
                .param("from", HalfDayNumber.of(at))
                .param("to", HalfDayNumber.of(at))
                .param("crew", crewId)
                .query(PublishedPlan::booking)
                .optional();
    }

    /** Who is where between two half-days, both included, by start. */
    public List<CrewBooking> bookings(UUID branchId, HalfDay from, HalfDay to) {
        return jdbc.sql(BOOKED + " and b.branch_id = :branch order by lower(b.half_days), b.crew_id")
                .param("from", HalfDayNumber.of(from))
                .param("to", HalfDayNumber.of(to))
                .param("branch", branchId)
                .query(PublishedPlan::booking)
                .list();
    }

    /** Where one crew is between two half-days, both included, by start. */
    public List<CrewBooking> ofCrew(UUID crewId, HalfDay from, HalfDay to) {
        return jdbc.sql(BOOKED + " and b.crew_id = :crew order by lower(b.half_days)")
                .param("from", HalfDayNumber.of(from))
                .param("to", HalfDayNumber.of(to))
                .param("crew", crewId)
                .query(PublishedPlan::booking)
                .list();
    }

    /** The shared machines at these activities, by activity. */
    public Map<UUID, List<UUID>> machinesAt(Collection<UUID> activityIds) {
        Map<UUID, List<UUID>> machines = new HashMap<>();
        if (!activityIds.isEmpty()) {
            jdbc.sql("select distinct activity_id, equipment_id from equipment_booking where activity_id in (:ids)")
                    .param("ids", activityIds)
                    .query(row -> {
                        machines.computeIfAbsent(row.getObject("activity_id", UUID.class), id -> new ArrayList<>())
                                .add(row.getObject("equipment_id", UUID.class));
                    });
        }
        return machines;
    }

    /** Where the shared machines are between two half-days, both included, by start. */
    public List<MachineAt> machinesBooked(UUID branchId, HalfDay from, HalfDay to) {
        return jdbc.sql("""
                select equipment_id, project_id, lower(half_days) as first, upper(half_days) - 1 as last
                  from equipment_booking
                 where branch_id = :branch and half_days && int8range(:from, :to, '[]')
                 order by lower(half_days), equipment_id
                """)
                .param("branch", branchId)
                .param("from", HalfDayNumber.of(from))
                .param("to", HalfDayNumber.of(to))
                .query((row, n) -> new MachineAt(
                        row.getObject("equipment_id", UUID.class),
                        row.getObject("project_id", UUID.class),
                        HalfDayNumber.at(row.getLong("first")),
                        HalfDayNumber.at(row.getLong("last"))))
                .list();
    }

    /** The crews booked on a project between two days, both included. */
    public Set<UUID> crewsOn(UUID projectId, LocalDate from, LocalDate to) {
        return jdbc
                .sql(BOOKED + " and b.project_id = :project")
                .param("from", HalfDayNumber.of(HalfDay.morning(from)))
                .param("to", HalfDayNumber.of(HalfDay.afternoon(to)))
                .param("project", projectId)
                .query(PublishedPlan::booking)
                .list()
                .stream()
                .map(CrewBooking::crewId)
                .collect(Collectors.toSet());
    }

    /** When the branch's plan was published; empty before the first. */
    public Optional<Instant> publishedAt(UUID branchId) {
        return jdbc.sql("select published_at from plan where branch_id = ? and state = 'PUBLISHED'")
                .param(branchId)
                .query(Timestamp.class)
                .optional()
                .map(Timestamp::toInstant);
    }

    /** The number of the branch's published plan; 0 before the first. */
    public int number(UUID branchId) {
        return jdbc.sql("select number from plan where branch_id = ? and state = 'PUBLISHED'")
                .param(branchId)
                .query(Integer.class)
                .optional()
                .orElse(0);
    }

    private static PlannedDates dates(ResultSet row, int number) throws SQLException {
        return new PlannedDates(
                row.getObject("id", UUID.class),
                row.getObject("project_id", UUID.class),
                row.getString("key"),
                ActivityCode.valueOf(row.getString("code")),
                row.getString("words"),
                HalfDayNumber.at(row.getInt("start_half_day")),
                HalfDayNumber.at(row.getInt("finish_half_day")),
                Optional.ofNullable(row.getObject("crew_id", UUID.class)),
                row.getBoolean("done"));
    }

    private static CrewBooking booking(ResultSet row, int number) throws SQLException {
        return new CrewBooking(
                row.getObject("crew_id", UUID.class),
                row.getObject("project_id", UUID.class),
                row.getObject("activity_id", UUID.class),
                row.getString("key"),
                ActivityCode.valueOf(row.getString("code")),
                row.getString("words"),
                HalfDayNumber.at(row.getLong("first")),
                HalfDayNumber.at(row.getLong("last")));
    }
}
