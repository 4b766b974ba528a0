package org.plumbrow.cutover;

import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.plumbrow.calc.outage.LearnedOutage;
import org.plumbrow.calc.outage.LearnedOutage.Finished;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** What this branch's finished outages with a utility, of one kind of work, took against what was expected of them. */
@Repository
public class FinishedOutages {

    private static final String OF_A_KIND = """
            select p.project_id, w.day, s.expected, extract(epoch from w.power_on_at - w.power_off_at) / 60 as actual
              from outage_window w
              join project_site p on p.project_id = w.project_id
              join day_log l on l.window_id = w.id and l.outcome = 'DONE'
              join lateral (select sum(typical_minutes) as expected from day_log_step
                             where day_log_id = l.id and not hold and why_not is null
                               and code in ('4', '5', '6', '7', '8', '9', '10', '11')) s on s.expected > 0
             where w.branch_id = :branch and w.state = 'DONE' and p.utility_id = :utility and p.supply_side_tap = :tap
             order by w.day desc, w.id
            """;

    private final JdbcClient jdbc;

    FinishedOutages(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /**
     * One finished outage.
     *
     * @param expected typical minutes that were expected of it
     * @param actual minutes from power off to the last load back
     */
    public record Day(UUID projectId, LocalDate day, int expected, int actual) {
        public Finished finished() {
            return new Finished(expected, actual);
        }
    }

    /** @param tap whether the connection is made ahead of the main: the kind of work that decides most */
    LearnedOutage learned(UUID branchId, @Nullable UUID utilityId, boolean tap) {
        return LearnedOutage.of(
                days(branchId, utilityId, tap).stream().map(Day::finished).toList());
    }

    /** Newest first. The caller has asked who may. */
    public List<Day> days(UUID branchId, @Nullable UUID utilityId, boolean tap) {
        return jdbc.sql(OF_A_KIND)
                .param("branch", branchId)
                .param("utility", utilityId, java.sql.Types.OTHER)
                .param("tap", tap)
                .query((row, n) -> new Day(
                        row.getObject("project_id", UUID.class),
                        row.getObject("day", LocalDate.class),
                        row.getInt("expected"),
                        row.getInt("actual")))
                .list();
    }
}
