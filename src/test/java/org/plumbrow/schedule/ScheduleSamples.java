package org.plumbrow.schedule;

import java.util.Map;
import org.plumbrow.RouteSamples;
import org.springframework.stereotype.Component;

/** Values for the addresses of the schedule's pages. */
@Component
class ScheduleSamples implements RouteSamples {

    @Override
    public Map<String, Map<String, String>> fields() {
        return Map.of("POST /look-ahead/publish", Map.of("plan", "0197a000-0000-7000-8000-000000000000"));
    }
}
