package org.plumbrow.schedule.plan;

import java.util.UUID;
import org.plumbrow.database.BackgroundRuns;
import org.plumbrow.web.Access;
import org.plumbrow.web.May;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** A manager asks for a new plan though nothing has changed. */
@Service
@Transactional
public class PlanAsking {

    private final BackgroundRuns runs;
    private final Access access;

    PlanAsking(BackgroundRuns runs, Access access) {
        this.runs = runs;
        this.access = access;
    }

    /** @return the run to watch; one that waits already serves this one too */
    public UUID askFor(UUID branchId) {
        access.require(branchId, May.CHANGE_PLAN);
        return runs.start(PlanRun.KIND, branchId, null, access.visitor().name());
    }
}
