package org.plumbrow.cutover;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import org.plumbrow.calc.calendar.DayWords;
import org.plumbrow.calc.calendar.HalfDay;
import org.plumbrow.calc.duration.ActivityCode;
import org.plumbrow.calc.outage.WindowQuestion.Earliest;
import org.plumbrow.project.ProjectFacts;
import org.plumbrow.schedule.PlannedDates;
import org.plumbrow.schedule.PublishedPlan;
import org.springframework.stereotype.Component;

/** What the published plan says around a cutover: when the work before it is done, and how late it may be for the promise. */
@Component
class PlanBefore {

    /** The service side: what must be landed and inspected before the utility comes. The array may be unfinished. */
    private static final Set<ActivityCode> SERVICE_SIDE =
            Set.of(ActivityCode.AC_GEAR, ActivityCode.CONDUCTORS, ActivityCode.SERVICE_INSPECTION);

    private final PublishedPlan plan;

    PlanBefore(PublishedPlan plan) {
        this.plan = plan;
    }

    /** The first day after the service side; empty when nothing of it is planned or it is done. */
    Optional<Earliest> serviceSideDone(UUID projectId) {
        return plan.of(projectId).stream()
                .filter(dates -> SERVICE_SIDE.contains(dates.code()) && !dates.isDone())
                .reduce((one, other) -> other.finish().isAfter(one.finish()) ? other : one)
                .map(last -> new Earliest(
                        dayAfter(last.finish()),
                        "not before " + last.words() + ", planned for "
                                + DayWords.of(last.finish().date()) + "."));
    }

    private static LocalDate dayAfter(HalfDay finish) {
        return finish.next().half() == org.plumbrow.calc.calendar.Half.MORNING
                ? finish.date().plusDays(1)
                : finish.date();
    }

    /** Each day that the cutover slips behind the plan, the milestone slips too; what the plan has in hand is left over. */
    LocalDate latestCutover(UUID projectId, ProjectFacts.Promise promise) {
        List<PlannedDates> dates = plan.of(projectId);
        Optional<LocalDate> cutover = dates.stream()
                .filter(one -> one.code() == ActivityCode.CUTOVER)
                .map(one -> one.finish().date())
                .findFirst();
        Optional<LocalDate> reached = dates.stream()
                .filter(one -> promise.milestone().codes().contains(one.code()))
                .map(one -> one.finish().date())
                .max(LocalDate::compareTo);
        if (cutover.isEmpty() || reached.isEmpty() || reached.get().isBefore(cutover.get())) {
            return promise.lastDay();
        }
        return promise.lastDay().minusDays(ChronoUnit.DAYS.between(cutover.get(), reached.get()));
    }
}
