package org.plumbrow.branch;

import java.time.LocalDate;
import java.time.LocalTime;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Stream;
import org.plumbrow.calc.calendar.Notice;
import org.plumbrow.calc.calendar.WorkingCalendar;

/**
 * A utility as the branch knows it.
 *
 * @param noticeWorkingDays full working days, by the utility's own calendar, between the notice and the outage
 * @param appointmentWeekdays on which it switches
 * @param slots at which hours; empty when nothing is known
 * @param calendar the utility's own working days
 * @param disconnectMostFt how far from its meter its disconnect may stand without a letter
 * @param mustBePresent who has to be there on the day, as the utility says it
 * @param endedOn when the branch stopped working with it: kept for old projects, not offered for new ones
 */
public record UtilityFacts(
        UUID id,
        UUID branchId,
        String name,
        int noticeWorkingDays,
        Weekdays appointmentWeekdays,
        List<Slot> slots,
        Weekdays workingWeekdays,
        boolean federalHolidays,
        List<BranchFacts.OwnClosedDay> closedDays,
        WorkingCalendar calendar,
        int disconnectMostFt,
        String mustBePresent,
        String phone,
        String email,
        Optional<LocalDate> endedOn,
        long version) {

    /** What most utilities allow between their disconnect and their meter. */
    public static final int USUAL_DISCONNECT_FT = 10;

    /** The same with one slot more, its last. */
    UtilityFacts with(Slot slot) {
        List<Slot> all = Stream.concat(slots.stream(), Stream.of(slot)).toList();
        return new UtilityFacts(
                id,
                branchId,
                name,
                noticeWorkingDays,
                appointmentWeekdays,
                all,
                workingWeekdays,
                federalHolidays,
                closedDays,
                calendar,
                disconnectMostFt,
                mustBePresent,
                phone,
                email,
                endedOn,
                version);
    }

    public Notice notice() {
        return new Notice(noticeWorkingDays, calendar);
    }

    /** Whether the utility switches on that date at all. */
    public boolean switchesOn(LocalDate date) {
        return calendar.isWorking(date) && appointmentWeekdays.holds(date.getDayOfWeek());
    }

    /**
     * When power may be off.
     *
     * @param from power goes off no earlier
     * @param to without {@code backBy}: power is back by then; with it: power goes off no later
     * @param backBy power is back by then
     */
    public record Slot(UUID id, LocalTime from, LocalTime to, Optional<LocalTime> backBy) {

        private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("h:mm a", Locale.US);

        public LocalTime latestBack() {
            return backBy.orElse(to);
        }

        /** "9:00 am to 4:00 pm"; "off between 8:00 am and 10:00 am, back by 3:30 pm". */
        public String words() {
            return backBy.map(back -> "off between " + clock(from) + " and " + clock(to) + ", back by " + clock(back))
                    .orElseGet(() -> clock(from) + " to " + clock(to));
        }

        private static String clock(LocalTime time) {
            return time.equals(LocalTime.NOON) ? "noon" : CLOCK.format(time).toLowerCase(Locale.US);
        }

        /** Whether an outage that begins then and lasts so long lies within the slot. */
        public boolean holds(LocalTime off, int outageMinutes) {
            int offMinute = off.toSecondOfDay() / 60;
            boolean beginsInTime = !off.isBefore(from) && (backBy.isEmpty() ? off.isBefore(to) : !off.isAfter(to));
            return beginsInTime && offMinute + outageMinutes <= latestBack().toSecondOfDay() / 60;
        }
    }
}
