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

/** A scenario for the addresses of its pages. */
@Component
class ScenarioSamples implements RouteSamples {

    private final TestWorld world;
    private final ScenarioEditing editing;

    ScenarioSamples(TestWorld world, ScenarioEditing editing) {
        this.world = world;
        this.editing = editing;
    }

    @Override
    public Map<String, String> in(TestBranch branch) {
        UUID id = Ids.next();
        ScenarioTerms job = new ScenarioTerms(
                "One barn more", ScenarioKind.NEW_JOB, null, null, null, null, Mounting.GROUND, BigDecimal.TEN);
        world.as(branch.manager(), () -> editing.add(id, branch.id(), job));
        return Map.of("scenarioId", id.toString());
    }
}
