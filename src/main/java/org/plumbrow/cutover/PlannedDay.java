package org.plumbrow.cutover;

import java.time.LocalTime;
import java.util.Optional;
import org.plumbrow.calc.calendar.HalfDay;
import org.plumbrow.calc.duration.ActivityCode;
import org.plumbrow.project.ProjectFacts;
import org.plumbrow.schedule.activity.Pin;
import org.plumbrow.schedule.activity.Progress;
import org.plumbrow.schedule.activity.Recorded;
import org.plumbrow.web.Actor;
import org.springframework.stereotype.Component;

/** A day that was told to somebody is a pin: the plan keeps it, and waits for no appointment any more. */
@Component
class PlannedDay {

    private final Progress progress;

    PlannedDay(Progress progress) {
        this.progress = progress;
    }

    void isTold(ProjectFacts project, OutageFacts window, Actor by) {
        if (project.isInThePlan()) {
            HalfDay start = window.start().isBefore(LocalTime.NOON)
                    ? HalfDay.morning(window.day())
                    : HalfDay.afternoon(window.day());
            Pin pin = new Pin(start, Optional.ofNullable(window.crewId()), "Outage booked with the utility.");
            progress.answeredUnchecked(project.id(), ActivityCode.CUTOVER_APPOINTMENT, by);
            progress.fixUnchecked(project.id(), ActivityCode.CUTOVER, pin, by);
        }
    }

    void isNoLongerTold(ProjectFacts project, Actor by) {
        if (project.isInThePlan()) {
            progress.recordUnchecked(project.id(), ActivityCode.CUTOVER_APPOINTMENT.key(), Recorded.NOTHING, by);
            progress.releaseUnchecked(project.id(), ActivityCode.CUTOVER, by);
        }
    }
}
