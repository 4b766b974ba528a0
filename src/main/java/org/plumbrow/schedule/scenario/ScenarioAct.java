package org.plumbrow.schedule.scenario;

import org.jspecify.annotations.Nullable;
import org.plumbrow.web.Entered;

/** Accepting or throwing away what somebody looked at. */
record ScenarioAct(@Nullable String version) {

    long seen() {
        return Entered.version(version);
    }
}
