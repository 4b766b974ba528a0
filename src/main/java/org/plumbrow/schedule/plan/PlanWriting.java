package org.plumbrow.schedule.plan;

import java.sql.Timestamp;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.UUID;
import org.plumbrow.calc.calendar.HalfDay;
import org.plumbrow.calc.planning.Bound;
import org.plumbrow.calc.planning.Placement;
import org.plumbrow.calc.planning.PlanWords;
import org.plumbrow.calc.planning.PromiseOutcome;
import org.plumbrow.database.Ids;
import org.plumbrow.schedule.HalfDayNumber;
import org.springframework.jdbc.core.namedparam.MapSqlParameterSource;
import org.springframework.jdbc.core.namedparam.NamedParameterJdbcTemplate;
import org.springframework.stereotype.Repository;

/** Stores a computed plan as the branch's one draft; an older draft goes. */
@Repository
class PlanWriting {

    private static final String PLAN = """
            insert into plan (id, version, branch_id, number, state, made_at, made_by, first_half_day, fingerprint, half_days_late,
                              lower_bound)
            values (:id, 0, :branch, :number, 'DRAFT', :now, :by, :first, :fingerprint, :late, :bound)
            """;
    private static final String ACTIVITY = """
            insert into planned_activity (plan_id, activity_id, branch_id, project_id, start_half_day, finish_half_day,
                                          crew_id, bound_kind, bound_activity_id, bound_half_day, bound_sentence)
            values (:plan, :activity, :branch, :project, :start, :finish, :crew, :kind, :boundActivity, :boundHalfDay, :sentence)
            """;
    private static final String PROMISE = """
            insert into planned_promise (plan_id, project_id, branch_id, milestone, promised_on, finish_half_day,
                                         half_days_late, half_days_spare, binding_activity_id, late_alone)
            values (:plan, :project, :branch, :milestone, :promised, :finish, :late, :spare, :binding, :alone)
            """;
    private static final String FINDING = """
            insert into plan_finding (plan_id, position, branch_id, kind, activity_id, stops_publishing, sentence)
            values (:plan, :position, :branch, :kind, :activity, :stops, :sentence)
            """;

    private static final String MACHINE = """
            insert into planned_equipment (plan_id, position, branch_id, activity_id, kind, equipment_id, start_half_day, finish_half_day)
            values (:plan, :position, :branch, :activity, :kind, :machine, :start, :finish)
            """;

    private final NamedParameterJdbcTemplate jdbc;

    PlanWriting(NamedParameterJdbcTemplate jdbc) {
        this.jdbc = jdbc;
    }

    /** @return the draft's id */
    UUID draft(UUID branchId, int number, ComputedPlan computed, String by, Instant now) {
        discard(branchId);
        UUID id = Ids.next();
        jdbc.update(
                PLAN,
                new MapSqlParameterSource("id", id)
                        .addValue("branch", branchId)
                        .addValue("number", number)
                        .addValue("now", Timestamp.from(now))
                        .addValue("by", by)
                        .addValue("first", HalfDayNumber.of(computed.problem().today()))
                        .addValue("fingerprint", computed.fingerprint())
                        .addValue("late", computed.plan().weightedHalfDaysLate())
                        .addValue(
                                "bound",
                                computed.proved().map(ProvedBound::lowerBound).orElse(null)));
        jdbc.batchUpdate(ACTIVITY, activities(id, branchId, computed));
        jdbc.batchUpdate(PROMISE, promises(id, branchId, computed));
        jdbc.batchUpdate(MACHINE, machines(id, branchId, computed));
        jdbc.batchUpdate(FINDING, findings(id, branchId, computed));
        return id;
    }

    /** The draft is the published plan from now on; the one before it stays for comparison. */
    void publish(PlanHead draft, Optional<PlanHead> before, String by, Instant now) {
        before.ifPresent(old -> jdbc.update(
                "update plan set state = 'SUPERSEDED', version = version + 1 where id = :id",
                new MapSqlParameterSource("id", old.id())));
        jdbc.update(
                """
                update plan set state = 'PUBLISHED', published_at = :now, published_by = :by, version = version + 1
                 where id = :id
                """,
                new MapSqlParameterSource("id", draft.id())
                        .addValue("now", Timestamp.from(now))
                        .addValue("by", by));
    }

    /** Plans that nobody compares with any more lose their rows; their heads stay. */
    void forgetRowsPublishedBefore(Instant then) {
        for (String table :
                List.of("planned_activity", "planned_promise", "plan_finding", "planned_equipment", "plan_forecast")) {
            jdbc.update(
                    "delete from " + table + " where plan_id in"
                            + " (select id from plan where state = 'SUPERSEDED' and published_at < :then)",
                    new MapSqlParameterSource("then", Timestamp.from(then)));
        }
    }

    /** @return whether there was a draft */
    boolean discard(UUID branchId) {
        return jdbc.update(
                        "delete from plan where branch_id = :branch and state = 'DRAFT'",
                        new MapSqlParameterSource("branch", branchId))
                > 0;
    }

