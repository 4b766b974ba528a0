package org.plumbrow.schedule.scenario;

/** What has to be said of a kind of change. */
enum ScenarioField {
    NAME,
    CREW,
    MACHINE,
    WORK,
    FIRST_DAY,
    DAYS,
    JOB
}
