package org.plumbrow.schedule.plan;

import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.plumbrow.database.BackgroundRuns;
import org.plumbrow.database.ReadOnce;
import org.plumbrow.database.Run;
import org.plumbrow.schedule.plan.PlanHead.State;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Reads plans, drafts included, for the pages of this room. Callers have asked {@code Access}; the branch wall holds. */
@Service
@Transactional(readOnly = true)
public class Plans {

    private final PlanRows rows;
    private final BackgroundRuns runs;

    Plans(PlanRows rows, BackgroundRuns runs) {
        this.rows = rows;
        this.runs = runs;
    }

    public Optional<StoredPlan> draft(UUID branchId) {
        return draftHead(branchId).map(this::whole);
    }

    public Optional<StoredPlan> published(UUID branchId) {
        return publishedHead(branchId).map(this::whole);
    }

    /** The plan that was published before the one that is. */
    public Optional<StoredPlan> publishedBefore(UUID branchId) {
        return rows.lastSuperseded(branchId).map(this::whole);
    }

    private StoredPlan whole(PlanHead head) {
        return new StoredPlan(
                head,
                rows.activities(head.id()),
                rows.promises(head.id()),
                rows.findings(head.id()),
                rows.machines(head.id()));
    }

    public Optional<PlanHead> draftHead(UUID branchId) {
        return head(branchId, State.DRAFT);
    }

    public Optional<PlanHead> publishedHead(UUID branchId) {
        return head(branchId, State.PUBLISHED);
    }

    private Optional<PlanHead> head(UUID branchId, State state) {
        return ReadOnce.of(new Current(branchId), () -> rows.current(branchId)).stream()
                .filter(plan -> plan.state() == state)
                .findFirst();
    }

    private record Current(UUID branchId) {}

    /** The rows of one project in each of these plans, in the order of the work; a plan without the project is left out. */
    public Map<UUID, List<PlannedRow>> rows(Collection<PlanHead> plans, UUID projectId) {
        return rows.activities(plans.stream().map(PlanHead::id).toList(), projectId);
    }

    public Optional<PlannedPromise> promise(PlanHead plan, UUID projectId) {
        return ReadOnce.of(new PromiseIn(plan.id(), projectId), () -> rows.promises(plan.id(), projectId)).stream()
                .findFirst();
    }

    private record PromiseIn(UUID planId, UUID projectId) {}

    /** What publishing the draft would change; nothing without a published plan. */
    public PlanChanges changes(StoredPlan published, StoredPlan draft) {
        return PlanChanges.between(
                new PlanChanges.Snapshot(published.rows(), published.promises()),
                new PlanChanges.Snapshot(draft.rows(), draft.promises()),
                draft.head().first());
    }

    /** The run that was asked for last. */
    public Optional<Run> latestRun(UUID branchId) {
        return runs.latest(PlanRun.KIND, branchId, null);
    }
}
