package org.plumbrow.calc.planning;

import java.util.Optional;
import org.plumbrow.calc.calendar.HalfDay;

/**
 * What the plan does to a promise.
 *
 * @param finish of the promised milestone; empty when one of its activities has no date
 * @param halfDaysLate working half-days after the promised day, 0 when it holds
 * @param halfDaysSpare working half-days before the end of the promised day, 0 when it is late
 * @param bindingActivityId the activity whose finish is the milestone's
 */
public record PromiseOutcome(
        Promise promise,
        Optional<HalfDay> finish,
        int halfDaysLate,
        int halfDaysSpare,
        Optional<String> bindingActivityId) {

    public boolean holds() {
        return finish.isPresent() && halfDaysLate == 0;
    }
}
