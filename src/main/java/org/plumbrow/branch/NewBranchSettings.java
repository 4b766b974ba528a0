package org.plumbrow.branch;

import java.util.UUID;
import org.plumbrow.account.BranchOpened;
import org.springframework.context.event.EventListener;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/** What a branch starts with, written in the transaction that opens it. */
@Component
class NewBranchSettings {

    private static final String SETTING = """
            insert into branch_setting (branch_id, version, working_weekdays, federal_holidays, morning_start, morning_end,
                                        afternoon_start, afternoon_end, travel_speed_mph, travel_road_factor)
            values (?, 0, ?, true, ?, ?, ?, ?, ?, ?)
            """;

    private final JdbcClient jdbc;
    private final ChangeLog changes;

    NewBranchSettings(JdbcClient jdbc, ChangeLog changes) {
        this.jdbc = jdbc;
        this.changes = changes;
    }

    @EventListener
    void start(BranchOpened opened) {
        calendar(opened.branchId());
        changes.happened(opened.branchId(), opened.by(), "the branch", "opened", "", "with the shipped settings");
    }

    private void calendar(UUID branchId) {
        WorkHours hours = WorkHours.USUAL;
        jdbc.sql(SETTING)
                .params(
                        branchId,
                        Weekdays.MONDAY_TO_FRIDAY.letters(),
                        hours.morningStart(),
                        hours.morningEnd(),
                        hours.afternoonStart(),
                        hours.afternoonEnd(),
                        Travel.USUAL.speedMph(),
                        Travel.USUAL.roadFactor())
                .update();
    }
}
