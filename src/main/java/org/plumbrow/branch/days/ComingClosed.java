package org.plumbrow.branch.days;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.format.TextStyle;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.plumbrow.branch.BranchFacts.OwnClosedDay;
import org.plumbrow.calc.calendar.WorkingCalendar;
import org.plumbrow.web.Option;
import org.springframework.web.util.UriComponentsBuilder;

/**
 * A day off ahead.
 *
 * @param id of a day that was entered by hand and can be reopened; none where a rule closes it
 */
public record ComingClosed(
        LocalDate date, String reason, @Nullable UUID id) {

    /** What is closed in the two years from today. */
    public static List<ComingClosed> of(WorkingCalendar calendar, List<OwnClosedDay> own, LocalDate today) {
        Map<LocalDate, UUID> byHand =
                own.stream().collect(Collectors.toMap(OwnClosedDay::date, OwnClosedDay::id, (one, other) -> one));
        return calendar.closedDays().entrySet().stream()
                .filter(day -> !day.getKey().isBefore(today) && day.getKey().isBefore(today.plusYears(2)))
                .sorted(Map.Entry.comparingByKey())
                .map(day -> new ComingClosed(day.getKey(), day.getValue(), byHand.get(day.getKey())))
                .toList();
    }

    /** Where a POST closes that day again: the way to undo its reopening. */
    public static String closeAgain(String address, OwnClosedDay day) {
        return UriComponentsBuilder.fromPath(address)
                .queryParam("firstDay", day.date())
                .queryParam("reason", "{reason}")
                .build(day.reason())
                .toString();
    }

    /** The days of the week as a form offers them. */
    public static List<Option> weekdays() {
        return Arrays.stream(DayOfWeek.values())
                .map(day -> new Option(day.name(), day.getDisplayName(TextStyle.FULL, Locale.US)))
                .toList();
    }
}
