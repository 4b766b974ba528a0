package org.plumbrow.branch.days;

import java.util.UUID;
import org.plumbrow.branch.BranchFacts;
import org.plumbrow.branch.BranchSettings;
import org.plumbrow.branch.ChangeLog;
import org.plumbrow.web.Access;
import org.plumbrow.web.EditedMeanwhile;
import org.plumbrow.web.May;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Changes which days and hours a branch works. */
@Service
@Transactional
public class DaysEditing {

    private static final String CHANGE = """
            update branch_setting
               set version = version + 1, working_weekdays = :weekdays, federal_holidays = :federal,
                   morning_start = :morningStart, morning_end = :morningEnd,
                   afternoon_start = :afternoonStart, afternoon_end = :afternoonEnd
             where branch_id = :branch and version = :version
            """;

    private final JdbcClient jdbc;
    private final BranchSettings settings;
    private final Access access;
    private final ChangeLog log;

    DaysEditing(JdbcClient jdbc, BranchSettings settings, Access access, ChangeLog log) {
        this.jdbc = jdbc;
        this.settings = settings;
        this.access = access;
        this.log = log;
    }

    /** @throws EditedMeanwhile if somebody else changed them since that version */
    public void change(UUID branchId, long version, DaysTerms terms) {
        access.require(branchId, May.CHANGE_SETTINGS);
        BranchFacts before = settings.facts(branchId);
        int changed = jdbc.sql(CHANGE)
                .param("weekdays", terms.workingDays().letters())
                .param("federal", terms.federalHolidays())
                .param("morningStart", terms.hours().morningStart())
                .param("morningEnd", terms.hours().morningEnd())
                .param("afternoonStart", terms.hours().afternoonStart())
                .param("afternoonEnd", terms.hours().afternoonEnd())
                .param("branch", branchId)
                .param("version", version)
                .update();
        if (changed == 0) {
            throw new EditedMeanwhile(version, before.calendarVersion());
        }
        log.changed(
                branchId, access.actor(), "working days", DaysTerms.of(before).written(), terms.written());
    }
}
