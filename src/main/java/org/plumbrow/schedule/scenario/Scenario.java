package org.plumbrow.schedule.scenario;

import java.util.UUID;

/** A named copy of the plan. */
record Scenario(UUID id, UUID branchId, long version, ScenarioTerms terms, String madeBy) {}
