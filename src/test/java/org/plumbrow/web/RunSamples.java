package org.plumbrow.web;

import java.util.Map;
import java.util.UUID;
import org.plumbrow.RouteSamples;
import org.plumbrow.TestWorld;
import org.plumbrow.TestWorld.TestBranch;
import org.plumbrow.database.BackgroundRuns;
import org.plumbrow.database.Ids;
import org.springframework.stereotype.Component;
import org.springframework.transaction.support.TransactionTemplate;

@Component
class RunSamples implements RouteSamples {

    private final TestWorld world;
    private final BackgroundRuns runs;
    private final TransactionTemplate transaction;

    RunSamples(TestWorld world, BackgroundRuns runs, TransactionTemplate transaction) {
        this.world = world;
        this.runs = runs;
        this.transaction = transaction;
    }

    @Override
    public Map<String, String> in(TestBranch branch) {
        UUID run = world.as(
                branch.manager(),
                () -> transaction.execute(status -> runs.start("watched-work", branch.id(), Ids.next(), "Ines")));
        return Map.of("runId", run.toString());
    }
}
