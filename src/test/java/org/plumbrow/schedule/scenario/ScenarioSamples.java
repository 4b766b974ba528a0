package org.plumbrow.schedule.scenario;

import java.math.BigDecimal;
import java.util.Map;
import java.util.UUID;
import org.plumbrow.RouteSamples;
import org.plumbrow.TestWorld;
import org.plumbrow.TestWorld.TestBranch;
import org.plumbrow.calc.duration.Mounting;
import org.plumbrow.database.Ids;
import org.springframework.stereotype.Component;

/** A scenario with a change for the addresses of its pages. */
@Component
class ScenarioSamples implements RouteSamples {

    private final TestWorld world;
    private final ScenarioEditing editing;
    private final Scenarios scenarios;

    ScenarioSamples(TestWorld world, ScenarioEditing editing, Scenarios scenarios) {
        this.world = world;
        this.editing = editing;
        this.scenarios = scenarios;
    }

    @Override
    public Map<String, String> in(TestBranch branch) {
        UUID id = Ids.next();
        ScenarioTerms job = new ScenarioTerms(
                ScenarioKind.NEW_JOB, "", null, null, null, null, null, Mounting.GROUND, BigDecimal.TEN);
        return world.as(branch.manager(), () -> {
            editing.add(id, branch.id(), "One barn more");
            editing.addChange(id, job);
            UUID change = scenarios.scenario(id).changes().get(0).id();
            return Map.of("scenarioId", id.toString(), "changeId", change.toString());
        });
    }
}
