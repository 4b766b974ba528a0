package org.plumbrow.schedule.forecast;

import java.time.Instant;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.function.Predicate;
import org.plumbrow.calc.duration.Milestone;
import org.plumbrow.calc.forecast.Driver;
import org.plumbrow.calc.forecast.Effort;
import org.plumbrow.calc.forecast.Forecast;
import org.plumbrow.calc.forecast.Forecaster;
import org.plumbrow.calc.forecast.TargetForecast;
import org.plumbrow.calc.planning.Plan;
import org.plumbrow.calc.planning.PlanningProblem;
import org.plumbrow.schedule.activity.JobActivities;

/** Plays a branch's plan many times. Pure: the same plan on the same day has the same forecast. */
public final class BranchForecast {

    private BranchForecast() {}

    /**
     * @param people of each crew, by id
     * @return of every milestone that is still ahead and has a place in the plan
     */
    public static List<MilestoneForecast> of(
            PlanningProblem problem, Plan plan, List<JobActivities> jobs, Map<UUID, Integer> people, Instant now) {
        return of(problem, plan, jobs, people, now, project -> true);
    }

    /** As {@link #of}, of some projects only. @param asked by project id */
    public static List<MilestoneForecast> of(
            PlanningProblem problem,
            Plan plan,
            List<JobActivities> jobs,
            Map<UUID, Integer> people,
            Instant now,
            Predicate<UUID> asked) {
        Forecast forecast = Forecaster.forecast(Questions.of(problem, plan, jobs, people, asked), Effort.USUAL);
        Map<String, MilestoneForecast.DrivenBy> names = names(jobs);
        return forecast.targets().stream()
                .map(target -> said(target, names, forecast.runs(), now))
                .toList();
    }

    private static Map<String, MilestoneForecast.DrivenBy> names(List<JobActivities> jobs) {
        Map<String, MilestoneForecast.DrivenBy> names = new HashMap<>();
        jobs.forEach(job -> job.items()
                .forEach(item -> names.put(
                        item.row().id().toString(),
                        new MilestoneForecast.DrivenBy(
                                job.project().id(),
                                job.project().name(),
                                item.row().words(),
                                0))));
        return names;
    }

    private static MilestoneForecast said(
            TargetForecast of, Map<String, MilestoneForecast.DrivenBy> names, int runs, Instant now) {
        return new MilestoneForecast(
                UUID.fromString(of.target().projectId()),
                Milestone.valueOf(of.target().milestone()),
                of.evenChance(),
                of.fourInFive(),
                of.nineteenInTwenty(),
                of.chanceKept()
                        .flatMap(chance ->
                                of.target().keptUntil().map(until -> new MilestoneForecast.Kept(until, chance))),
                of.drivers().stream().map(driver -> drivenBy(driver, names)).toList(),
                runs,
                now);
    }

    private static MilestoneForecast.DrivenBy drivenBy(Driver driver, Map<String, MilestoneForecast.DrivenBy> names) {
        MilestoneForecast.DrivenBy name = names.get(driver.activityId());
        return new MilestoneForecast.DrivenBy(name.projectId(), name.project(), name.activity(), driver.share());
    }
}
