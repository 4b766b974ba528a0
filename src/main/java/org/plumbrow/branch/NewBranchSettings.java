package org.plumbrow.branch;

import java.util.Arrays;
import java.util.UUID;
import org.plumbrow.account.BranchOpened;
import org.plumbrow.calc.duration.ShippedTable;
import org.plumbrow.calc.duration.WaitTime.DayKind;
import org.springframework.context.event.EventListener;
import org.springframework.jdbc.core.JdbcOperations;
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

    private static final String RATE = """
            insert into work_rate (branch_id, code, version, low_per_day, typical_per_day, high_per_day, crew_least,
                                   crew_most, equipment, set_up_days)
            values (?, ?, 0, ?, ?, ?, ?, ?, ?, ?)
            """;
    private static final String FIXED_TIME = """
            insert into fixed_time (branch_id, code, version, low_days, typical_days, high_days, people)
            values (?, ?, 0, ?, ?, ?, ?)
            """;
    private static final String WAIT = """
            insert into wait_time (branch_id, code, version, least_days, usual_days, most_days, calendar_days)
            values (?, ?, 0, ?, ?, ?, ?)
            """;

    private final JdbcClient jdbc;
    private final JdbcOperations batches;
    private final ChangeLog changes;

    NewBranchSettings(JdbcClient jdbc, JdbcOperations batches, ChangeLog changes) {
        this.jdbc = jdbc;
        this.batches = batches;
        this.changes = changes;
    }

    @EventListener
    void start(BranchOpened opened) {
        calendar(opened.branchId());
        rates(opened.branchId());
        fixedTimes(opened.branchId());
        waits(opened.branchId());
        weather(opened.branchId());
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

    private void weather(UUID branchId) {
        jdbc.sql("insert into weather_loss (branch_id, family, version, lost_half_days)"
                        + " select ?, family, 0, array_fill(0::double precision, array[12]) from unnest(?) family")
                .params(
                        branchId,
                        Arrays.stream(WeatherFamily.values()).map(Enum::name).toArray(String[]::new))
                .update();
    }

    private void rates(UUID branchId) {
        batches.batchUpdate(
                RATE,
                ShippedTable.rates().stream()
                        .map(rate -> new Object[] {
                            branchId,
                            rate.code(),
                            rate.low(),
                            rate.typical(),
                            rate.high(),
                            rate.crewLeast(),
                            rate.crewMost(),
                            RateTables.equipment(rate.equipment()),
                            rate.firstUnitDays()
                        })
                        .toList());
    }

    private void fixedTimes(UUID branchId) {
        batches.batchUpdate(
                FIXED_TIME,
                ShippedTable.fixedTimes().stream()
                        .map(time -> new Object[] {
                            branchId,
                            time.code(),
                            time.days().low(),
                            time.days().typical(),
                            time.days().high(),
                            time.people()
                        })
                        .toList());
    }

    private void waits(UUID branchId) {
        batches.batchUpdate(
                WAIT,
                ShippedTable.waits().stream()
                        .map(wait -> new Object[] {
                            branchId,
                            wait.code(),
                            wait.days().low(),
                            wait.days().typical(),
                            wait.days().high(),
                            wait.dayKind() == DayKind.CALENDAR
                        })
                        .toList());
    }
}
