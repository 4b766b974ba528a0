package org.plumbrow.calc.planning;

import java.util.Map;
import java.util.Set;
import org.plumbrow.calc.calendar.WorkingCalendar;

/** What an activity takes: a crew's time, somebody's time at a desk, or waiting for somebody else. */
public sealed interface Work {

    /**
     * Work of one crew, without a break except over days off and that crew's own absence.
     *
     * @param skills all of them must be found in the crew
     * @param halfDaysByCrew how long each crew that may do it takes, at least 1; a crew that is not named may not do it
     */
    record ByCrew(Set<String> skills, Map<String, Integer> halfDaysByCrew) implements Work {
        public ByCrew {
            skills = Set.copyOf(skills);
            halfDaysByCrew = Map.copyOf(halfDaysByCrew);
            halfDaysByCrew.values().forEach(halfDays -> atLeastOne("half-days of a crew", halfDays));
        }
    }

    /** Work in the branch's working half-days that no crew is booked for: a drawing, a hand-over. */
    record AtDesk(int halfDays) implements Work {
        public AtDesk {
            atLeastOne("half-days at a desk", halfDays);
        }
    }

    /**
     * Waiting: counted in the days of somebody's calendar. The day it begins does not count; it ends with the last
     * half of the n-th day after.
     *
     * @param counting whose days count; {@link WorkingCalendar#EVERY_DAY} for calendar days
     * @param justInTime begun as late as its successors allow (a locate, an appointment) instead of as early as it can
     */
    record Waiting(int days, WorkingCalendar counting, boolean justInTime) implements Work {
        public Waiting {
            if (days < 0) {
                throw new IllegalArgumentException("days of waiting must not be negative: " + days);
            }
        }
    }

    private static void atLeastOne(String what, int halfDays) {
        if (halfDays < 1) {
            throw new IllegalArgumentException(what + " must be at least 1: " + halfDays);
        }
    }
}
