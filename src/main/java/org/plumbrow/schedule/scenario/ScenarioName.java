package org.plumbrow.schedule.scenario;

import org.jspecify.annotations.Nullable;
import org.plumbrow.web.Entered;

/** What a scenario is called, as typed. */
record ScenarioName(@Nullable String name, @Nullable String version) {

    String read(Entered typed) {
        return typed.given("name", "a name, for example Crew 2 ill, a crew hired", name, 60);
    }
}
