package org.plumbrow.estimate.place;

import java.util.Optional;
import java.util.UUID;
import org.plumbrow.project.ProjectFacts;
import org.plumbrow.project.ProjectPanel;
import org.plumbrow.web.Access;
import org.plumbrow.web.May;
import org.springframework.stereotype.Component;

/** What was decided of roof or ground, on the project's page, for whoever may see how they compare. */
@Component
class PlacementPanel implements ProjectPanel {

    private final Placements placements;
    private final Access access;

    PlacementPanel(Placements placements, Access access) {
        this.placements = placements;
        this.access = access;
    }

    /** @param against whether the contract mounts its arrays elsewhere */
    record Decided(UUID projectId, Placement placement, boolean against) {}

    @Override
    public int order() {
        return 90;
    }

    @Override
    public Optional<Shown> show(ProjectFacts project) {
        if (!access.may(project.branchId(), May.SEE_ESTIMATE)) {
            return Optional.empty();
        }
        Placement placement = placements.ofUnchecked(project.id());
        return placement.isWritten()
                ? Optional.of(new Shown(
                        "estimate/placement-panel",
                        "decided",
                        new Decided(project.id(), placement, placement.isAgainst(project.contract()))))
                : Optional.empty();
    }
}
