package org.plumbrow.cutover;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Timestamp;
import java.sql.Types;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.plumbrow.branch.Weekdays;
import org.plumbrow.calc.outage.Blackout;
import org.plumbrow.database.Ids;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** When a customer must have power. An ended one stays readable. */
@Repository
class Blackouts {

    private final JdbcClient jdbc;

    Blackouts(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** @param first null for every week; @param from null for the whole day */
    record Row(
            UUID id,
            @Nullable LocalDate first,
            @Nullable LocalDate last,
            Weekdays weekdays,
            @Nullable LocalTime from,
            @Nullable LocalTime to,
            String reason,
            String madeBy) {

        Blackout rule() {
            return new Blackout(
                    first == null ? LocalDate.MIN : first,
                    last == null ? LocalDate.MAX : last,
                    weekdays.days(),
                    from == null ? LocalTime.MIN : from,
                    to == null ? LocalTime.MAX : to,
                    reason);
        }
    }

    List<Row> of(UUID projectId) {
        return jdbc.sql("select * from outage_blackout where project_id = ? and ended_at is null"
                        + " order by first_day nulls first, from_time, id")
                .param(projectId)
                .query(Blackouts::row)
                .list();
    }

    UUID add(UUID branchId, UUID projectId, Row blackout, Instant at) {
        UUID id = Ids.next();
        jdbc.sql("""
                insert into outage_blackout (id, branch_id, project_id, first_day, last_day, weekdays, from_time, to_time,
                                             reason, made_at, made_by)
                values (:id, :branch, :project, :first, :last, :weekdays, :from, :to, :reason, :at, :by)
                """)
                .param("id", id)
                .param("branch", branchId)
                .param("project", projectId)
                .param("first", blackout.first(), Types.DATE)
                .param("last", blackout.last(), Types.DATE)
                .param("weekdays", blackout.weekdays().letters())
                .param("from", blackout.from(), Types.TIME)
                .param("to", blackout.to(), Types.TIME)
                .param("reason", blackout.reason())
                .param("at", Timestamp.from(at))
                .param("by", blackout.madeBy())
                .update();
        return id;
    }

    boolean end(UUID projectId, UUID id, String by, Instant at) {
        return jdbc.sql(
                                "update outage_blackout set ended_at = ?, ended_by = ? where id = ? and project_id = ? and ended_at is null")
                        .params(Timestamp.from(at), by, id, projectId)
                        .update()
                == 1;
    }

    boolean restore(UUID projectId, UUID id) {
        return jdbc.sql(
                                "update outage_blackout set ended_at = null, ended_by = null where id = ? and project_id = ? and ended_at is not null")
                        .params(id, projectId)
                        .update()
                == 1;
    }

    private static Row row(ResultSet row, int number) throws SQLException {
        return new Row(
                row.getObject("id", UUID.class),
                row.getObject("first_day", LocalDate.class),
                row.getObject("last_day", LocalDate.class),
                Weekdays.of(row.getString("weekdays")),
                row.getObject("from_time", LocalTime.class),
                row.getObject("to_time", LocalTime.class),
                row.getString("reason"),
                row.getString("made_by"));
    }
}
