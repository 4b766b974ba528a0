package org.plumbrow.cutover;

import java.time.LocalDate;
import java.util.Optional;
import java.util.UUID;
import org.plumbrow.calc.outage.WindowQuestion.Earliest;
import org.plumbrow.project.ProjectFacts;
import org.springframework.stereotype.Component;

/** What the plan says around a cutover: when the work before it is done, and how late it may be for the promise. */
@Component
class PlanBefore {

    Optional<Earliest> serviceSideDone(UUID projectId) {
        return Optional.empty();
    }

    LocalDate latestCutover(UUID projectId, ProjectFacts.Promise promise) {
        return promise.lastDay();
    }
}
