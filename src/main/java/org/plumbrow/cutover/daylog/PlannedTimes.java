package org.plumbrow.cutover.daylog;

import java.time.Instant;
import java.time.ZoneId;
import java.time.temporal.ChronoUnit;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.plumbrow.cutover.OutageFacts;

/** When each step should be done: the power goes off at the window's start, the usual minutes lead from there. */
final class PlannedTimes {

    private final Map<String, Instant> byStep = new HashMap<>();

    PlannedTimes(List<LogStep> steps, OutageFacts window, ZoneId zone) {
        int minutesBefore = steps.stream()
                .takeWhile(step -> !step.code().equals(Procedure.POWER_OFF))
                .filter(LogStep::applies)
                .mapToInt(LogStep::typicalMinutes)
                .sum();
        Instant at =
                window.day().atTime(window.start()).atZone(zone).toInstant().minus(minutesBefore, ChronoUnit.MINUTES);
        for (LogStep step : steps) {
            // Power off is the moment itself; its minutes are those of opening, counted behind it.
            boolean off = step.code().equals(Procedure.POWER_OFF);
            Instant done = step.applies() ? at.plus(step.typicalMinutes(), ChronoUnit.MINUTES) : at;
            byStep.put(step.code(), off ? at : done);
            at = done;
        }
    }

    Instant of(LogStep step) {
        return byStep.get(step.code());
    }
}