    private static MapSqlParameterSource[] activities(UUID plan, UUID branch, ComputedPlan computed) {
        PlanWords words = new PlanWords(computed.problem());
        return computed.problem().activities().stream()
                .flatMap(activity -> computed.plan().of(activity.id()).stream()
                        .map(placement -> activity(placement, words)
                                .addValue("plan", plan)
                                .addValue("branch", branch)
                                .addValue("project", UUID.fromString(activity.projectId()))))
                .toArray(MapSqlParameterSource[]::new);
    }

    private static MapSqlParameterSource activity(Placement placement, PlanWords words) {
        Bound bound = placement.bound();
        return new MapSqlParameterSource("activity", UUID.fromString(placement.activityId()))
                .addValue("start", HalfDayNumber.of(placement.start()))
                .addValue("finish", HalfDayNumber.of(placement.finish()))
                .addValue("crew", placement.crewId().map(UUID::fromString).orElse(null))
                .addValue("kind", kind(bound))
                .addValue(
                        "boundActivity", activityOf(bound).map(UUID::fromString).orElse(null))
                .addValue(
                        "boundHalfDay", halfDayOf(bound).map(HalfDayNumber::of).orElse(null))
                .addValue("sentence", words.bound(bound));
    }

    /** The name of the bound as stored: CrewBusy is CREW_BUSY. */
    static String kind(Bound bound) {
        return bound.getClass()
                .getSimpleName()
                .replaceAll("(?<=[a-z])(?=[A-Z])", "_")
                .toUpperCase(Locale.ROOT);
    }

    static Optional<String> activityOf(Bound bound) {
        if (bound instanceof Bound.After after) {
            return Optional.of(after.activityId());
        }
        if (bound instanceof Bound.CrewBusy busy) {
            return Optional.of(busy.activityId());
        }
        if (bound instanceof Bound.EquipmentBusy busy) {
            return Optional.of(busy.activityId());
        }
        return bound instanceof Bound.JustInTime needed ? Optional.of(needed.activityId()) : Optional.empty();
    }

    private static Optional<HalfDay> halfDayOf(Bound bound) {
        if (bound instanceof Bound.After after) {
            return Optional.of(after.finished());
        }
        if (bound instanceof Bound.CrewBusy busy) {
            return Optional.of(busy.until());
        }
        if (bound instanceof Bound.CrewAway away) {
            return Optional.of(away.until());
        }
        if (bound instanceof Bound.EquipmentBusy busy) {
            return Optional.of(busy.until());
        }
        if (bound instanceof Bound.EquipmentAway away) {
            return Optional.of(away.until());
        }
        return bound instanceof Bound.JustInTime needed ? Optional.of(needed.neededBy()) : Optional.empty();
    }

    private static MapSqlParameterSource[] promises(UUID plan, UUID branch, ComputedPlan computed) {
        return computed.plan().promises().stream()
                .map(outcome -> promise(outcome)
                        .addValue("plan", plan)
                        .addValue("branch", branch)
                        .addValue(
                                "alone",
                                computed.proved()
                                        .map(proved -> proved.lateAlone(UUID.fromString(
                                                outcome.promise().projectId())))
                                        .orElse(null)))
                .toArray(MapSqlParameterSource[]::new);
    }

    private static MapSqlParameterSource promise(PromiseOutcome outcome) {
        return new MapSqlParameterSource(
                        "project", UUID.fromString(outcome.promise().projectId()))
                .addValue("milestone", outcome.promise().milestone())
                .addValue("promised", outcome.promise().date())
                .addValue("finish", outcome.finish().map(HalfDayNumber::of).orElse(null))
                .addValue("late", outcome.halfDaysLate())
                .addValue("spare", outcome.halfDaysSpare())
                .addValue(
                        "binding",
                        outcome.bindingActivityId().map(UUID::fromString).orElse(null));
    }

    private static MapSqlParameterSource[] machines(UUID plan, UUID branch, ComputedPlan computed) {
        List<MapSqlParameterSource> rows = new ArrayList<>();
        for (MachineBooking booking : computed.machines()) {
            rows.add(new MapSqlParameterSource("plan", plan)
                    .addValue("branch", branch)
                    .addValue("position", rows.size())
                    .addValue("activity", booking.activityId())
                    .addValue("kind", booking.kind().name())
                    .addValue("machine", booking.machineId().orElse(null))
                    .addValue("start", HalfDayNumber.of(booking.first()))
                    .addValue("finish", HalfDayNumber.of(booking.last())));
        }
        return rows.toArray(MapSqlParameterSource[]::new);
    }

    private static MapSqlParameterSource[] findings(UUID plan, UUID branch, ComputedPlan computed) {
        List<MapSqlParameterSource> rows = new ArrayList<>();
        for (PlanFinding finding : computed.findings()) {
            rows.add(new MapSqlParameterSource("plan", plan)
                    .addValue("branch", branch)
                    .addValue("position", rows.size())
                    .addValue("kind", finding.kind())
                    .addValue("activity", finding.activityId().orElse(null))
                    .addValue("stops", finding.stopsPublishing())
                    .addValue("sentence", finding.sentence()));
        }
        return rows.toArray(MapSqlParameterSource[]::new);
    }
}
