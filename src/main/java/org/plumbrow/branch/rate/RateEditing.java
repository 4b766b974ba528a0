package org.plumbrow.branch.rate;

import java.util.List;
import java.util.UUID;
import org.plumbrow.branch.ChangeLog;
import org.plumbrow.branch.Kept;
import org.plumbrow.branch.RateTables;
import org.plumbrow.branch.Written;
import org.plumbrow.calc.duration.FixedTime;
import org.plumbrow.calc.duration.WaitTime;
import org.plumbrow.calc.duration.WaitTime.DayKind;
import org.plumbrow.calc.duration.WorkRate;
import org.plumbrow.web.Access;
import org.plumbrow.web.EditedMeanwhile;
import org.plumbrow.web.May;
import org.plumbrow.web.NotFound;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.jdbc.core.simple.JdbcClient.StatementSpec;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Changes the branch's own rates, fixed times and waits, or takes a row back to what was shipped. */
@Service
@Transactional
class RateEditing {

    private static final String RATE = """
            update work_rate
               set version = version + 1, low_per_day = :low, typical_per_day = :typical, high_per_day = :high,
                   crew_least = :crewLeast, crew_most = :crewMost, set_up_days = :firstUnitDays
             where branch_id = :branch and code = :code and version = :version
            """;
    private static final String FIXED_TIME = """
            update fixed_time
               set version = version + 1, low_days = :low, typical_days = :typical, high_days = :high, people = :people
             where branch_id = :branch and code = :code and version = :version
            """;
    private static final String WAIT = """
            update wait_time
               set version = version + 1, least_days = :low, usual_days = :typical, most_days = :high,
                   calendar_days = :calendar
             where branch_id = :branch and code = :code and version = :version
            """;

    private final JdbcClient jdbc;
    private final RateTables tables;
    private final Access access;
    private final ChangeLog log;

    RateEditing(JdbcClient jdbc, RateTables tables, Access access, ChangeLog log) {
        this.jdbc = jdbc;
        this.tables = tables;
        this.access = access;
        this.log = log;
    }

    void changeRate(UUID branchId, String code, RateForm to) {
        access.require(branchId, May.CHANGE_SETTINGS);
        Kept<WorkRate> before = tables.rate(branchId, code).orElseThrow(NotFound::new);
        StatementSpec change = jdbc.sql(RATE)
                .param("low", to.low())
                .param("typical", to.typical())
                .param("high", to.high())
                .param("crewLeast", to.crewLeast())
                .param("crewMost", to.crewMost())
                .param("firstUnitDays", to.firstUnitDays());
        make(change, new Row(branchId, code, to.version(), before.version()));
        log(branchId, "rate of " + before.row().words(), RateForm.of(before).written(), to.written());
    }

    void changeFixedTime(UUID branchId, String code, FixedTimeForm to) {
        access.require(branchId, May.CHANGE_SETTINGS);
        Kept<FixedTime> before = tables.fixedTime(branchId, code).orElseThrow(NotFound::new);
        StatementSpec change = jdbc.sql(FIXED_TIME)
                .param("low", to.low())
                .param("typical", to.typical())
                .param("high", to.high())
                .param("people", to.people());
        make(change, new Row(branchId, code, to.version(), before.version()));
        log(
                branchId,
                "time for " + before.row().words(),
                FixedTimeForm.of(before).written(),
                to.written());
    }

    void changeWait(UUID branchId, String code, WaitForm to) {
        access.require(branchId, May.CHANGE_SETTINGS);
        Kept<WaitTime> before = tables.wait(branchId, code).orElseThrow(NotFound::new);
        StatementSpec change = jdbc.sql(WAIT)
                .param("low", to.low())
                .param("typical", to.typical())
                .param("high", to.high())
                .param("calendar", to.dayKind() == DayKind.CALENDAR);
        make(change, new Row(branchId, code, to.version(), before.version()));
        log(branchId, "wait for " + before.row().words(), WaitForm.of(before).written(), to.written());
    }

    private record Row(UUID branchId, String code, long opened, long stored) {}

    private static void make(StatementSpec change, Row row) {
        int changed = change.param("branch", row.branchId)
                .param("code", row.code)
                .param("version", row.opened)
                .update();
        if (changed == 0) {
            throw new EditedMeanwhile(row.opened, row.stored);
        }
    }

    private void log(UUID branchId, String thing, List<Written> before, List<Written> after) {
        log.changed(branchId, access.actor(), thing, before, after);
    }
}
