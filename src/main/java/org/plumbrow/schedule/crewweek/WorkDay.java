package org.plumbrow.schedule.crewweek;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.plumbrow.branch.BranchFacts;
import org.plumbrow.branch.WorkHours;
import org.plumbrow.calc.calendar.Half;
import org.plumbrow.calc.calendar.HalfDay;
import org.plumbrow.crew.CrewFacts;
import org.plumbrow.schedule.CrewBooking;

/**
 * One booking on one working day.
 *
 * @param ordinal which working day of its activity this is, from 0: its name in a calendar, whatever its date
 */
record WorkDay(CrewBooking booking, LocalDate date, Half from, Half to, int ordinal) {

    /** The working days of bookings; days off and the crew's own absences are left out. */
    static List<WorkDay> of(List<CrewBooking> bookings, BranchFacts branch, CrewFacts crew) {
        List<WorkDay> days = new ArrayList<>();
        Map<UUID, Integer> ordinals = new HashMap<>();
        for (CrewBooking booking : bookings) {
            LocalDate last = booking.last().date();
            for (LocalDate date = booking.first().date(); !date.isAfter(last); date = date.plusDays(1)) {
                Half from =
                        date.equals(booking.first().date()) ? booking.first().half() : Half.MORNING;
                Half to = date.equals(last) ? booking.last().half() : Half.AFTERNOON;
                boolean works = branch.workDays().isWorking(date) && !isAway(crew, date, from, to);
                if (works) {
                    int ordinal = ordinals.merge(booking.activityId(), 1, Integer::sum) - 1;
                    days.add(new WorkDay(booking, date, from, to, ordinal));
                }
            }
        }
        return days;
    }

    private static boolean isAway(CrewFacts crew, LocalDate date, Half from, Half to) {
        HalfDay first = new HalfDay(date, from);
        HalfDay last = new HalfDay(date, to);
        return crew.away().stream()
                .anyMatch(time -> !time.first().isAfter(first) && !time.last().isBefore(last));
    }

    LocalTime begins(WorkHours hours) {
        return from == Half.MORNING ? hours.morningStart() : hours.afternoonStart();
    }

    LocalTime ends(WorkHours hours) {
        return to == Half.AFTERNOON ? hours.afternoonEnd() : hours.morningEnd();
    }

    /** "all day", "morning", "afternoon". */
    public String when() {
        return from == to ? from.words() : "all day";
    }
}
