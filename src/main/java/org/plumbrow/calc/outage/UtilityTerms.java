package org.plumbrow.calc.outage;

import java.time.LocalDate;
import java.util.List;
import org.plumbrow.calc.calendar.ClockWords;
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

    /** Which starts the utility's slots leave for an outage of so many minutes. */
    public String slotSentence(LocalDate day, int outageMinutes) {
        List<String> starts = slotsOn(day).stream()
                .filter(slot -> slot.marginMinutes(slot.from(), outageMinutes) >= 0)
                .map(slot -> ClockWords.of(slot.from()) + " to " + ClockWords.of(slot.lastStart(outageMinutes)))
                .toList();
        return starts.isEmpty()
                ? "The outage of " + outageMinutes + " min is longer than the utility's slot. Plan fewer minutes."
                : "The utility's slot on " + DayWords.of(day) + " leaves starts from " + String.join(", or ", starts)
                        + " for " + outageMinutes + " min. Choose one of these.";
    }
}
