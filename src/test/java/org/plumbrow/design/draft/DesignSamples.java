package org.plumbrow.design.draft;

import java.util.Map;
import org.plumbrow.RouteSamples;
import org.plumbrow.TestWorld.TestBranch;
import org.plumbrow.database.Ids;
import org.springframework.stereotype.Component;

/** Values for the addresses of the pages of designs and of the catalogue. */
@Component
class DesignSamples implements RouteSamples {

    private final DesignFixture fixture;

    DesignSamples(DesignFixture fixture) {
        this.fixture = fixture;
    }

    @Override
    public Map<String, String> in(TestBranch branch) {
        return Map.of(
                "designPart",
                "strings",
                "sheetSlug",
                "one-line",
                "equipmentKind",
                "modules",
                "catalogueId",
                fixture.module(branch, "Module 430 W").toString(),
                "staleId",
                Ids.next().toString());
    }
}
