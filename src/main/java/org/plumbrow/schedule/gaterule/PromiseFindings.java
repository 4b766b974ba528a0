package org.plumbrow.schedule.gaterule;

import org.plumbrow.calc.calendar.DayWords;
import org.plumbrow.project.gate.Finding;
import org.plumbrow.schedule.plan.PlannedPromise;

/** Judges a promise by what a plan does to it. */
final class PromiseFindings {

    private PromiseFindings() {}

    /** @param plan which plan, as the sentence's subject */
    static Finding of(String plan, PlannedPromise promise) {
        if (promise.finish().isEmpty()) {
            return new Finding.CannotTell(
                    "%s finds no date for “%s”.".formatted(plan, promise.milestone()),
                    "See the look-ahead: a crew with a skill it needs, or a machine, is missing.");
        }
        String reached = "%s reaches “%s” on %s"
                .formatted(
                        plan,
                        promise.milestone(),
                        DayWords.withYear(promise.finish().get().date()));
        if (promise.halfDaysLate() > 0) {
            return new Finding.Broken(
                    "%s, %s after the promise (%s)."
                            .formatted(reached, days(promise.daysLate()), DayWords.of(promise.promisedOn())),
                    "Promise a later date, or let the branch manager waive this with a reason.");
        }
        return new Finding.Satisfied("%s, %s before the promise (%s)."
                .formatted(
                        reached,
                        promise.daysSpare() == 0 ? "no working day" : days(promise.daysSpare()),
                        DayWords.of(promise.promisedOn())));
    }

    private static String days(int days) {
        return days + (days == 1 ? " working day" : " working days");
    }
}
