package org.plumbrow.branch.change;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.plumbrow.web.Access;
import org.plumbrow.web.May;
import org.plumbrow.web.Paging;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Reads the log of a branch's settings, newest first. */
@Service
@Transactional(readOnly = true)
class ChangeReading {

    private static final String LINES = "select at, person_name, thing, field, was, now from branch_change"
            + " where branch_id = :branch order by at desc, id desc limit :rows offset :offset";

    private final JdbcClient jdbc;
    private final Access access;

    ChangeReading(JdbcClient jdbc, Access access) {
        this.jdbc = jdbc;
        this.access = access;
    }

    /** One line of the log. */
    record Line(Instant at, String who, String thing, String field, String was, String now) {
        static Line of(ResultSet row, int number) throws SQLException {
            return new Line(
                    row.getTimestamp("at").toInstant(),
                    row.getString("person_name"),
                    row.getString("thing"),
                    row.getString("field"),
                    row.getString("was"),
                    row.getString("now"));
        }
    }

    record Page(List<Line> lines, Paging paging) {}

    /** Two queries, however long the log is. */
    Page page(UUID branchId, int asked) {
        access.require(branchId, May.CHANGE_SETTINGS);
        long total = jdbc.sql("select count(*) from branch_change where branch_id = :branch")
                .param("branch", branchId)
                .query(Long.class)
                .single();
        Paging paging = Paging.of(asked, total);
        return new Page(lines(branchId, paging.size(), paging.offset()), paging);
    }

    Optional<Line> last(UUID branchId) {
        access.require(branchId, May.CHANGE_SETTINGS);
        return lines(branchId, 1, 0).stream().findFirst();
    }

    private List<Line> lines(UUID branchId, int rows, long offset) {
        return jdbc.sql(LINES)
                .param("branch", branchId)
                .param("rows", rows)
                .param("offset", offset)
                .query(Line::of)
                .list();
    }
}
