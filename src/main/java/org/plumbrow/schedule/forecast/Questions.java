package org.plumbrow.schedule.forecast;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;
import org.plumbrow.calc.duration.Milestone;
import org.plumbrow.calc.duration.ProjectActivity;
import org.plumbrow.calc.duration.Spread;
import org.plumbrow.calc.forecast.ForecastQuestion;
import org.plumbrow.calc.forecast.Target;
import org.plumbrow.calc.forecast.Uncertainty;
import org.plumbrow.calc.planning.Plan;
import org.plumbrow.calc.planning.PlanningProblem;
import org.plumbrow.project.ProjectFacts;
import org.plumbrow.schedule.activity.ActivityRow;
import org.plumbrow.schedule.activity.JobActivities;

/**
 * Asks the forecast of a branch's plan: each activity with the spread of its own table and crew, each milestone that is
 * still ahead. Pure.
 */
final class Questions {

    private Questions() {}

    /** @param people of each crew, by id @param asked of which projects milestones are asked */
    static ForecastQuestion of(
            PlanningProblem problem,
            Plan plan,
            List<JobActivities> jobs,
            Map<UUID, Integer> people,
            Predicate<UUID> asked) {
        Map<String, Uncertainty> uncertain = new HashMap<>();
        List<Target> targets = new ArrayList<>();
        for (JobActivities job : jobs) {
            for (JobActivities.Item item : job.items()) {
                String id = item.row().id().toString();
                plan.of(id)
                        .ifPresent(placement -> uncertain.put(
                                id, uncertainty(item, placement.crewId().map(UUID::fromString), people)));
            }
            if (asked.test(job.project().id())) {
                targets.addAll(targets(job));
            }
        }
        return new ForecastQuestion(problem, plan, uncertain, targets, true);
    }

    private static Uncertainty uncertainty(JobActivities.Item item, Optional<UUID> crew, Map<UUID, Integer> people) {
        ProjectActivity derived = item.derived();
        return switch (derived.kind()) {
            case WAIT ->
                derived.isMeasuredWait()
                        ? new Uncertainty.Measured(derived.days())
                        : new Uncertainty.OfWait(derived.days());
            case CREW ->
                new Uncertainty.Measured(work(crew.filter(people::containsKey)
                        .map(id -> item.derivedFor(id).daysFor(people.get(id)))
                        .orElseGet(derived::days)));
            case DESK -> new Uncertainty.Measured(work(derived.days()));
        };
    }

    /** Nothing is planned shorter than half a day, so its middle is not either. */
    private static Spread work(Spread days) {
        double planned = days.halfDaysTypical() / 2.0;
        return days.typical() >= planned ? days : new Spread(days.low(), planned, Math.max(planned, days.high()));
    }

    private static List<Target> targets(JobActivities job) {
        Milestone followed = followed(job.project());
        return Arrays.stream(Milestone.values())
                .map(milestone -> target(job, milestone, milestone == followed))
                .filter(Objects::nonNull)
                .toList();
    }

    /** The promised milestone, else system on. */
    static Milestone followed(ProjectFacts project) {
        ProjectFacts.Promise promise = project.promise();
        return promise == null ? Milestone.SYSTEM_ON : promise.milestone();
    }

    /** @return null for a milestone that the project doesn't have or has reached */
    private static @Nullable Target target(JobActivities job, Milestone milestone, boolean explained) {
        List<ActivityRow> own = job.items().stream()
                .map(JobActivities.Item::row)
                .filter(row -> milestone.codes().contains(row.code()))
                .toList();
        if (own.isEmpty() || own.stream().allMatch(ActivityRow::isDone)) {
            return null;
        }
        ProjectFacts.Promise promise = job.project().promise();
        return new Target(
                job.project().id().toString(),
                milestone.name(),
                own.stream().map(row -> row.id().toString()).toList(),
                promise != null && promise.milestone() == milestone ? Optional.of(promise.lastDay()) : Optional.empty(),
                explained);
    }
}
