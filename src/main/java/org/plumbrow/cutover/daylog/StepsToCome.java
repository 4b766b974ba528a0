package org.plumbrow.cutover.daylog;

import java.util.List;
import java.util.Optional;
import org.plumbrow.cutover.daylog.DayLogSheet.LaterView;

/** What comes after now, in the order of the procedure: a phone goes on with it without signal. */
record StepsToCome(LogState state, Readings readings) {

    /**
     * A hold point at which one stands still waits for whoever signs after the next.
     *
     * @param now empty where nobody stands at a step: before the log is open, and while the work is being reversed
     */
    List<LaterView> after(Optional<LogStep> now) {
        return state.steps().stream()
                .filter(step -> step.applies() && !state.isPassed(step))
                .filter(step -> now.isEmpty() || step.position() >= now.get().position())
                .map(step -> new LaterView(step, readings.of(step.code()), parts(step, isNow(step, now))))
                .filter(later -> !isNow(later.step(), now) || !later.parts().isEmpty())
                .toList();
    }

    private static boolean isNow(LogStep step, Optional<LogStep> now) {
        return now.map(step::equals).orElse(false);
    }

    private List<Hold.Part> parts(LogStep step, boolean now) {
        if (!step.hold()) {
            return List.of();
        }
        List<Hold.Part> unsigned = state.unsigned(Hold.valueOf(step.code()));
        return now ? unsigned.subList(1, unsigned.size()) : unsigned;
    }
}
