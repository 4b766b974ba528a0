package org.plumbrow.schedule.gaterule;

import java.time.LocalDate;
import java.util.Optional;
import java.util.UUID;
import org.plumbrow.project.Stage;
import org.plumbrow.project.gate.GateDays;
import org.plumbrow.schedule.PublishedPlan;
import org.springframework.stereotype.Component;

/** Who acts at a gate acts until the published plan needs the gate passed. */
@Component
class GateDaysOfThePlan implements GateDays {

    private final PublishedPlan plan;

    GateDaysOfThePlan(PublishedPlan plan) {
        this.plan = plan;
    }

    @Override
    public Optional<LocalDate> neededBy(UUID projectId, Stage to) {
        return plan.needed(projectId, to);
    }
}
