package org.plumbrow.permit;

import java.util.Map;
import org.plumbrow.RouteSamples;
import org.plumbrow.TestWorld.TestBranch;
import org.plumbrow.database.Ids;
import org.springframework.stereotype.Component;

/** Values for the addresses of the pages of waits. */
@Component
class PermitSamples implements RouteSamples {

    @Override
    public Map<String, String> in(TestBranch branch) {
        return Map.of("awaitedId", Ids.next().toString());
    }
}
