package org.plumbrow.calc.planning;

import org.plumbrow.calc.calendar.HalfDay;

/** Working half-days on which a crew is booked for two things at once. */
public record Clash(
        String crewId, String activityId, String otherActivityId, HalfDay first, HalfDay last, int halfDays) {}
