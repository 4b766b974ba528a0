package org.plumbrow.calc.outage;

import java.time.LocalDate;
import java.util.List;
import org.plumbrow.calc.calendar.DayWords;
import org.plumbrow.calc.calendar.Notice;

/** How a utility takes the power away: its notice, counted by its own calendar, and its slots. */
public record UtilityTerms(String name, Notice notice, List<Slot> slots) {

    public UtilityTerms {
        slots = List.copyOf(slots);
    }

    public List<Slot> slotsOn(LocalDate day) {
        return slots.stream()
                .filter(slot -> slot.weekdays().contains(day.getDayOfWeek()))
                .toList();
    }

    public String noticeRule() {
        int days = notice.fullWorkingDays();
        if (days == 0) {
            return "The utility needs to hear of it the day before.";
        }
        return "The utility needs " + days + (days == 1 ? " full working day." : " full working days.");
    }

    /** As a colleague says it: "The utility needs 10 full working days. For Fri, Mar 26 the notice must leave by Thu, Mar 11." */
    public String noticeSentence(LocalDate day) {
        return noticeRule() + " For " + DayWords.of(day) + " the notice must leave by "
                + DayWords.of(notice.lastDayToSendFor(day)) + ".";
    }
}
