package org.plumbrow.project.gate;

import org.plumbrow.project.ProjectChanged;
import org.springframework.context.event.EventListener;
import org.springframework.stereotype.Component;

/** Another mounting, another person in charge, another stage: what is missing at the next gate is told in the same transaction. */
@Component
class GateOutlook {

    private final Gates gates;

    GateOutlook(Gates gates) {
        this.gates = gates;
    }

    @EventListener
    void changed(ProjectChanged project) {
        gates.lookAgain(project.projectId());
    }
}
