package org.plumbrow.branch;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.plumbrow.branch.BranchFacts.OwnClosedDay;
import org.plumbrow.branch.UtilityFacts.Slot;
import org.plumbrow.calc.calendar.ClosedDay;
import org.plumbrow.calc.calendar.FederalHolidays;
import org.plumbrow.calc.calendar.WorkingCalendar;

/** Rows of the settings' tables as the records that other rooms read. */
final class SettingRows {

    private SettingRows() {}

    /** A closed day with whose it is: a utility's, or the branch's own. */
    record ClosedRow(@Nullable UUID utilityId, OwnClosedDay day) {
        static ClosedRow of(ResultSet row, int number) throws SQLException {
            return new ClosedRow(
                    row.getObject("utility_id", UUID.class),
                    new OwnClosedDay(
                            row.getObject("id", UUID.class),
                            row.getObject("day", LocalDate.class),
                            row.getString("reason")));
        }
    }

    /** Null where the row's utility has no slot. */
    static @Nullable Slot slot(ResultSet row) throws SQLException {
        UUID id = row.getObject("slot_id", UUID.class);
        return id == null
                ? null
                : new Slot(
                        id,
                        row.getObject("off_from", LocalTime.class),
                        row.getObject("off_to", LocalTime.class),
                        Optional.ofNullable(row.getObject("back_by", LocalTime.class)));
    }

    /** Which years the federal holidays are worked out for. */
    record Years(int first, int last) {}

    static BranchFacts branch(ResultSet row, List<OwnClosedDay> closed, Years years) throws SQLException {
        Weekdays weekdays = Weekdays.of(row.getString("working_weekdays"));
        boolean federal = row.getBoolean("federal_holidays");
        WorkingCalendar calendar = calendar(weekdays, federal, closed, years);
        return new BranchFacts(
                row.getObject("id", UUID.class),
                row.getString("code"),
                row.getString("name"),
                ZoneId.of(row.getString("zone")),
                new WorkHours(
                        row.getObject("morning_start", LocalTime.class),
                        row.getObject("morning_end", LocalTime.class),
                        row.getObject("afternoon_start", LocalTime.class),
                        row.getObject("afternoon_end", LocalTime.class)),
                weekdays,
                federal,
                closed,
                calendar,
                calendar.workedAlsoOn(worked(row)),
                yard(row),
                new Travel(row.getDouble("travel_speed_mph"), row.getDouble("travel_road_factor")),
                row.getLong("version"),
                row.getLong("calendar_version"));
    }

    private static List<LocalDate> worked(ResultSet row) throws SQLException {
        java.sql.Date[] days = (java.sql.Date[]) row.getArray("worked_days").getArray();
        return Arrays.stream(days).map(java.sql.Date::toLocalDate).toList();
    }

    private static Optional<BranchFacts.Yard> yard(ResultSet row) throws SQLException {
        Double latitude = row.getObject("yard_latitude_deg", Double.class);
        Double longitude = row.getObject("yard_longitude_deg", Double.class);
        return latitude == null || longitude == null
                ? Optional.empty()
                : Optional.of(new BranchFacts.Yard(text(row, "yard_address"), latitude, longitude));
    }

    static UtilityFacts utility(ResultSet row, List<OwnClosedDay> closed, Years years) throws SQLException {
        Weekdays weekdays = Weekdays.of(row.getString("working_weekdays"));
        boolean federal = row.getBoolean("federal_holidays");
        return new UtilityFacts(
                row.getObject("id", UUID.class),
                row.getObject("branch_id", UUID.class),
                row.getString("name"),
                row.getInt("notice_working_days"),
                Weekdays.of(row.getString("appointment_weekdays")),
                List.of(),
                weekdays,
                federal,
                closed,
                calendar(weekdays, federal, closed, years),
                row.getInt("disconnect_most_ft"),
                text(row, "must_be_present"),
                text(row, "phone"),
                text(row, "email"),
                Optional.ofNullable(row.getObject("ended_on", LocalDate.class)),
                row.getLong("version"));
    }

    static PermitOfficeFacts permitOffice(ResultSet row, int number) throws SQLException {
        return new PermitOfficeFacts(
                row.getObject("id", UUID.class),
                row.getObject("branch_id", UUID.class),
                row.getString("name"),
                PermitOfficeFacts.CodeEdition.valueOf(row.getString("code_edition")),
                days(row, "permit"),
                days(row, "inspection"),
                text(row, "phone"),
                Optional.ofNullable(row.getObject("ended_on", LocalDate.class)),
                row.getLong("version"));
    }

    private static Optional<Days> days(ResultSet row, String wait) throws SQLException {
        int least = row.getInt(wait + "_least_days");
        return row.wasNull()
                ? Optional.empty()
                : Optional.of(new Days(least, row.getInt(wait + "_usual_days"), row.getInt(wait + "_most_days")));
    }

    private static WorkingCalendar calendar(
            Weekdays weekdays, boolean federal, Collection<OwnClosedDay> closed, Years years) {
        List<ClosedDay> holidays = federal ? FederalHolidays.closedDays(years.first, years.last) : List.of();
        return WorkingCalendar.of(weekdays.days(), holidays)
                .closedAlsoOn(closed.stream()
                        .map(day -> new ClosedDay(day.date(), day.reason()))
                        .toList());
    }

    private static String text(ResultSet row, String column) throws SQLException {
        String text = row.getString(column);
        return text == null ? "" : text;
    }
}
