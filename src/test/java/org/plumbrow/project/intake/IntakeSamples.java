package org.plumbrow.project.intake;

import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.UUID;
import org.plumbrow.RouteSamples;
import org.plumbrow.TestWorld;
import org.plumbrow.TestWorld.TestBranch;
import org.plumbrow.evidence.table.TableUnreadable;
import org.springframework.stereotype.Component;

@Component
class IntakeSamples implements RouteSamples {

    private final TestWorld world;
    private final Intakes intakes;

    IntakeSamples(TestWorld world, Intakes intakes) {
        this.world = world;
        this.intakes = intakes;
    }

    @Override
    public Map<String, String> in(TestBranch branch) {
        UUID intake = world.as(branch.manager(), () -> {
            try {
                return intakes.bring("jobs.csv", "reference,size kW\nZ1,5\n".getBytes(StandardCharsets.UTF_8));
            } catch (TableUnreadable impossible) {
                throw new IllegalStateException(impossible);
            }
        });
        return Map.of("intakeId", intake.toString());
    }
}
