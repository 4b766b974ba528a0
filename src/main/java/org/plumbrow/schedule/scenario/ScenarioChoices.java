package org.plumbrow.schedule.scenario;

import java.util.Map;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** The branch's crews and machines by id. */
record ScenarioChoices(Map<UUID, String> crews, Map<UUID, String> machines) {

    String crew(@Nullable UUID id) {
        return id == null ? "" : crews.getOrDefault(id, "a crew that has ended");
    }

    String machine(@Nullable UUID id) {
        return id == null ? "" : machines.getOrDefault(id, "a machine that has gone");
    }
}
