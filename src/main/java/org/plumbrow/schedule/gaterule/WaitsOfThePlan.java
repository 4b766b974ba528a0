package org.plumbrow.schedule.gaterule;

import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.function.BiFunction;
import org.plumbrow.permit.Awaited;
import org.plumbrow.permit.AwaitedBook;
import org.plumbrow.project.gate.Finding;
import org.plumbrow.project.gate.GateLook;
import org.plumbrow.project.gate.GateRule;
import org.plumbrow.project.gate.GateRuleSet;
import org.plumbrow.project.gate.SeenAt;
import org.plumbrow.schedule.PlannedDates;
import org.plumbrow.schedule.PublishedPlan;
import org.plumbrow.web.May;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;

/** Items of gates that hold what a project waits for against the days of its plan. */
@Configuration(proxyBeanMethods = false)
class WaitsOfThePlan {

    /** Read once a look. */
    private record Dates(List<PlannedDates> plan) {}

    private record WaitRule(
            String item,
            PublishedPlan plan,
            AwaitedBook awaited,
            BiFunction<List<PlannedDates>, List<Awaited>, Finding> judge)
            implements GateRule {
        @Override
        public Finding check(GateLook look) {
            Dates dates = look.once(Dates.class, project -> new Dates(plan.of(project.id())));
            return judge.apply(dates.plan(), awaited.at(look));
        }

        @Override
        public Optional<SeenAt> seenAt(UUID projectId) {
            return Optional.of(new SeenAt("Waits", "/projects/" + projectId + "/waits", May.SEE_JOURNAL));
        }
    }

    @Bean
    GateRuleSet waitRules(PublishedPlan plan, AwaitedBook awaited) {
        return new GateRuleSet(List.of(
                new WaitRule("permitted.7", plan, awaited, PlanAndWaits::permitsOutlastTheWork),
                new WaitRule("permitted.9", plan, awaited, PlanAndWaits::deliveriesComeBeforeUse),
                new WaitRule("permitted.10", plan, awaited, PlanAndWaits::locateIsPlanned),
                new WaitRule("installed.3", plan, awaited, PlanAndWaits::locateIsClear)));
    }
}
