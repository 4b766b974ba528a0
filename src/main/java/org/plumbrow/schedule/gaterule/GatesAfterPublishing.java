package org.plumbrow.schedule.gaterule;

import org.plumbrow.project.gate.Gates;
import org.plumbrow.schedule.PlanPublished;
import org.springframework.context.event.EventListener;
import org.springframework.stereotype.Component;

/** Another plan: by when somebody acts, and what its rules find, is told to the list of projects anew. */
@Component
class GatesAfterPublishing {

    private final Gates gates;

    GatesAfterPublishing(Gates gates) {
        this.gates = gates;
    }

    @EventListener
    void published(PlanPublished plan) {
        gates.lookAgainAtBranch(plan.branchId());
    }
}
