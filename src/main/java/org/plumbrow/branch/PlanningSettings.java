package org.plumbrow.branch;

import java.util.List;

/** Everything of a branch that a plan needs to know, read at once. */
public record PlanningSettings(
        BranchFacts branch,
        List<UtilityFacts> utilities,
        List<PermitOfficeFacts> permitOffices,
        WeatherTable weather) {}
