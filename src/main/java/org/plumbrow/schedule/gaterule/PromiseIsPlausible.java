package org.plumbrow.schedule.gaterule;

import org.plumbrow.project.ProjectFacts;
import org.plumbrow.project.gate.Finding;
import org.plumbrow.project.gate.GateLook;
import org.plumbrow.project.gate.GateRule;
import org.plumbrow.schedule.plan.WhatIf;
import org.springframework.stereotype.Component;

/**
 * Before a job is signed: would today's plan keep its promise if the job were in it? The job is planned beside all others,
 * by the same computation; nothing is stored.
 */
@Component
class PromiseIsPlausible implements GateRule {

    private final WhatIf whatIf;

    PromiseIsPlausible(WhatIf whatIf) {
        this.whatIf = whatIf;
    }

    @Override
    public String item() {
        return "signed.10";
    }

    @Override
    public Finding check(GateLook look) {
        ProjectFacts project = look.project();
        if (project.promise() == null) {
            return new Finding.CannotTell("Nothing is promised yet.", "Add the promise on the project's page.");
        }
        return whatIf.promiseOf(project)
                .map(promise -> PromiseFindings.of("Today's plan", promise))
                .orElseGet(() -> new Finding.CannotTell(
                        "The contract names no array, so nothing can be planned.",
                        "Add the array with its mounting and size."));
    }
}
