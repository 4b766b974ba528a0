package org.plumbrow.schedule.scenario;

import static org.plumbrow.schedule.scenario.ScenarioField.CREW;
import static org.plumbrow.schedule.scenario.ScenarioField.DAYS;
import static org.plumbrow.schedule.scenario.ScenarioField.FIRST_DAY;
import static org.plumbrow.schedule.scenario.ScenarioField.JOB;
import static org.plumbrow.schedule.scenario.ScenarioField.MACHINE;
import static org.plumbrow.schedule.scenario.ScenarioField.NAME;
import static org.plumbrow.schedule.scenario.ScenarioField.WORK;

import java.util.Set;

/** What can be otherwise in a scenario. */
enum ScenarioKind {
    CREW_AWAY("A crew is away", CREW, FIRST_DAY, DAYS),
    MACHINE_AWAY("A machine is away", MACHINE, FIRST_DAY, DAYS),
    CREW_MORE("One more crew", NAME, CREW, FIRST_DAY),
    MACHINE_MORE("One more machine", NAME, MACHINE, FIRST_DAY),
    SATURDAYS("Work on Saturdays", FIRST_DAY, DAYS),
    WORK_GIVEN("A work goes to another crew", WORK, CREW, FIRST_DAY),
    NEW_JOB("One more job", JOB);

    private final String words;
    private final Set<ScenarioField> fields;

    ScenarioKind(String words, ScenarioField... fields) {
        this.words = words;
        this.fields = Set.of(fields);
    }

    public String words() {
        return words;
    }

    public boolean needs(ScenarioField field) {
        return fields.contains(field);
    }
}
