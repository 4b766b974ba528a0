package org.plumbrow.calc.outage;

import java.time.DayOfWeek;
import java.time.LocalTime;
import java.util.Optional;
import java.util.Set;

/**
 * Hours in which a utility switches. Without {@code backBy} the whole outage lies between the two times; with it
 * ("off 8 to 10, back by 3:30") only the start does, and the power is back by that time.
 */
public record Slot(Set<DayOfWeek> weekdays, LocalTime from, LocalTime to, Optional<LocalTime> backBy) {

    public Slot {
        weekdays = Set.copyOf(weekdays);
        if (!from.isBefore(to)) {
            throw new IllegalArgumentException("slot from " + from + " to " + to + " is empty");
        }
        if (backBy.isPresent() && backBy.get().isBefore(to)) {
            throw new IllegalArgumentException("back by " + backBy.get() + " lies before " + to);
        }
    }

    /** The last minute at which the power must be back. */
    public LocalTime end() {
        return backBy.orElse(to);
    }

    /** May the outage start then and last so long? Both ends of the slot count as inside. */
    public boolean holds(LocalTime start, int outageMinutes) {
        return !start.isBefore(from) && !start.isAfter(to) && marginMinutes(start, outageMinutes) >= 0;
    }

    /** Minutes left between the planned end and the end of the slot; negative when it does not fit. */
    public int marginMinutes(LocalTime start, int outageMinutes) {
        return minuteOf(end()) - minuteOf(start) - outageMinutes;
    }

    /** The last start that leaves room for the outage; before {@code from} when none does. */
    public LocalTime lastStart(int outageMinutes) {
        int byEnd = minuteOf(end()) - outageMinutes;
        return LocalTime.ofSecondOfDay(60L * Math.max(0, Math.min(minuteOf(to), byEnd)));
    }

    private static int minuteOf(LocalTime time) {
        return time.toSecondOfDay() / 60;
    }
}
