package org.plumbrow.schedule.plan;

import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.plumbrow.database.BackgroundRuns;
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
        return rows.in(branchId, State.DRAFT).map(this::whole);
    }

    public Optional<StoredPlan> published(UUID branchId) {
        return rows.in(branchId, State.PUBLISHED).map(this::whole);
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
        return rows.in(branchId, State.DRAFT);
    }

    public Optional<PlanHead> publishedHead(UUID branchId) {
        return rows.in(branchId, State.PUBLISHED);
    }

    /** The rows of one project in a plan, in the order of the work. */
    public List<PlannedRow> rows(PlanHead plan, UUID projectId) {
        return rows.activities(plan.id(), projectId);
    }

    public Optional<PlannedPromise> promise(PlanHead plan, UUID projectId) {
        return rows.promises(plan.id()).stream()
                .filter(promise -> promise.projectId().equals(projectId))
                .findFirst();
    }

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
