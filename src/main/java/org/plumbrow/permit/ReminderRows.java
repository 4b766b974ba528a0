package org.plumbrow.permit;

import java.time.Instant;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.UUID;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;
import org.springframework.transaction.annotation.Transactional;

/** Which waits somebody may have to be reminded of, and of which somebody was. */
@Repository
class ReminderRows {

    /** Generous: {@link WaitReminder} decides. */
    private static final int DAYS_AHEAD = 5;

    /** Older ones nobody is reminded of: a branch that begins with its old waits is not written to about all of them. */
    private static final int DAYS_BACK = 14;

    private static final String NEAR = """
              from awaited a join project p on p.id = a.project_id
             where p.standing = 'OPEN' and p.stage is distinct from 'COMMISSIONED'
               and ((a.received_on is null and coalesce(a.promised_on, a.due_on) between :first and :last)
                 or (a.result = 'CLEAR' and a.expires_on between :first and :last))
            """;

    private final JdbcClient jdbc;

    ReminderRows(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** One that was told, as the page of the wait shows it. */
    record Told(WaitReminder.Reason reason, LocalDate day, String told, Instant at) {

        /** What it was about. */
        public String words() {
            return reason.on(day);
        }
    }

    @Transactional(readOnly = true)
    public List<UUID> branchesWithAnything(LocalDate today) {
        return jdbc.sql("select distinct a.branch_id " + NEAR)
                .param("first", today.minusDays(DAYS_BACK))
                .param("last", today.plusDays(DAYS_AHEAD))
                .query(UUID.class)
                .list();
    }

    List<Awaited> near(UUID branchId, LocalDate today) {
        return jdbc.sql("select a.* " + NEAR + " and a.branch_id = :branch order by p.number, a.id")
                .param("first", today.minusDays(DAYS_BACK))
                .param("last", today.plusDays(DAYS_AHEAD))
                .param("branch", branchId)
                .query(AwaitedRows::awaited)
                .list();
    }

    /** Whoever writes the row first reminds; it goes with the letter or not at all. */
    boolean isFirst(Awaited one, WaitReminder reminder, UUID branchId, String told, Instant at) {
        return jdbc.sql("""
                insert into wait_reminder (awaited_id, reason, day, branch_id, told, at) values (?, ?, ?, ?, ?, ?)
                on conflict do nothing
                """)
                        .params(
                                one.id(),
                                reminder.reason().name(),
                                reminder.day(),
                                branchId,
                                told,
                                OffsetDateTime.ofInstant(at, ZoneOffset.UTC))
                        .update()
                == 1;
    }

    /** The last first. */
    List<Told> of(UUID awaitedId) {
        return jdbc.sql(
                        "select reason, day, told, at from wait_reminder where awaited_id = ? order by at desc, day desc")
                .param(awaitedId)
                .query((row, n) -> new Told(
                        WaitReminder.Reason.valueOf(row.getString("reason")),
                        row.getObject("day", LocalDate.class),
                        row.getString("told"),
                        row.getObject("at", OffsetDateTime.class).toInstant()))
                .list();
    }
}
