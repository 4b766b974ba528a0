package org.plumbrow.schedule.activity;

import java.util.Optional;
import org.plumbrow.calc.calendar.HalfDay;
import org.plumbrow.permit.WaitMoved;
import org.springframework.context.event.EventListener;
import org.springframework.stereotype.Component;

/** Takes what the waits of a project say into its plan: asked for, promised, came. Plan and forecast are then made anew. */
@Component
class AnswersFromWaits {

    private final Progress progress;

    AnswersFromWaits(Progress progress) {
        this.progress = progress;
    }

    @EventListener
    void after(WaitMoved moved) {
        HalfDay sent = HalfDay.morning(moved.sent());
        Recorded now = moved.received()
                .map(day -> Recorded.done(sent, HalfDay.afternoon(day), Optional.empty()))
                .orElseGet(() -> new Recorded(
                        Optional.of(sent), Optional.empty(), Optional.empty(), Optional.empty(), moved.expected()));
        progress.awaitedUnchecked(moved.projectId(), moved.activity(), now, moved.by());
    }
}
