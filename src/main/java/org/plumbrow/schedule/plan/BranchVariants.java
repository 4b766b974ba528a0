package org.plumbrow.schedule.plan;

import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.function.UnaryOperator;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.plumbrow.project.ProjectFacts;
import org.plumbrow.schedule.activity.JobActivities;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Plans a branch as it stands and with things otherwise, all in the same way. Nothing is stored. Callers have asked {@code Access}. */
@Service
@Transactional(readOnly = true)
public class BranchVariants {

    private final PlanInputs inputs;
    private final PlanForecasting forecasting;
    private final PlansAtOnce plans;

    BranchVariants(PlanInputs inputs, PlanForecasting forecasting, PlansAtOnce plans) {
        this.inputs = inputs;
        this.forecasting = forecasting;
        this.plans = plans;
    }

    /** @param halfDaysLate of all promises, weighted @param changes against the branch as it stands; none for that one */
    public record Outcome(List<PlannedPromise> promises, long halfDaysLate, PlanChanges changes) {

        public long broken() {
            return promises.stream()
                    .filter(one -> one.finish().isEmpty() || one.halfDaysLate() > 0)
                    .count();
        }

        public long kept() {
            return promises.size() - broken();
        }
    }

    public BranchProblem branch(UUID branchId) {
        return inputs.stored(branchId);
    }

    /** What a thought job needs done. */
    public JobActivities job(ProjectFacts thought) {
        return inputs.with(thought).jobs().stream()
                .filter(job -> job.project().id().equals(thought.id()))
                .findFirst()
                .orElseThrow();
    }

    /** @return as it stands first, then each change in turn */
    public List<Outcome> outcomes(BranchProblem now, List<UnaryOperator<BranchProblem>> changes) {
        Optional<PlanForecasting.Known> published =
                forecasting.published(now.settings().branch().id());
        List<BranchProblem> branches = Stream.concat(
                        Stream.of(now), changes.stream().map(change -> change.apply(now)))
                .toList();
        // A plan needs nothing but its branch, so all are made side by side; what asks the database has asked.
        List<ComputedPlan> made = branches.parallelStream()
                .map(branch -> plans.of(branch, published))
                .toList();
        PlanChanges.Snapshot before = made.get(0).snapshot(now);
        return IntStream.range(0, made.size())
                .mapToObj(at -> outcome(now, before, branches.get(at), made.get(at)))
                .toList();
    }

    private static Outcome outcome(
            BranchProblem now, PlanChanges.Snapshot before, BranchProblem then, ComputedPlan plan) {
        PlanChanges.Snapshot after = plan.snapshot(then);
        for (JobActivities job :
                then.jobs().subList(now.jobs().size(), then.jobs().size())) {
            after = after.without(job.project().id());
        }
        return new Outcome(
                after.promises(), plan.plan().weightedHalfDaysLate(), PlanChanges.between(before, after, then.today()));
    }
}
