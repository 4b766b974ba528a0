package org.plumbrow.estimate.site;

import java.util.Map;
import org.plumbrow.RouteSamples;
import org.plumbrow.TestWorld.TestBranch;
import org.springframework.stereotype.Component;

/** Values for the addresses of the pages of weather, use, size and yield. */
@Component
class EstimateSamples implements RouteSamples {

    private final EstimateFixture fixture;

    EstimateSamples(EstimateFixture fixture) {
        this.fixture = fixture;
    }

    @Override
    public Map<String, String> in(TestBranch branch) {
        return Map.of("weatherId", fixture.weather(branch, "Valley means").toString());
    }
}
