package org.plumbrow.schedule.scenario;

/** What is otherwise in a scenario. */
enum ScenarioKind {
    CREW_AWAY("a crew is away"),
    CREW_MORE("one more crew"),
    MACHINE_AWAY("a machine is away"),
    NEW_JOB("one more job");

    private final String words;

    ScenarioKind(String words) {
        this.words = words;
    }

    public String words() {
        return words;
    }
}
