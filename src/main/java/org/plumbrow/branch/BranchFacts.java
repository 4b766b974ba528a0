package org.plumbrow.branch;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.plumbrow.calc.calendar.WorkingCalendar;

/**
 * A branch with its days, hours, yard and travel.
 *
 * @param calendar working weekdays without the federal holidays (where the branch keeps them) and its own closed days
 * @param workDays the same with the days off that crews work; offices and utilities do not count those
 * @param federalHolidays whether the branch keeps them
 * @param closedDays the branch's own, in time
 * @param yard where crews start, if the branch has said so
 */
public record BranchFacts(
        UUID id,
        String code,
        String name,
        ZoneId zone,
        WorkHours hours,
        Weekdays workingWeekdays,
        boolean federalHolidays,
        List<OwnClosedDay> closedDays,
        WorkingCalendar calendar,
        WorkingCalendar workDays,
        Optional<Yard> yard,
        Travel travel,
        long version,
        long calendarVersion) {

    /** @param address as people write it, may be empty; coordinates in degrees */
    public record Yard(String address, double latitudeDeg, double longitudeDeg) {}

    /** A day off that was entered by hand, of the branch or of a utility. */
    public record OwnClosedDay(UUID id, LocalDate date, String reason) {}
}
