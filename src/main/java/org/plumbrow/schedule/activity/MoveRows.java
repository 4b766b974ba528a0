package org.plumbrow.schedule.activity;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Timestamp;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.plumbrow.calc.calendar.Half;
import org.plumbrow.calc.calendar.HalfDay;
import org.plumbrow.web.Actor;
import org.plumbrow.web.EditedMeanwhile;
import org.springframework.dao.DuplicateKeyException;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** The moves of a branch as they are stored; rows are only ever added. */
@Repository
class MoveRows {

    private static final String LAST = """
            select m.*, a.project_id, a.key, a.version
              from plan_move m join activity a on a.id = m.activity_id
             where m.branch_id = :branch and m.undoes is null
               and not exists (select from plan_move u where u.branch_id = m.branch_id and u.undoes = m.number)
             order by m.number desc limit 1
            """;
    private static final String ADD = """
            insert into plan_move (branch_id, number, activity_id, was_on, was_half, was_crew_id, was_reason, version_after,
                                   sentence, undoes, at, by_person_id, by_name)
            values (:branch, :number, :activity, :on, :half, :crew, :reason, :version, :sentence, :undoes, :now, :person, :by)
            """;

    private final JdbcClient jdbc;

    MoveRows(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** Who moves something in the branch next waits until this transaction ends, and then sees its move. */
    void oneAtATime(UUID branchId) {
        jdbc.sql("select cast(pg_advisory_xact_lock(hashtextextended(?, 0)) as text)")
                .param("plan_move " + branchId)
                .query(String.class)
                .optional();
    }

    /** Of the last move of any kind; 0 before the first. */
    long lastNumber(UUID branchId) {
        return jdbc.sql("select coalesce(max(number), 0) from plan_move where branch_id = ?")
                .param(branchId)
                .query(Long.class)
                .single();
    }

    /** The last one that was not taken back. */
    Optional<PlanMove> last(UUID branchId) {
        return jdbc.sql(LAST).param("branch", branchId).query(MoveRows::move).optional();
    }

    /** @param undoes number of the move that this one takes back; null for none */
    record Added(
            long number,
            Optional<Pin> was,
            String sentence,
            @Nullable Long undoes,
            Actor by,
            Instant at) {}

    /** @throws EditedMeanwhile if somebody else took the number at the same moment */
    void add(Activity activity, Added move) {
        try {
            jdbc.sql(ADD)
                    .param("branch", activity.branchId())
                    .param("number", move.number)
                    .param("activity", activity.id())
                    .param("on", move.was.map(pin -> pin.start().date()).orElse(null))
                    .param(
                            "half",
                            move.was.map(pin -> pin.start().half().name()).orElse(null))
                    .param("crew", move.was.flatMap(Pin::crewId).orElse(null))
                    .param("reason", move.was.map(Pin::reason).orElse(null))
                    .param("version", activity.version())
                    .param("sentence", move.sentence)
                    .param("undoes", move.undoes)
                    .param("now", Timestamp.from(move.at))
                    .param("person", move.by.personId())
                    .param("by", move.by.name())
                    .update();
        } catch (DuplicateKeyException taken) {
            throw new EditedMeanwhile(move.number - 1, move.number);
        }
    }

    private static PlanMove move(ResultSet row, int number) throws SQLException {
        return new PlanMove(
                row.getLong("number"),
                row.getObject("activity_id", UUID.class),
                row.getObject("project_id", UUID.class),
                row.getString("key"),
                was(row),
                row.getLong("version_after"),
                row.getLong("version"),
                row.getString("sentence"),
                row.getString("by_name"),
                row.getTimestamp("at").toInstant());
    }

    private static Optional<Pin> was(ResultSet row) throws SQLException {
        LocalDate day = row.getObject("was_on", LocalDate.class);
        return day == null
                ? Optional.empty()
                : Optional.of(new Pin(
                        new HalfDay(day, Half.valueOf(row.getString("was_half"))),
                        Optional.ofNullable(row.getObject("was_crew_id", UUID.class)),
                        row.getString("was_reason")));
    }
}
