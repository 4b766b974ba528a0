package org.plumbrow.schedule.gaterule;

import java.util.Optional;
import org.plumbrow.project.ProjectFacts;
import org.plumbrow.project.gate.Finding;
import org.plumbrow.project.gate.GateLook;
import org.plumbrow.project.gate.GateRule;
import org.plumbrow.schedule.plan.PlanHead;
import org.plumbrow.schedule.plan.Plans;
import org.springframework.stereotype.Component;

/** When the permits are in hand: does the published plan keep the promise? */
@Component
class PromiseIsForecastAnew implements GateRule {

    private final Plans plans;

    PromiseIsForecastAnew(Plans plans) {
        this.plans = plans;
    }

    @Override
    public String item() {
        return "permitted.15";
    }

    @Override
    public Finding check(GateLook look) {
        ProjectFacts project = look.project();
        if (project.promise() == null) {
            return new Finding.CannotTell("Nothing is promised yet.", "Add the promise on the project's page.");
        }
        Optional<PlanHead> published = plans.publishedHead(project.branchId());
        return published
                .flatMap(plan -> plans.promise(plan, project.id()))
                .map(promise -> PromiseFindings.of("Plan " + published.get().number(), promise))
                .orElseGet(() -> new Finding.Broken(
                        "No published plan has this promise.", "Publish a plan that has this project."));
    }
}
