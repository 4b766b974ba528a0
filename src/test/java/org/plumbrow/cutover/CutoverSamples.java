package org.plumbrow.cutover;

import java.util.Map;
import org.plumbrow.RouteSamples;
import org.plumbrow.TestWorld.TestBranch;
import org.plumbrow.database.Ids;
import org.springframework.stereotype.Component;

/** Values for the addresses of the cutover pages. */
@Component
class CutoverSamples implements RouteSamples {

    @Override
    public Map<String, String> in(TestBranch branch) {
        return Map.of(
                "blackoutId",
                Ids.next().toString(),
                "entryId",
                Ids.next().toString(),
                "logStep",
                "1",
                "logHold",
                "H1",
                "readyItem",
                "locks",
                "loadKind",
                "houses",
                "reportFor",
                "utility",
                "windowId",
                Ids.next().toString());
    }
}
