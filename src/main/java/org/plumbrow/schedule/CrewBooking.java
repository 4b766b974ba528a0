package org.plumbrow.schedule;

import java.util.UUID;
import org.plumbrow.calc.calendar.HalfDay;
import org.plumbrow.calc.duration.ActivityCode;

/**
 * A crew at one activity of one project, as published.
 *
 * @param key lasting name of the activity within its project
 * @param last its last half-day, included
 */
public record CrewBooking(
        UUID crewId,
        UUID projectId,
        UUID activityId,
        String key,
        ActivityCode code,
        String words,
        HalfDay first,
        HalfDay last) {

    public boolean holds(HalfDay halfDay) {
        return !halfDay.isBefore(first) && !halfDay.isAfter(last);
    }
}
