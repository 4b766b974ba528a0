package org.plumbrow.cutover;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Clock;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.plumbrow.cutover.OutageFacts.Answer;
import org.plumbrow.cutover.OutageFacts.RainDate;
import org.plumbrow.cutover.OutageFacts.Told;
import org.plumbrow.project.ProjectAccess;
import org.plumbrow.web.Access;
import org.plumbrow.web.BranchCard;
import org.plumbrow.web.May;
import org.plumbrow.web.Paging;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** The outages of a branch: those to come with what they lack, those that were with their minutes. */
@Service
@Transactional(readOnly = true)
class CutoverList {

    private static final String FROM = """
             from outage_window w join project p on p.id = w.project_id left join crew c on c.id = w.crew_id
            where w.branch_id = :branch and (:all or p.id in (:reach))
            """;
    private static final String COMING = " and w.state in ('PROPOSED', 'BOOKED', 'NOTICE_GIVEN') ";
    private static final String PAST = " and w.state = 'DONE' ";

    private final Access access;
    private final ProjectAccess projectAccess;
    private final JdbcClient jdbc;
    private final Clock clock;

    CutoverList(Access access, ProjectAccess projectAccess, JdbcClient jdbc, Clock clock) {
        this.access = access;
        this.projectAccess = projectAccess;
        this.jdbc = jdbc;
        this.clock = clock;
    }

    /** One line of the list. */
    record Line(OutageFacts window, String number, String project, String crew) {
        public List<String> open() {
            return OutageReadiness.open(window);
        }

        public String shape() {
            return OutageReadiness.shape(window);
        }

        /** Actual minutes less planned; null before the outage was over. */
        public @Nullable Integer longer() {
            return window.actualMinutes()
                    .map(actual -> actual - window.outageMinutes())
                    .orElse(null);
        }
    }

    /**
     * @param next the first one to come; null without any
     * @param today in the branch
     */
    record Page(List<Line> coming, List<Line> past, Paging paging, LocalDate today) {
        public @Nullable Line next() {
            return coming.isEmpty() ? null : coming.get(0);
        }

        public long lacking() {
            return coming.stream().filter(line -> !line.open().isEmpty()).count();
        }
    }

    Page page(int asked) {
        BranchCard branch = access.require(May.SEE_CUTOVERS);
        Optional<Set<UUID>> reach = projectAccess.reachOf(branch.id());
        long done = statement("select count(*)" + FROM + PAST, branch, reach)
                .query(Long.class)
                .single();
        Paging paging = Paging.of(asked, done);
        List<Line> coming = statement(
                        "select w.*, p.number, p.name, c.name as crew" + FROM + COMING
                                + " order by w.day, w.start_time, w.id limit 200",
                        branch,
                        reach)
                .query(CutoverList::line)
                .list();
        List<Line> past = statement(
                        "select w.*, p.number, p.name, c.name as crew" + FROM + PAST
                                + " order by w.day desc, w.start_time desc, w.id limit " + paging.size() + " offset "
                                + paging.offset(),
                        branch,
                        reach)
                .query(CutoverList::line)
                .list();
        return new Page(coming, past, paging, LocalDate.ofInstant(clock.instant(), branch.zone()));
    }

    private JdbcClient.StatementSpec statement(String sql, BranchCard branch, Optional<Set<UUID>> reach) {
        Set<UUID> ids = reach.filter(known -> !known.isEmpty()).orElse(Set.of(branch.id()));
        return jdbc.sql(sql)
                .param("branch", branch.id())
                .param("all", reach.isEmpty())
                .param("reach", ids);
    }

    private static Line line(ResultSet row, int number) throws SQLException {
        String crew = row.getString("crew");
        return new Line(facts(row), row.getString("number"), row.getString("name"), crew == null ? "" : crew);
    }

    private static OutageFacts facts(ResultSet row) throws SQLException {
        LocalDate rainDay = row.getObject("rain_day", LocalDate.class);
        return new OutageFacts(
                row.getObject("id", UUID.class),
                row.getObject("branch_id", UUID.class),
                row.getObject("project_id", UUID.class),
                row.getObject("day", LocalDate.class),
                row.getObject("start_time", LocalTime.class),
                row.getInt("outage_minutes"),
                row.getObject("crew_id", UUID.class),
                OutageState.valueOf(row.getString("state")),
                row.getString("state_reason"),
                rainDay == null ? null : new RainDate(rainDay, row.getObject("rain_start", LocalTime.class)),
                told(row, "utility_told"),
                row.getString("utility_confirmation"),
                instant(row, "utility_confirmed_at"),
                told(row, "customer_told"),
                answer(row),
                instant(row, "power_off_at"),
                instant(row, "power_on_at"),
                row.getLong("version"));
    }

    private static @Nullable Told told(ResultSet row, String column) throws SQLException {
        java.time.Instant at = instant(row, column + "_at");
        return at == null ? null : new Told(at, row.getString(column + "_how"));
    }

    private static @Nullable Answer answer(ResultSet row) throws SQLException {
        String said = row.getString("customer_answer");
        java.time.Instant at = instant(row, "customer_answered_at");
        return said == null || at == null
                ? null
                : new Answer(said.equals("AGREED"), "", at, row.getString("customer_answered_by"));
    }

    private static java.time.@Nullable Instant instant(ResultSet row, String column) throws SQLException {
        java.sql.Timestamp at = row.getTimestamp(column);
        return at == null ? null : at.toInstant();
    }
}
