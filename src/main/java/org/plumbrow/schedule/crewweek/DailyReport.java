package org.plumbrow.schedule.crewweek;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * What a crew did on a project on a day.
 *
 * @param version as it was opened; -1 for the first of the day
 * @param hours on the site
 * @param weatherHours of these that the weather took
 * @param trouble what kept them from the work; empty for nothing
 */
record DailyReport(
        long version,
        int people,
        BigDecimal hours,
        DayWeather weather,
        BigDecimal weatherHours,
        String trouble,
        List<Line> lines) {

    /** The version of a report that nobody has written yet. */
    static final long NONE = -1;

    /** @param hours that the crew spent on it @param done whether nothing is left of it */
    record Line(UUID activityId, @Nullable BigDecimal quantity, BigDecimal hours, boolean done) {}

    DailyReport {
        lines = List.copyOf(lines);
    }

    Optional<Line> line(UUID activityId) {
        return lines.stream().filter(line -> line.activityId.equals(activityId)).findFirst();
    }
}
