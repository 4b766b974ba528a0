package org.plumbrow.branch.utility;

import java.time.DayOfWeek;
import java.util.List;
import java.util.stream.Collectors;
import org.plumbrow.branch.UtilityFacts;
import org.plumbrow.branch.Weekdays;
import org.plumbrow.branch.Written;

/**
 * What can be changed of a utility at once; slots and closed days come and go one by one.
 *
 * @param noticeWorkingDays full working days by the utility's calendar, 0 to 60
 * @param disconnectMostFt how far from its meter its disconnect may stand without a letter, 1 to 500
 * @param mustBePresent may be empty, as phone and e-mail may
 */
public record UtilityTerms(
        String name,
        int noticeWorkingDays,
        Weekdays appointmentWeekdays,
        Weekdays workingWeekdays,
        boolean federalHolidays,
        int disconnectMostFt,
        String mustBePresent,
        String phone,
        String email) {

    static UtilityTerms of(UtilityFacts utility) {
        return new UtilityTerms(
                utility.name(),
                utility.noticeWorkingDays(),
                utility.appointmentWeekdays(),
                utility.workingWeekdays(),
                utility.federalHolidays(),
                utility.disconnectMostFt(),
                utility.mustBePresent(),
                utility.phone(),
                utility.email());
    }

    List<Written> written() {
        return List.of(
                Written.of("Name", "name", name),
                Written.of("Notice, full working days", "noticeWorkingDays", noticeWorkingDays),
                Written.of(
                        "Switches on", "appointmentWeekdays", sent(appointmentWeekdays), appointmentWeekdays.words()),
                Written.of("Works on", "workingWeekdays", sent(workingWeekdays), workingWeekdays.words()),
                Written.of(
                        "Federal holidays", "federalHolidays", federalHolidays, federalHolidays ? "closed" : "worked"),
                Written.of("Disconnect to meter at most, ft", "disconnectMostFt", disconnectMostFt),
                Written.of("Must be there", "mustBePresent", mustBePresent),
                Written.of("Phone", "phone", phone),
                Written.of("E-mail for notices", "email", email));
    }

    private static String sent(Weekdays days) {
        return days.inOrder().stream().map(DayOfWeek::name).collect(Collectors.joining(","));
    }
}
