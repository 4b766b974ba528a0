package org.plumbrow.schedule.plan;

import java.util.List;
import java.util.UUID;
import org.plumbrow.calc.calendar.HalfDay;
import org.plumbrow.database.Ids;
import org.plumbrow.schedule.HalfDayNumber;
import org.springframework.jdbc.core.namedparam.MapSqlParameterSource;
import org.springframework.jdbc.core.namedparam.NamedParameterJdbcTemplate;
import org.springframework.stereotype.Repository;

/** Books crews and machines as a published plan has them; what lies before its first half-day stays as it was. */
@Repository
class Bookings {

    private static final List<String> TABLES = List.of("crew_booking", "equipment_booking");
    private static final String CREW = """
            insert into crew_booking (id, branch_id, crew_id, project_id, activity_id, half_days)
            values (:id, :branch, :crew, :project, :activity, int8range(:first, :last, '[]'))
            """;
    private static final String MACHINE = """
            insert into equipment_booking (id, branch_id, equipment_id, project_id, activity_id, half_days)
            select :id, :branch, :machine, a.project_id, a.id, int8range(:first, :last, '[]')
              from activity a where a.id = :activity
            """;

    private final NamedParameterJdbcTemplate jdbc;

    Bookings(NamedParameterJdbcTemplate jdbc) {
        this.jdbc = jdbc;
    }

    /** @throws org.springframework.dao.DataIntegrityViolationException if anything would be in two places */
    void replace(UUID branchId, HalfDay from, List<PlannedRow> rows, List<MachineBooking> machines) {
        clear(branchId, HalfDayNumber.of(from));
        jdbc.batchUpdate(
                CREW,
                rows.stream()
                        .filter(row -> row.crewId().isPresent() && !row.finish().isBefore(from))
                        .map(row -> range(branchId, row.start(), row.finish(), from)
                                .addValue("crew", row.crewId().get())
                                .addValue("project", row.projectId())
                                .addValue("activity", row.activityId()))
                        .toArray(MapSqlParameterSource[]::new));
        jdbc.batchUpdate(
                MACHINE,
                machines.stream()
                        .filter(booking -> booking.machineId().isPresent()
                                && !booking.last().isBefore(from))
                        .map(booking -> range(branchId, booking.first(), booking.last(), from)
                                .addValue("machine", booking.machineId().get())
                                .addValue("activity", booking.activityId()))
                        .toArray(MapSqlParameterSource[]::new));
    }

    private void clear(UUID branchId, int from) {
        MapSqlParameterSource values = new MapSqlParameterSource("branch", branchId).addValue("from", (long) from);
        for (String table : TABLES) {
            jdbc.update("delete from " + table + " where branch_id = :branch and lower(half_days) >= :from", values);
            jdbc.update(
                    "update " + table + " set half_days = int8range(lower(half_days), :from)"
                            + " where branch_id = :branch and upper(half_days) > :from",
                    values);
        }
    }

    private static MapSqlParameterSource range(UUID branchId, HalfDay first, HalfDay last, HalfDay from) {
        HalfDay begin = first.isBefore(from) ? from : first;
        return new MapSqlParameterSource("id", Ids.next())
                .addValue("branch", branchId)
                .addValue("first", (long) HalfDayNumber.of(begin))
                .addValue("last", (long) HalfDayNumber.of(last));
    }
}
