package org.plumbrow.schedule;

import java.util.Optional;
import java.util.UUID;
import org.plumbrow.calc.calendar.HalfDay;
import org.plumbrow.calc.duration.ActivityCode;

/**
 * An activity as the published plan has it.
 *
 * @param key lasting name of the activity within its project: {@code cutover}, {@code racking-2}
 * @param finish its last half-day, included
 * @param crewId empty for waits, for work at a desk and for what is done
 */
public record PlannedDates(
        UUID activityId,
        UUID projectId,
        String key,
        ActivityCode code,
        String words,
        HalfDay start,
        HalfDay finish,
        Optional<UUID> crewId,
        boolean isDone) {}
