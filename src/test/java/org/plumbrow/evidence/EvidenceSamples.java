package org.plumbrow.evidence;

import java.util.Map;
import org.plumbrow.RouteSamples;
import org.plumbrow.TestWorld;
import org.plumbrow.TestWorld.TestBranch;
import org.springframework.stereotype.Component;

@Component
class EvidenceSamples implements RouteSamples {

    private final TestWorld world;
    private final EvidenceStore store;

    EvidenceSamples(TestWorld world, EvidenceStore store) {
        this.world = world;
        this.store = store;
    }

    @Override
    public Map<String, String> in(TestBranch branch) {
        Keeping kept = world.as(
                branch.manager(),
                () -> store.keep(
                        branch.id(),
                        null,
                        new Upload("yard.jpg", MadeUpPhoto.plain(), ""),
                        branch.manager().actor()));
        return Map.of("evidenceId", ((Keeping.Kept) kept).evidence().id().toString());
    }
}
