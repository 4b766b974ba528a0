package org.plumbrow.schedule.plan;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import org.plumbrow.project.ProjectFacts;
import org.plumbrow.schedule.activity.Pin;
import org.plumbrow.schedule.forecast.MilestoneForecast;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Computes what a change would do before anybody makes it. Nothing is stored. Callers have asked {@code Access}. */
@Service
@Transactional(readOnly = true)
public class WhatIf {

    private final PlanInputs inputs;
    private final PlanForecasting forecasting;
    private final PlansAtOnce plans;

    WhatIf(PlanInputs inputs, PlanForecasting forecasting, PlansAtOnce plans) {
        this.inputs = inputs;
        this.forecasting = forecasting;
        this.plans = plans;
    }

    /**
     * What a settled start would do.
     *
     * @param changes against the same plan without it
     * @param standing open dates that stay where they are
     * @param placed where the activity would stand; empty if nowhere
     * @param before what the plan without it does to each promise, soonest promised first
     * @param after what it would do to each
     * @param findings what would be new that cannot hold
     */
    public record Outcome(
            PlanChanges changes,
            int standing,
            Optional<PlannedRow> placed,
            List<PlannedPromise> before,
            List<PlannedPromise> after,
            List<PlanFinding> findings) {}

    public Outcome fixing(UUID branchId, UUID activityId, Pin pin) {
        BranchProblem now = inputs.stored(branchId);
        BranchProblem then = now.fixing(activityId, pin);
        Optional<PlanForecasting.Known> published = forecasting.published(branchId);
        ComputedPlan without = plans.of(now, published);
        ComputedPlan with = plans.of(then, published);
        PlanChanges.Snapshot before = without.snapshot(now);
        PlanChanges.Snapshot after = with.snapshot(then);
        Set<String> known = new HashSet<>();
        without.findings().forEach(finding -> known.add(finding.sentence()));
        PlanChanges changes = PlanChanges.between(before, after, now.today());
        int open = (int) after.rows().stream().filter(row -> !row.isDone()).count();
        return new Outcome(
                changes,
                open - changes.moves().size(),
                after.rows().stream()
                        .filter(row -> row.activityId().equals(activityId))
                        .findFirst(),
                before.promises(),
                after.promises(),
                with.findings().stream()
                        .filter(finding -> !known.contains(finding.sentence()))
                        .toList());
    }

    /**
     * What one project more would do, and when it is likely to be done.
     *
     * @param changes of the projects in the plan, against the same plan without it
     * @param placed its activities, in the order of the work; what has no place is missing
     * @param forecasts of its milestones
     */
    public record Added(PlanChanges changes, List<PlannedRow> placed, List<MilestoneForecast> forecasts) {}

    /** @param thought a project that is not in the plan; nothing of it is stored */
    public Added adding(ProjectFacts thought) {
        BranchProblem with = inputs.with(thought);
        BranchProblem without = with.without(thought.id());
        Optional<PlanForecasting.Known> published = forecasting.published(thought.branchId());
        ComputedPlan plan = plans.of(with, published);
        PlanChanges.Snapshot after = plan.snapshot(with);
        return new Added(
                PlanChanges.between(
                        plans.of(without, published).snapshot(without), after.without(thought.id()), with.today()),
                after.rows().stream()
                        .filter(row -> row.projectId().equals(thought.id()))
                        .toList(),
                forecasting.of(with, plan, thought.id()));
    }

    /** Today's plan with this project in it, whether it is signed or not. @return what it does to its promise; empty without one */
    public Optional<PlannedPromise> promiseOf(ProjectFacts project) {
        BranchProblem branch = inputs.with(project);
        return ComputedPlan.of(branch).snapshot(branch).promises().stream()
                .filter(promise -> promise.projectId().equals(project.id()))
                .findFirst();
    }
}
